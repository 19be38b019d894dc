// From a day's hides to what is mixed: the main computation of the library.
#pragma once

#include <whittaw/liquor/acidity.hpp>
#include <whittaw/liquor/basicity.hpp>
#include <whittaw/liquor/gas.hpp>
#include <whittaw/liquor/saturation.hpp>
#include <whittaw/paste/day.hpp>
#include <whittaw/quantity/chance.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace whittaw {

/// One standard deviation of a coat spread by hand against the thickness asked for, the same for a
/// whole day: an assumption.
inline constexpr Spread coat_spread{0.10};
inline constexpr std::string_view coat_error = "coat";

struct BatchHide {
  HideArea area;
  Estimate<Mass> fleshed_weight;
  Volume one_coat = 0.0 * litre; ///< expected use of one coat
  Offer offer;                   ///< of the recipe's alum on fleshed weight
  Spread offer_spread;
};

struct Ingredient {
  Role role = Role::extra;
  std::string name;
  Form form;
  Mass mass = 0.0 * kilogram;
  std::optional<std::size_t> bag = std::nullopt; ///< of the day's shelf
  const BulkRow *grain = nullptr;
  std::optional<Money> cost = std::nullopt;
};

/// An alum or soda made up from another form than the recipe's.
struct Exchange {
  Role role = Role::alum;
  Form recipe_form;
  Mass recipe_mass = 0.0 * kilogram; ///< of the recipe's form, for the part this draw stands for
  Form form;
  Mass mass = 0.0 * kilogram;
  std::size_t ingredient = 0;   ///< index into the batch's ingredients
  double times_as_strong = 1.0; ///< how many kilograms of the recipe's form one kilogram replaces
};

struct Missing {
  Role role = Role::alum;
  Form form; ///< the recipe's
  Mass mass = 0.0 * kilogram;
};

struct BatchLiquor {
  LiquorAmounts amounts;
  Basicity basicity;
  std::optional<AcidityEstimate> acidity;
  Volume carbon_dioxide = 0.0 * litre; ///< at gas_temperature and one atmosphere
  Temperature temperature = assumed_water_temperature;
  std::vector<Saturation> alum_water; ///< the alum in its own water, before it is poured together
  std::vector<Saturation> soda_water; ///< salt and soda in theirs
  std::vector<Saturation> mixed;
};

struct Batch {
  std::vector<BatchHide> hides;          ///< in the order of the day
  Estimate<Area> area;                   ///< as trimmed: what is pasted
  Area area_enough = 0.0 * square_metre; ///< not exceeded with the day's chance
  Length coat = 0.0 * metre;
  int coats = 1;
  Volume paste = 0.0 * litre;          ///< to mix, working loss included
  Volume paste_on_hides = 0.0 * litre; ///< expected use, without loss or reserve
  Volume one_coat = 0.0 * litre;       ///< on all hides, expected
  double times_recipe = 0.0;
  std::vector<Ingredient> ingredients;
  std::vector<Exchange> exchanges;
  std::vector<Missing> missing; ///< stands among the ingredients too, without a bag
  Volume alum_water = 0.0 * litre;
  Volume soda_water = 0.0 * litre;
  BatchLiquor liquor;
  Volume bucket = 0.0 * litre;
  Volume second_vessel = 0.0 * litre; ///< for the soda water; none for a recipe with one water
  int lots = 1; ///< equal lots that the day's bucket asks for; all figures are of the whole batch
  Offer offer;
  Spread offer_spread;
  Money cost = 0.0 * tender; ///< of what is priced
  bool cost_complete = false;
};

namespace detail {

inline std::optional<Money> cost_from(const std::vector<Bag> &shelf, std::optional<std::size_t> bag,
                                      Mass mass) {
  if (!bag || !shelf[*bag].price) return std::nullopt;
  return whittaw::cost_of(*shelf[*bag].price, mass);
}

/// Draws one part of the recipe from the shelf into the batch.
inline void take(Batch &batch, const Day &day, const RecipePart &part) {
  const Mass wanted = batch.times_recipe * part.mass;
  const Drawn drawn = draw(part.form, wanted, day.shelf);
  for (const auto &from : drawn.draws) {
    const Bag *bag = from.bag ? &day.shelf[*from.bag] : nullptr;
    Form form = from.form;
    if (form.name.empty() && bag != nullptr && bag->grain != nullptr) form.name = bag->grain->name;
    batch.ingredients.push_back({form.role, form_name(form), form, from.mass, from.bag,
                                 bag ? bag->grain : nullptr,
                                 cost_from(day.shelf, from.bag, from.mass)});
    const bool by_moles = part.form.role == Role::alum || part.form.role == Role::soda;
    if (!by_moles) continue;
    if (from.form.name != part.form.name || times_as_strong(from.form, part.form) != 1.0) {
      const double times = times_as_strong(from.form, part.form);
      batch.exchanges.push_back({from.form.role, part.form, times * from.mass, from.form, from.mass,
                                 batch.ingredients.size() - 1, times});
    }
  }
  if (drawn.missing > 0.0 * kilogram) {
    batch.missing.push_back({part.form.role, part.form, drawn.missing});
    batch.ingredients.push_back({part.form.role, form_name(part.form) + " (to get)", part.form,
                                 drawn.missing, std::nullopt, nullptr, std::nullopt});
  }
}

/// Water of crystallisation of what was drawn, less that of what the recipe meant.
inline Mass crystal_water_surplus(const Batch &batch, const Day &day, Role role) {
  Mass surplus = 0.0 * kilogram;
  for (const auto &ingredient : batch.ingredients)
    if (ingredient.role == role) surplus += ingredient.form.water.value * ingredient.mass;
  if (role == Role::alum)
    surplus -= day.recipe.alum.form.water.value * batch.times_recipe * day.recipe.alum.mass;
  if (role == Role::soda && day.recipe.soda)
    surplus -= day.recipe.soda->form.water.value * batch.times_recipe * day.recipe.soda->mass;
  return surplus;
}

inline std::vector<Dissolving> dissolving(const Batch &batch, bool alum, bool others) {
  std::vector<Dissolving> chemicals;
  for (const auto &ingredient : batch.ingredients) {
    const bool is_alum = ingredient.role == Role::alum;
    const bool is_other = ingredient.role == Role::salt || ingredient.role == Role::soda;
    if ((is_alum && alum) || (is_other && others))
      chemicals.push_back({ingredient.form, ingredient.mass});
  }
  return chemicals;
}

inline Form meal_form(const BulkRow &kind) {
  Form form;
  form.name = kind.name;
  form.role = Role::meal;
  form.crystal_density = meal_substance_density;
  return form;
}

inline void take_water(Batch &batch, const Day &day) {
  const Recipe &recipe = day.recipe;
  // An exchange may bring more crystal water than the recipe's whole water only in a recipe that
  // is nearly dry; the water then stops at none.
  const auto left = [](Volume volume, Mass surplus) {
    const Volume changed = volume - surplus / water_density;
    return changed > 0.0 * litre ? changed : 0.0 * litre;
  };
  const bool one_water = !(recipe.water_for_salt_and_soda > 0.0 * litre);
  const Mass of_alum = crystal_water_surplus(batch, day, Role::alum);
  const Mass of_soda = crystal_water_surplus(batch, day, Role::soda);
  batch.alum_water =
      left(batch.times_recipe * recipe.water_for_alum, one_water ? of_alum + of_soda : of_alum);
  if (!one_water)
    batch.soda_water = left(batch.times_recipe * recipe.water_for_salt_and_soda, of_soda);
  Form water;
  water.name = "water";
  water.role = Role::water;
  water.crystal_density = water_density;
  for (auto &exchange : batch.exchanges) ++exchange.ingredient;
  batch.ingredients.insert(batch.ingredients.begin(),
                           {Role::water, "water", water,
                            (batch.alum_water + batch.soda_water) * water_density, std::nullopt,
                            find_bulk("water"), std::nullopt});
}

inline void find_liquor(Batch &batch, const Day &day) {
  BatchLiquor &liquor = batch.liquor;
  for (const auto &ingredient : batch.ingredients)
    add_to(liquor.amounts, ingredient.form, ingredient.mass);
  liquor.basicity = basicity(liquor.amounts);
  liquor.acidity = estimated_acidity(liquor.basicity);
  liquor.temperature = day.water_temperature.value_or(assumed_water_temperature);
  liquor.carbon_dioxide = carbon_dioxide_volume(liquor.amounts.carbonate, gas_temperature);
  const Mass first = batch.alum_water * water_density;
  const Mass second = batch.soda_water * water_density;
  if (first > 0.0 * kilogram)
    liquor.alum_water = saturation(first, dissolving(batch, true, false), liquor.temperature);
  if (second > 0.0 * kilogram)
    liquor.soda_water = saturation(second, dissolving(batch, false, true), liquor.temperature);
  liquor.mixed = saturation(first + second, dissolving(batch, true, true), liquor.temperature);
}

/// Offers of the hides and of the day: alum in a coat, which is uncertain by coat and yield, times
/// area over weight.
inline void find_offer(Batch &batch, const Day &day, const Estimate<ArealMass> &alum) {
  Mass weight = 0.0 * kilogram;
  for (const auto &hide : batch.hides) weight += hide.fleshed_weight.value;
  Estimate<double> error;
  for (std::size_t i = 0; i < batch.hides.size(); ++i) {
    auto &hide = batch.hides[i];
    const Share of_area{count(hide.area.trimmed.value, batch.area.value)};
    const Share of_weight{count(hide.fleshed_weight.value, weight)};
    const auto own =
        area_per_weight_error(day.hides[i], hide.area, hide.fleshed_weight) + relative_error(alum);
    hide.offer = {count(alum.value * hide.area.trimmed.value, hide.fleshed_weight.value)};
    hide.offer_spread = {own.sd()};
    error +=
        area_per_weight_error(day.hides[i], hide.area, hide.fleshed_weight, of_area, of_weight);
  }
  batch.offer = {count(alum.value * batch.area.value, weight)};
  batch.offer_spread = {(error + relative_error(alum)).sd()};
}

} // namespace detail

/// Sizes a day's paste and makes it up from the shelf.
/// Errors: no hides; a hide whose area cannot be had (the problem names its tag).
inline Result<Batch> make_batch(const Day &day) {
  if (day.hides.empty())
    return Problem{"the day has no hides", "add a hide, with its tag, species and a measure"};
  const Recipe &recipe = day.recipe;
  Batch batch;
  batch.hides.reserve(day.hides.size());
  for (const auto &hide : day.hides) {
    auto area = hide_area(hide);
    if (!area)
      return Problem{"hide '" + hide.tag + "': " + area.problem().found, area.problem().remedy};
    batch.area += area->trimmed;
    auto weight = fleshed_weight(hide, *area);
    batch.hides.push_back({std::move(area.value()), std::move(weight), 0.0 * litre, {}, {}});
  }
  batch.coat = day.coat.value_or(recipe.coat);
  batch.coats = day.coats.value_or(recipe.coats);
  batch.area_enough = enough_for(batch.area, day.chance);

  for (auto &hide : batch.hides) hide.one_coat = hide.area.trimmed.value * batch.coat;
  batch.one_coat = batch.area.value * batch.coat;
  const Length thickness = static_cast<double>(batch.coats) * batch.coat;
  const auto yield = paste_yield(recipe);
  const auto coats = shared_estimate(thickness, coat_spread, coat_error);
  const auto need = batch.area * coats;
  batch.paste_on_hides = need.value;
  // How many times the recipe, with the errors of area, coat and yield together.
  const Estimate<double> times = ratio(need, yield);
  batch.times_recipe = enough_for(times, day.chance) / (1.0 - day.working_loss.value);
  batch.paste = batch.times_recipe * yield.value;

  detail::take(batch, day, recipe.salt);
  detail::take(batch, day, recipe.alum);
  if (recipe.soda) detail::take(batch, day, *recipe.soda);
  if (recipe.meal) {
    const Form meal = detail::meal_form(*recipe.meal->kind);
    const std::size_t first = batch.ingredients.size();
    detail::take(batch, day, {meal, recipe.meal->mass});
    for (std::size_t i = first; i < batch.ingredients.size(); ++i)
      if (!batch.ingredients[i].bag) batch.ingredients[i].grain = recipe.meal->kind;
  }
  for (const auto &extra : recipe.extras)
    batch.ingredients.push_back({Role::extra,
                                 extra.name,
                                 {},
                                 batch.times_recipe * extra.mass,
                                 std::nullopt,
                                 nullptr,
                                 std::nullopt});
  detail::take_water(batch, day);
  detail::find_liquor(batch, day);
  batch.bucket = bucket_volume(batch.paste, batch.liquor.carbon_dioxide);
  batch.second_vessel = (1.0 + stirring_room.value) * batch.soda_water;
  if (day.bucket.volume)
    batch.lots = std::max(1, static_cast<int>(std::ceil(
                                 std::min(1e6, count(batch.bucket, *day.bucket.volume) - 1e-9))));
  detail::find_offer(batch, day, scale(reciprocal(yield), recipe.alum.mass) * coats);

  batch.cost_complete = true;
  for (const auto &ingredient : batch.ingredients) {
    if (ingredient.cost)
      batch.cost += *ingredient.cost;
    else if (ingredient.role != Role::water)
      batch.cost_complete = false;
  }
  return batch;
}

/// One of the batch's equal lots: what is mixed in one go. Hides and offer are the day's.
inline Batch one_lot(Batch batch) {
  const double part = 1.0 / batch.lots;
  for (auto &ingredient : batch.ingredients) {
    ingredient.mass *= part;
    if (ingredient.cost) *ingredient.cost *= part;
  }
  for (auto &exchange : batch.exchanges) {
    exchange.mass *= part;
    exchange.recipe_mass *= part;
  }
  for (auto &missing : batch.missing) missing.mass *= part;
  for (auto *salts : {&batch.liquor.alum_water, &batch.liquor.soda_water, &batch.liquor.mixed})
    for (auto &salt : *salts) salt.undissolved *= part;
  batch.times_recipe *= part;
  batch.paste *= part;
  batch.alum_water *= part;
  batch.soda_water *= part;
  batch.bucket *= part;
  batch.second_vessel *= part;
  batch.liquor.carbon_dioxide *= part;
  batch.liquor.amounts.aluminium *= part;
  batch.liquor.amounts.hydroxide *= part;
  batch.liquor.amounts.carbonate *= part;
  batch.cost *= part;
  batch.lots = 1;
  return batch;
}

} // namespace whittaw

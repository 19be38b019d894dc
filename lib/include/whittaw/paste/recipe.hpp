// A recipe as its author wrote it: forms and amounts, coat and days.
#pragma once

#include <whittaw/hide/hide.hpp>
#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/substance/bulk_density.hpp>
#include <whittaw/substance/form.hpp>

#include <optional>
#include <string>
#include <vector>

namespace whittaw {

struct RecipePart {
  Form form;
  Mass mass = 0.0 * kilogram;
  Spread spread = {0.0}; ///< of the mass, where the recipe gives cups
};
struct RecipeMeal {
  const BulkRow *kind = nullptr; ///< a row of bulk_table with role meal
  Mass mass = 0.0 * kilogram;
};
/// An ingredient that is weighed out in proportion and enters no computation.
struct RecipeExtra {
  std::string name;
  Mass mass = 0.0 * kilogram;
};
struct OfferRange {
  Offer low;
  Offer high;
};

struct Recipe {
  std::string name;
  std::string title;
  std::string source;
  Mark mark = Mark::assumption;
  std::vector<std::string> notes = {};
  RecipePart alum;
  RecipePart salt;
  std::optional<RecipePart> soda = std::nullopt;
  std::optional<RecipeMeal> meal = std::nullopt;
  std::vector<RecipeExtra> extras = {};
  Volume water_for_alum = 0.0 * litre;
  Volume water_for_salt_and_soda = 0.0 * litre;
  Length coat = 0.0 * metre;
  int coats = 1;
  Duration time_on_hide = Duration();
  std::optional<OfferRange> offer = std::nullopt;
};

/// Alum offer on fleshed weight where a recipe states none.
inline constexpr OfferRange usual_offer{{0.08}, {0.12}};
inline constexpr Source usual_offer_source{"alum offer of 8 to 12 % on fleshed weight",
                                           Mark::memory};

/// Warmest paste that goes on a raw skin, which shrinks in heat.
inline constexpr Temperature warmest_paste = degrees_celsius(35.0);
inline constexpr Source warmest_paste_source{
    "paste below 100 degrees Fahrenheit: H. R. Procter, A Text-Book of Tanning, 1885", Mark::seen};

/// source: 0.9982 g/mL at 20 degrees, CRC Handbook (from memory).
inline constexpr Density water_density = 0.9982 * gram_per_millilitre;
constexpr Mass mass_of_water(Volume volume) { return volume * water_density; }
/// A paste that stays on at least so long is folded and turned, after 2 to 3 days: common practice.
inline constexpr Duration turned_from = 3.0 * days;
/// Density of the stuff of flour and meal, without the air between the grains (from memory).
inline constexpr Density meal_substance_density = 1.45 * gram_per_millilitre;

constexpr Mass water_mass(const Recipe &recipe) {
  return (recipe.water_for_alum + recipe.water_for_salt_and_soda) * water_density;
}

/// One standard deviation of the yield by volumes added up: air beaten in, meal that swells, salts
/// that shrink as they dissolve. An assumption.
inline constexpr Spread paste_yield_spread{0.04};

/// Volume of paste from one measure of the recipe: the volumes of its parts, as crystals, added up.
inline Estimate<Volume> paste_yield(const Recipe &recipe) {
  Volume sum = recipe.water_for_alum + recipe.water_for_salt_and_soda;
  sum += recipe.alum.mass / recipe.alum.form.crystal_density;
  sum += recipe.salt.mass / recipe.salt.form.crystal_density;
  if (recipe.soda) sum += recipe.soda->mass / recipe.soda->form.crystal_density;
  if (recipe.meal) sum += recipe.meal->mass / meal_substance_density;
  for (const auto &extra : recipe.extras) sum += extra.mass / meal_substance_density;
  return shared_estimate(sum, paste_yield_spread, "paste yield");
}

} // namespace whittaw

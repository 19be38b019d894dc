// What a recipe says of itself before any hide is in.
#pragma once

#include <whittaw/paste/checks.hpp>

#include <string>
#include <vector>

namespace whittaw {

/// The liquor of one measure of a recipe, with another alum or soda taken pound for pound, as
/// happens when a bag's form is not looked at.
inline Basicity recipe_basicity(const Recipe &recipe, const Form &alum, const Form *soda) {
  LiquorAmounts liquor;
  add_to(liquor, alum, recipe.alum.mass);
  if (recipe.soda && soda != nullptr) add_to(liquor, *soda, recipe.soda->mass);
  return basicity(liquor);
}

inline Basicity recipe_basicity(const Recipe &recipe) {
  return recipe_basicity(recipe, recipe.alum.form, recipe.soda ? &recipe.soda->form : nullptr);
}

/// Salt over alum in the printed recipes, with a margin: calculated from recipes/ and the bulletin.
inline constexpr Share least_salt_of_alum{0.20};
inline constexpr Share most_salt_of_alum{1.50};

struct MistakenForm {
  std::string_view alum;
  std::string_view soda;
  Basicity basicity;
};

/// The basicity that each mistaken form of soda or alum would give, weighed as if it were the
/// recipe's own. Empty for a recipe without soda.
inline std::vector<MistakenForm> mistaken_forms(const Recipe &recipe) {
  std::vector<MistakenForm> rows;
  if (!recipe.soda) return rows;
  for (const auto &soda : {forms::soda_crystals, forms::soda_monohydrate, forms::soda_anhydrous}) {
    if (soda.name == recipe.soda->form.name) continue;
    rows.push_back(
        {recipe.alum.form.name, soda.name, recipe_basicity(recipe, recipe.alum.form, &soda)});
  }
  for (const auto &alum :
       {forms::potassium_alum, forms::ammonium_alum, forms::aluminium_sulfate_18}) {
    if (alum.name == recipe.alum.form.name) continue;
    rows.push_back(
        {alum.name, recipe.soda->form.name, recipe_basicity(recipe, alum, &recipe.soda->form)});
  }
  return rows;
}

/// Checks of a recipe at a water temperature, worst first.
inline std::vector<Check> check_recipe(const Recipe &recipe, Temperature temperature,
                                       UnitSystem units) {
  std::vector<Check> checks;
  checks.push_back(detail::check_basicity(recipe_basicity(recipe)));
  const double cups =
      recipe.soda ? std::hypot(recipe.alum.spread.value, recipe.soda->spread.value) : 0.0;
  if (cups > 0.0) {
    const Basicity middle = recipe_basicity(recipe);
    const Basicity low{middle.value * (1.0 - 2.0 * cups)};
    const Basicity high{middle.value * (1.0 + 2.0 * cups)};
    const bool spoils = basicity_band(high).band > BasicityBand::fair;
    checks.push_back({"by-the-cup", spoils ? Level::warn : Level::note,
                      "Alum or soda is given by the cup, good to " +
                          write_percent(Spread{cups}, 2) + ": basicity may be anything from " +
                          write_percent(low, 2) + " to " + write_percent(high, 2) +
                          ". Weigh them and write the recipe anew."});
  }
  std::vector<Dissolving> alum{{recipe.alum.form, recipe.alum.mass}};
  std::vector<Dissolving> others{{recipe.salt.form, recipe.salt.mass}};
  if (recipe.soda) others.push_back({recipe.soda->form, recipe.soda->mass});
  std::vector<Dissolving> all = alum;
  all.insert(all.end(), others.begin(), others.end());
  BatchLiquor liquor;
  liquor.temperature = temperature;
  const Mass first = recipe.water_for_alum * water_density;
  const Mass second = recipe.water_for_salt_and_soda * water_density;
  liquor.alum_water = saturation(first, alum, temperature);
  if (second > 0.0 * kilogram) liquor.soda_water = saturation(second, others, temperature);
  liquor.mixed = saturation(first + second, all, temperature);
  detail::check_saturation(checks, liquor, units, {});

  const double salt_of_alum = count(recipe.salt.mass, recipe.alum.mass);
  if (salt_of_alum < least_salt_of_alum.value || salt_of_alum > most_salt_of_alum.value)
    checks.push_back({"salt", Level::note,
                      "Salt is " + write_percent(Share{salt_of_alum}, 2) +
                          " of the alum; printed recipes run from 22 to 100 %."});
  std::vector<std::string> bad;
  for (const auto &row : mistaken_forms(recipe)) {
    if (basicity_band(row.basicity).band != BasicityBand::dropping) continue;
    bad.push_back(std::string(row.soda == recipe.soda->form.name ? row.alum : row.soda) + " (" +
                  write_percent(row.basicity, 3) + ")");
  }
  if (!bad.empty())
    checks.push_back(
        {"mistaken-form", Level::note,
         "Taken pound for pound, the wrong form spoils it: " + detail::some_of(bad) + "."});
  std::stable_sort(checks.begin(), checks.end(),
                   [](const Check &a, const Check &b) { return a.level > b.level; });
  return checks;
}

} // namespace whittaw

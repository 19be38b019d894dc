// The bulletin's paste, as tests of several storeys start from it.
#pragma once

#include <whittaw/paste/recipe.hpp>

namespace whittaw_test {

using namespace whittaw;

/// The bulletin's paste. source: USDA Farmers' Bulletin 1334 (from memory): 1 lb potash alum in 1
/// US gal, 4 oz washing soda crystals and 8 oz salt in half a gallon, a coat of 1/8 in; 3 lb of
/// flour are an assumption.
inline Recipe bulletin() {
  Recipe recipe;
  recipe.name = "bulletin";
  recipe.alum = {forms::potassium_alum, pound};
  recipe.salt = {forms::salt, 8.0 * ounce};
  recipe.soda = RecipePart{forms::soda_crystals, 4.0 * ounce};
  recipe.meal = RecipeMeal{find_bulk("wheat flour"), 3.0 * pound};
  recipe.water_for_alum = us_gallon;
  recipe.water_for_salt_and_soda = 0.5 * us_gallon;
  recipe.coat = 0.125 * inch;
  recipe.coats = 2;
  return recipe;
}

} // namespace whittaw_test

// How much paste a recipe makes.
#include <whittaw/paste/recipe.hpp>

#include "close.hpp"
#include "days.hpp"

using namespace whittaw;
using whittaw_test::near;

TEST_CASE("the yield of a recipe is the volume of its parts as crystals") {
  const Recipe recipe = whittaw_test::round_recipe();
  // By hand: 6 L + 500 / 1.725 + 250 / 2.17 + 120 / 1.46 + 1450 / 1.45 mL = 7487.254 mL, to 4 %.
  const auto yield = paste_yield(recipe);
  CHECK(near(yield.value, 7487.254 * millilitre, 0.001 * millilitre));
  CHECK(near(yield.spread().value, 0.04, 1e-12));
  CHECK(near(water_mass(recipe), 5989.2 * gram, 1e-6 * gram)); // 6 x 998.2
}

TEST_CASE("a part left out takes its volume with it") {
  Recipe recipe = whittaw_test::round_recipe();
  recipe.meal.reset();
  CHECK(near(paste_yield(recipe).value, 6487.254 * millilitre, 0.001 * millilitre));
  recipe.soda.reset();
  CHECK(near(paste_yield(recipe).value, 6405.062 * millilitre, 0.001 * millilitre));
  recipe.extras = {{"saltpetre", 145.0 * gram}};
  CHECK(near(paste_yield(recipe).value, 6505.062 * millilitre, 0.001 * millilitre));
}

TEST_CASE("the warmest paste is 35 degrees, within the printed bound") {
  // source: H. R. Procter, A Text-Book of Tanning, 1885: below 100 degrees Fahrenheit. By hand:
  // (100 - 32) / 1.8 = 37.8.
  CHECK(near(celsius_value(warmest_paste), 35.0, 1e-12));
  CHECK(celsius_value(warmest_paste) < (100.0 - 32.0) / 1.8);
}

TEST_CASE("the yield's error is one error for all batches of the recipe") {
  const auto yield = paste_yield(whittaw_test::round_recipe());
  CHECK(near((yield + yield).spread().value, 0.04, 1e-12));
}

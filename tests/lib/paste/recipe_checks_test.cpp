// What a recipe says of itself before any hide is in.
#include <whittaw/paste/recipe_checks.hpp>

#include "close.hpp"
#include "days.hpp"

#include <optional>
#include <string>

using namespace whittaw;
using namespace whittaw_test;

namespace {
std::optional<Check> find(const Recipe &recipe, std::string_view id, double celsius = 25.0) {
  for (const auto &check : check_recipe(recipe, degrees_celsius(celsius), UnitSystem::metric))
    if (check.id == id) return check;
  return std::nullopt;
}
} // namespace

TEST_CASE("a recipe's basicity is that of its liquor, and of it with a mistaken form") {
  // By hand: 27.6 % (see the liquor's tests); ammonium alum pound for pound 1.00062 mol Al, 26.4 %;
  // the 18 hydrate 2 x 453.592 / 666.402 = 1.36132 mol, 19.4 %.
  const Recipe recipe = bulletin();
  CHECK(near(recipe_basicity(recipe).value, 0.276, 0.0005));
  const auto rows = mistaken_forms(recipe);
  REQUIRE(rows.size() == 4);
  CHECK(rows[0].soda == forms::soda_monohydrate.name);
  CHECK(near(rows[0].basicity.value, 0.638, 0.0005));
  CHECK(rows[1].soda == forms::soda_anhydrous.name);
  CHECK(near(rows[1].basicity.value, 0.746, 0.0005));
  CHECK(rows[2].alum == forms::ammonium_alum.name);
  CHECK(near(rows[2].basicity.value, 0.264, 0.0005));
  CHECK(rows[3].alum == forms::aluminium_sulfate_18.name);
  CHECK(near(rows[3].basicity.value, 0.194, 0.0005));
}

TEST_CASE("the bulletin passes, and says which mistakes would spoil it") {
  const Recipe recipe = bulletin();
  REQUIRE(find(recipe, "basicity").has_value());
  CHECK(find(recipe, "basicity")->level == Level::ok);
  const auto mistaken = find(recipe, "mistaken-form");
  REQUIRE(mistaken.has_value());
  CHECK(has(mistaken->text, "63.8 %"));
  CHECK(has(mistaken->text, "74.6 %"));
  CHECK_FALSE(has(mistaken->text, "aluminium sulfate")); // 19.4 % spoils nothing
  CHECK_FALSE(find(recipe, "salt").has_value());         // half of the alum
}

TEST_CASE("1.1 lb of soda crystals to 1.1 lb of alum is stopped") {
  Recipe recipe = bulletin();
  recipe.alum.mass = 1.1 * pound;
  recipe.soda->mass = 1.1 * pound;
  REQUIRE(find(recipe, "basicity").has_value());
  CHECK(find(recipe, "basicity")->level == Level::stop);
}

TEST_CASE("a recipe without soda has no soda to mistake") {
  Recipe recipe = bulletin();
  recipe.soda.reset();
  CHECK(mistaken_forms(recipe).empty());
  CHECK_FALSE(find(recipe, "mistaken-form").has_value());
  CHECK(find(recipe, "basicity")->level == Level::note);
}

TEST_CASE("a recipe that cold water does not dissolve is warned of at that temperature") {
  // By hand (see the solubility's tests): a pound in a gallon needs 21.2 degrees.
  CHECK(find(bulletin(), "dissolve-alum", 15.0)->level == Level::warn);
  CHECK_FALSE(find(bulletin(), "dissolve-alum", 22.0).has_value());
  // Each water is looked at by itself; the mixed liquor is weaker than either.
  CHECK_FALSE(find(bulletin(), "dissolve-liquor", 10.0).has_value());
}

TEST_CASE("of a recipe of one water the whole liquor is looked at, and nothing else") {
  Recipe recipe = bulletin();
  recipe.water_for_alum = 1.5 * us_gallon;
  recipe.water_for_salt_and_soda = 0.0 * litre;
  // By hand (see the saturation's tests): all of it together dissolves from 10.8 degrees.
  REQUIRE(find(recipe, "dissolve-liquor", 10.0).has_value());
  CHECK(find(recipe, "dissolve-liquor", 10.0)->level == Level::warn);
  CHECK_FALSE(find(recipe, "dissolve-liquor", 11.5).has_value());
  CHECK_FALSE(find(recipe, "dissolve-alum", 10.0).has_value());
  CHECK_FALSE(find(recipe, "dissolve-soda", 10.0).has_value());
  CHECK(find(recipe, "dissolve", 11.5).has_value());
  // 10.8 and 3 degrees, rounded up.
  CHECK(has(find(recipe, "dissolve-liquor", 10.0)->text, "at least 14 \u00b0C"));
}

TEST_CASE("a recipe for hot water is told to cool before it meets a skin") {
  CHECK(find(bulletin(), "too-warm", 40.0).has_value());
  CHECK_FALSE(find(bulletin(), "too-warm", 35.0).has_value());
  // Its liquor crystallises below 10.8 degrees.
  REQUIRE(find(bulletin(), "keep-warm", 25.0).has_value());
  CHECK(has(find(bulletin(), "keep-warm", 25.0)->text, "Below 11 \u00b0C"));
}

TEST_CASE("much or little salt is noted") {
  Recipe recipe = bulletin();
  recipe.salt.mass = 0.19 * pound;
  CHECK(find(recipe, "salt").has_value());
  recipe.salt.mass = 0.22 * pound;
  CHECK_FALSE(find(recipe, "salt").has_value());
  recipe.salt.mass = pound;
  CHECK_FALSE(find(recipe, "salt").has_value());
  recipe.salt.mass = 1.6 * pound;
  CHECK(find(recipe, "salt").has_value());
}

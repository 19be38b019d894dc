// A day's paste, worked by hand from the hides to the bucket.
#include <whittaw/paste/batch.hpp>

#include "close.hpp"
#include "days.hpp"

#include <cmath>
#include <string>
#include <utility>

using namespace whittaw;
using namespace whittaw_test;

// Two goats and a calf, round recipe (500 g potash alum, 250 g salt, 120 g soda crystals, 1450 g
// meal, 4 L and 2 L of water, two coats of 4 mm), worked by hand:
//   areas      0.064 x 9 = 0.576; 0.064 x 4 = 0.256; 0.105 x 64^0.57 = 1.123859; sum 1.955859 m2
//   spread     goats share 0.13 sqrt(.5) x 0.832 = 0.076481, own 0.057942; calf 0.15 x 1.123859 =
//              0.168579; together 0.193973 m2, 9.9175 %
//   90 %       s = sqrt(ln(1 + 0.099175^2)) = 0.098933; 1.955859 exp(-s^2 / 2 + 1.281552 s)
//   = 2.209404 yield      6 + .5/1.725 + .25/2.17 + .12/1.46 + 1.45/1.45 = 7.487254 L, good to 4 %
//   times      1.955859 x 8 / 7.487254 = 2.089801, good to sqrt(.099175^2 + .04^2 + .1^2), the last
//              for the coat: 14.6409 %; for 90 %: 2.492040; with a twentieth left in the bucket
//              / 0.95 = 2.623200
//   paste      2.623200 x 7.487254 = 19.640564 L
//   masses     alum 1311.600 g, salt 655.800, soda 314.784, meal 3803.640, water 15.739199 L
TEST_CASE("two goats and a calf, from hides to paste") {
  const Batch batch = batch_of(three_hides());
  CHECK(near(batch.area.value, 1.955859 * square_metre, 1e-6 * square_metre));
  CHECK(near(batch.area.sd(), 0.193973 * square_metre, 1e-6 * square_metre));
  CHECK(near(batch.area_enough, 2.209404 * square_metre, 2e-6 * square_metre));
  CHECK(near(batch.paste_on_hides, 15.646873 * litre, 1e-5 * litre)); // 1.955859 x 8
  CHECK(near(batch.times_recipe, 2.623200, 1e-6));
  CHECK(near(batch.paste, 19.640564 * litre, 1e-5 * litre));
  CHECK(near(mass_of_role(batch, Role::alum), 1311.600 * gram, 0.001 * gram));
  CHECK(near(mass_of_role(batch, Role::salt), 655.800 * gram, 0.001 * gram));
  CHECK(near(mass_of_role(batch, Role::soda), 314.784 * gram, 0.001 * gram));
  CHECK(near(mass_of_role(batch, Role::meal), 3803.640 * gram, 0.001 * gram));
  CHECK(near(batch.alum_water, 10.492799 * litre, 1e-5 * litre));
  CHECK(near(batch.soda_water, 5.246400 * litre, 1e-5 * litre));
  CHECK(near(batch.second_vessel, 6.558000 * litre, 1e-5 * litre)); // 1.25 x 5.246400
  CHECK(batch.lots == 1);
  // source: water 0.9982 g/mL at 20 degrees: 15.739199 x 0.9982 = 15.710869 kg.
  CHECK(near(mass_of_role(batch, Role::water), 15710.869 * gram, 0.01 * gram));
  CHECK(batch.exchanges.empty());
  CHECK(batch.missing.empty());
  CHECK(near(batch.hides[0].one_coat, 2.304 * litre, 1e-9 * litre)); // 0.576 m2 x 4 mm
}

TEST_CASE("the liquor of that batch has the basicity and the gas worked by hand") {
  const Batch batch = batch_of(three_hides());
  // By hand: 1311.600 / 474.372 = 2.764919 mol Al, 314.784 / 286.138 = 1.100112 mol carbonate;
  // 2 x 1.100112 / 3 / 2.764919 = 26.5255 %; 1.100112 x 24.0551 L = 26.4633 L; bucket 1.25 x
  // 19.640564 + 26.4633 / 8 = 27.8586 L.
  CHECK(near(count(batch.liquor.amounts.aluminium, mole), 2.764919, 1e-5));
  CHECK(near(batch.liquor.basicity.value, 0.265255, 1e-6));
  CHECK(near(batch.liquor.carbon_dioxide, 26.4633 * litre, 1e-3 * litre));
  CHECK(near(batch.bucket, 27.8586 * litre, 1e-3 * litre));
}

TEST_CASE("the offer is the recipe's alum on the fleshed hide, without reserve") {
  const Batch batch = batch_of(three_hides());
  // By hand: 500 g / 7.487254 L x 8 mm = 0.534241 kg of alum on a square metre; goats 0.534241 /
  // (0.85 x 2.5) = 25.1408 %, calf 0.534241 / (0.85 x 4.5) = 13.9671 %; on 1.768 kg of goat and
  // 4.298761 of calf 0.534241 x 1.955859 / 6.066761 = 17.2234 %.
  CHECK(near(batch.hides[0].offer.value, 0.251408, 1e-6));
  CHECK(near(batch.hides[2].offer.value, 0.139671, 1e-6));
  CHECK(near(batch.offer.value, 0.172234, 1e-6));
  // A goat: mass by area 20 %, fleshings 10 %, coat 10 %, yield 4 %: sqrt(.0616) = 24.8193 %; a
  // calf sqrt(.09 + .0216) = 33.4066 %.
  CHECK(near(batch.hides[0].offer_spread.value, 0.248193, 1e-6));
  CHECK(near(batch.hides[2].offer_spread.value, 0.334066, 1e-6));
}

TEST_CASE("the offer of goats and a calf by live weight is as uncertain as their whole weight") {
  const Batch batch = batch_of(three_hides());
  // Alum goes with the area, and the whole weight is the sum of area x mass by area, so a species'
  // mass by area counts by its share of the weight: goats 0.201755 and 0.089669, calf 0.708576. By
  // hand, relative: goats shared 0.141421 x 0.291424, own 0.141421 x sqrt(0.201755^2 + 0.089669^2),
  // calf 0.30 x 0.708576, fleshings and coat 0.10 each; the areas where their shares (0.425388 and
  // 0.574612) differ from those, 0.133964, add goats shared 0.091924 x 0.133964, own 0.091924 x
  // sqrt(0.092745^2 + 0.041220^2), calf 0.15 x 0.133964. Together sqrt(0.001699 + 0.000975 +
  // 0.045187 + 0.02 + 0.000152 + 0.000087 + 0.000404 + 0.0016 of the yield) = 26.48 %; half a point
  // for what is left out.
  CHECK(near(batch.offer_spread.value, 0.2648, 0.005));
}

TEST_CASE("the offer of two goats is equally uncertain by live weight, by green weight, by one of "
          "each") {
  // By hand: 27 kg live are 0.576 m2, and so are 1.44 kg green; each has 1.224 kg fleshed and the
  // offer 25.1408 %. Mass by area 20 %, half its variance shared: 0.02 + 0.02 / 2; fleshings 10 %,
  // coat 10 %, yield 4 %, all shared: sqrt(0.03 + 0.0216) = 22.7156 %. The error of the live
  // weight's law falls out: alum and fleshed weight both go with the area.
  const AreaMeasure live = LiveWeight{27.0 * kilogram};
  const AreaMeasure green = GreenWeight{1.44 * kilogram};
  for (const auto &[first, second] :
       {std::pair{live, live}, std::pair{green, green}, std::pair{live, green}}) {
    Day day = three_hides();
    day.hides = {hide("a", "goat", first), hide("b", "goat", second)};
    const Batch batch = batch_of(day);
    CHECK(near(batch.offer.value, 0.251408, 1e-6));
    CHECK(near(batch.offer_spread.value, 0.227156, 1e-6));
  }
}

TEST_CASE("the coat's error is one for all hides, in the need and in the offer") {
  Day day = three_hides();
  day.hides = {hide("a", "sheep", KnownArea{1.0 * square_metre}),
               hide("b", "sheep", KnownArea{1.0 * square_metre})};
  for (auto &each : day.hides) each.fleshed_weight = 5.0 * kilogram;
  // By hand: areas 2 % and weights 1 % each on its own, over two hides sqrt(0.0005 / 2); coat 10 %,
  // yield 4 %: sqrt(0.00025 + 0.01 + 0.0016) = 10.8858 %.
  CHECK(near(batch_of(day).offer_spread.value, 0.108858, 1e-6));
  // The need: areas 2 % / sqrt(2), coat 10 %, yield 4 %: sqrt(0.0002 + 0.01 + 0.0016) = 10.8628 %.
  // For 90 %: s = sqrt(ln(1.0118)) = 0.108309; 16 / 7.487254 exp(-s^2 / 2 + 1.281552 s) / 0.95.
  CHECK(near(batch_of(day).times_recipe, 2.569261, 2e-6));
}

TEST_CASE("an exchanged alum and soda bring the same moles, and their water is made up for") {
  Day day = three_hides();
  day.shelf = {bag(forms::aluminium_sulfate_14), bag(forms::soda_anhydrous), bag(forms::salt)};
  const Batch batch = batch_of(day);
  const Batch plain = batch_of(three_hides());
  // By hand: 2.764919 / 2 x 594.342 = 821.654 g with 348.670 g of crystal water, where the alum had
  // 597.720: 249.050 g more water to pour, 0.249499 L. Soda 1.100112 x 105.988 = 116.599 g, without
  // the crystals' 198.185 g: 0.198543 L.
  CHECK(near(mass_of_role(batch, Role::alum), 821.654 * gram, 0.001 * gram));
  CHECK(near(mass_of_role(batch, Role::soda), 116.599 * gram, 0.001 * gram));
  CHECK(near(batch.alum_water, 10.742299 * litre, 2e-5 * litre));
  CHECK(near(batch.soda_water, 5.444942 * litre, 2e-5 * litre));
  REQUIRE(batch.exchanges.size() == 2);
  CHECK(batch.exchanges[0].role == Role::alum);
  CHECK(near(batch.exchanges[0].recipe_mass, 1311.600 * gram, 0.001 * gram));
  CHECK(near(batch.exchanges[0].times_as_strong, 1311.600 / 821.654, 1e-5));
  CHECK(near(batch.exchanges[1].times_as_strong, 2.700, 5e-4));
  for (const auto &exchange : batch.exchanges) {
    REQUIRE(exchange.ingredient < batch.ingredients.size());
    CHECK(batch.ingredients[exchange.ingredient].role == exchange.role);
    CHECK(batch.ingredients[exchange.ingredient].mass == exchange.mass);
  }

  const auto moles_of_water = [](const Batch &of) { // water 18.015 g/mol
    double sum = 0.0;
    for (const auto &each : of.ingredients)
      sum += count(each.mass, gram) * (each.role == Role::water ? 1.0 : each.form.water.value);
    return sum / 18.015;
  };
  // Of the recipe: (15710.869 + 597.720 + 198.185) / 18.015 = 916.2794 mol.
  CHECK(near(moles_of_water(plain), 916.279, 0.01));
  CHECK(near(moles_of_water(batch), 916.279, 0.01));
  CHECK(near(count(batch.liquor.amounts.aluminium, mole), 2.764919, 1e-5));
  CHECK(near(count(batch.liquor.amounts.hydroxide, mole), 2.200225, 1e-5));
  CHECK(near(batch.liquor.basicity.value, 0.265255, 1e-6));
  CHECK(batch.area_enough == plain.area_enough);
}

TEST_CASE("water is kept for two alums drawn together and for a short shelf") {
  Day day = three_hides();
  day.shelf = {bag(forms::potassium_alum, 500.0 * gram), bag(forms::aluminium_sulfate_18),
               bag(forms::salt), bag(forms::soda_crystals, 100.0 * gram)};
  const Batch batch = batch_of(day);
  // By hand: the missing 811.600 g of alum are 1.710893 mol Al, 0.855447 x 666.402 = 570.071 g of
  // the 18 hydrate with 277.396 g of water, for 369.861 g: 92.465 g more, 0.092632 L.
  CHECK(near(mass_of_role(batch, Role::alum), 1070.071 * gram, 0.01 * gram));
  CHECK(near(batch.alum_water, 10.585431 * litre, 5e-5 * litre));
  // The soda is 214.784 g short; its water is poured as for the whole.
  REQUIRE(batch.missing.size() == 1);
  CHECK(batch.missing[0].role == Role::soda);
  CHECK(near(batch.missing[0].mass, 214.784 * gram, 0.001 * gram));
  CHECK(near(batch.soda_water, 5.246400 * litre, 1e-5 * litre));
}

TEST_CASE("what the shelf lacks stands among the ingredients, to get") {
  Day day = three_hides();
  Form meal;
  meal.role = Role::meal;
  meal.name = "corn meal";
  day.shelf = {priced(forms::potassium_alum, 1.0), priced(forms::salt, 1.0),
               priced(forms::soda_crystals, 1.0, 100.0 * gram), priced(meal, 1.0, 3000.0 * gram)};
  const Batch batch = batch_of(day);
  // By hand: 314.784 - 100 = 214.784 g of soda and 3803.640 - 3000 = 803.640 g of meal.
  int to_get = 0;
  for (const auto &ingredient : batch.ingredients) {
    if (!has(ingredient.name, "(to get)")) continue;
    ++to_get;
    CHECK_FALSE(ingredient.bag.has_value());
    CHECK_FALSE(ingredient.cost.has_value());
    if (ingredient.role == Role::soda) {
      CHECK(ingredient.name == "washing soda crystals (decahydrate) (to get)");
      CHECK(near(ingredient.mass, 214.784 * gram, 0.001 * gram));
    } else {
      CHECK(ingredient.name == "corn meal (to get)");
      CHECK(ingredient.grain == find_bulk("corn meal"));
      CHECK(near(ingredient.mass, 803.640 * gram, 0.001 * gram));
    }
  }
  CHECK(to_get == 2);
  CHECK(batch.missing.size() == 2);
  // The liquor is the whole one, and the cost is not the whole cost.
  CHECK(near(batch.liquor.basicity.value, 0.265255, 1e-6));
  CHECK_FALSE(batch.cost_complete);
  // The passing twin.
  for (const auto &ingredient : batch_of(three_hides()).ingredients)
    CHECK_FALSE(has(ingredient.name, "(to get)"));
}

TEST_CASE("a recipe of one water has no second vessel, with another soda neither") {
  Day day = three_hides();
  day.recipe.water_for_alum = 6.0 * litre;
  day.recipe.water_for_salt_and_soda = 0.0 * litre;
  const Batch batch = batch_of(day);
  CHECK(batch.soda_water == 0.0 * litre);
  CHECK(batch.second_vessel == 0.0 * litre);
  CHECK(near(batch.alum_water, 15.739199 * litre, 1e-5 * litre)); // 2.623200 x 6
  // Anhydrous soda lacks the crystals' 198.185 g of water, 0.198543 L: more of the one water.
  day.shelf = {bag(forms::potassium_alum), bag(forms::salt), bag(forms::soda_anhydrous)};
  const Batch anhydrous = batch_of(day);
  CHECK(anhydrous.second_vessel == 0.0 * litre);
  CHECK(near(anhydrous.alum_water, 15.937742 * litre, 2e-5 * litre));
}

TEST_CASE("a small bucket takes equal lots, and one lot is its part of all that is mixed") {
  Day day = three_hides();
  day.shelf = {priced(forms::potassium_alum, 4.0), priced(forms::salt, 1.0),
               priced(forms::soda_anhydrous, 2.0)};
  day.bucket.volume = 30.0 * litre;
  CHECK(batch_of(day).lots == 1);
  day.bucket.volume = 15.0 * litre; // 27.8586 / 15 = 1.86
  const Batch batch = batch_of(day);
  CHECK(batch.lots == 2);
  const Batch lot = one_lot(batch);
  CHECK(lot.lots == 1);
  CHECK(near(lot.times_recipe, 1.311600, 1e-6));            // 2.623200 / 2
  CHECK(near(lot.paste, 9.820282 * litre, 1e-5 * litre));   // 19.640564 / 2
  CHECK(near(lot.bucket, 13.929311 * litre, 1e-4 * litre)); // 27.858622 / 2
  CHECK(lot.bucket <= *day.bucket.volume);
  CHECK(near(mass_of_role(lot, Role::alum), 655.800 * gram, 0.001 * gram));
  CHECK(near(mass_of_role(lot, Role::soda), 58.2994 * gram, 0.001 * gram)); // 116.5987 / 2
  CHECK(near(lot.alum_water, 5.246400 * litre, 1e-5 * litre));
  CHECK(near(lot.soda_water, 2.722471 * litre, 2e-5 * litre));    // 5.444942 / 2
  CHECK(near(lot.second_vessel, 3.403089 * litre, 2e-5 * litre)); // 1.25 x 2.722471
  CHECK(near(lot.liquor.carbon_dioxide, 13.2317 * litre, 1e-3 * litre));
  CHECK(near(count(lot.liquor.amounts.aluminium, mole), 1.382459, 1e-5));
  REQUIRE(lot.exchanges.size() == 1);
  CHECK(near(lot.exchanges[0].mass, 58.2994 * gram, 0.001 * gram));
  CHECK(near(lot.exchanges[0].recipe_mass, 157.392 * gram, 0.001 * gram)); // 314.784 / 2
  // By hand: 0.655800 x 4 + 0.327900 + 0.0582994 x 2 = 3.067699.
  CHECK(near(count(lot.cost, tender), 3.067699, 1e-5));
  // Hides, coat, offer and basicity are the day's.
  CHECK(lot.area.value == batch.area.value);
  CHECK(lot.offer == batch.offer);
  CHECK(lot.liquor.basicity == batch.liquor.basicity);
  day.bucket.volume = 10.0 * litre; // 2.79
  CHECK(batch_of(day).lots == 3);
}

TEST_CASE("meal from a bag of which only the grain is known keeps the grain's name") {
  Day day = three_hides();
  Form meal;
  meal.role = Role::meal; // of meal a bag knows its role and its grain only
  day.shelf = {bag(forms::potassium_alum),
               bag(forms::salt),
               bag(forms::soda_crystals),
               {meal, find_bulk("rye flour")}};
  for (const auto &ingredient : batch_of(day).ingredients) {
    if (ingredient.role != Role::meal) continue;
    CHECK(ingredient.name == "rye flour");
    CHECK(ingredient.grain == find_bulk("rye flour"));
  }
}

TEST_CASE("another meal than the recipe's is no exchange, for no meal is stronger than another") {
  Day day = three_hides();
  Form rye;
  rye.role = Role::meal;
  rye.name = "rye flour";
  day.shelf = {bag(forms::potassium_alum),
               bag(forms::salt),
               bag(forms::soda_crystals),
               {rye, find_bulk("rye flour")}};
  CHECK(batch_of(day).exchanges.empty());
}

TEST_CASE("loss, chance and coats change the paste as they should") {
  Day day = three_hides();
  const double times = batch_of(day).times_recipe;
  day.working_loss = {0.0};
  CHECK(near(batch_of(day).times_recipe, 2.492040, 2e-6)); // 2.623200 x 0.95
  day.working_loss = {0.24};
  CHECK(near(batch_of(day).times_recipe, times * 0.95 / 0.76, 1e-9));
  day = three_hides();
  day.chance = {0.5}; // the median: 2.089801 / sqrt(1 + 0.146409^2) / 0.95 = 2.176586
  CHECK(near(batch_of(day).times_recipe, 2.176586, 2e-6));
  day = three_hides();
  day.coats = 1;
  CHECK(near(batch_of(day).times_recipe, times / 2.0, 1e-9));
  CHECK(near(batch_of(day).offer.value, 0.172234 / 2.0, 1e-6));
  day.coats = 3;
  day.coat = 2.0 * millimetre;
  CHECK(near(batch_of(day).times_recipe, times * 6.0 / 8.0, 1e-9));
}

TEST_CASE("the bulletin's coat of an eighth of an inch takes 3.175 litres a square metre") {
  Day day;
  day.recipe = bulletin();
  day.hides = {hide("a", "sheep", KnownArea{1.0 * square_metre})};
  day.coats = 1;
  const Batch batch = batch_of(day);
  CHECK(near(batch.paste_on_hides, 3.175 * litre, 1e-9 * litre));
  CHECK(near(batch.liquor.basicity.value, 0.276, 0.0005));
}

TEST_CASE("cost is price times what is drawn, and is complete only where all is priced") {
  Day day = three_hides();
  Form meal;
  meal.role = Role::meal;
  meal.name = "corn meal";
  day.shelf = {priced(forms::potassium_alum, 4.0), priced(forms::salt, 1.0),
               priced(forms::soda_crystals, 2.0), priced(meal, 0.5)};
  const Batch batch = batch_of(day);
  // By hand: 1.311600 x 4 + 0.655800 + 0.314784 x 2 + 3.803640 / 2 = 8.433588.
  CHECK(near(count(batch.cost, tender), 8.433588, 1e-5));
  CHECK(batch.cost_complete);
  day.shelf[1].price.reset();
  CHECK(near(count(batch_of(day).cost, tender), 7.777788, 1e-5));
  CHECK_FALSE(batch_of(day).cost_complete);
}

TEST_CASE("a day without hides and a hide without an area are refused") {
  Day day = three_hides();
  day.hides.push_back(hide("d7", "deer", LiveWeight{60.0 * kilogram}));
  const auto refused = make_batch(day);
  REQUIRE_FALSE(refused.ok());
  CHECK(has(refused.problem().found, "hide 'd7'"));
  day.hides.clear();
  REQUIRE_FALSE(make_batch(day).ok());
  CHECK(has(make_batch(day).problem().found, "no hides"));
}

TEST_CASE("two goats of one law need more reserve than a goat and a sheep of equal spread") {
  Day day = three_hides();
  day.hides = {hide("a", "goat", LiveWeight{27.0 * kilogram}),
               hide("b", "goat", LiveWeight{27.0 * kilogram})};
  // By hand: shared 0.091924 x 1.152 and own 0.091924 x 0.576 sqrt(2): 0.129700 m2, 11.258 %; with
  // nothing shared it would be 9.192 %.
  CHECK(near(batch_of(day).area.spread().value, 0.112583, 1e-5));
}

TEST_CASE("a recipe without soda or meal makes a liquor without gas") {
  Day day = three_hides();
  day.recipe.soda.reset();
  day.recipe.meal.reset();
  day.recipe.extras = {{"saltpetre", 15.0 * gram}};
  const Batch batch = batch_of(day);
  CHECK(batch.liquor.carbon_dioxide == 0.0 * litre);
  CHECK(batch.liquor.basicity.value == 0.0);
  CHECK(mass_of_role(batch, Role::meal) == 0.0 * kilogram);
  CHECK(close(mass_of_role(batch, Role::extra), batch.times_recipe * 15.0 * gram, 1e-12));
}

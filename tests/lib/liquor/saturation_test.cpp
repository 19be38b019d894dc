// What does not dissolve.
#include <whittaw/liquor/saturation.hpp>

#include "close.hpp"

#include <array>

using namespace whittaw;
using whittaw_test::near;

TEST_CASE("what dissolves leaves nothing over") {
  const std::array salt{Dissolving{forms::salt, 300.0 * gram}};
  const auto rows = saturation(1.0 * kilogram, salt, degrees_celsius(20.0));
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].solute == Solute::sodium_chloride);
  CHECK(near(rows[0].present.value, 0.30, 1e-12));
  CHECK(near(rows[0].limit.value, 0.359, 1e-12));
  CHECK_FALSE(rows[0].overfull());
  CHECK(rows[0].undissolved == 0.0 * kilogram);
}

TEST_CASE("of a salt without water all above the limit stays") {
  // By hand: 400 g in 1 kg at 20 degrees, limit 359 g: 41 g stay.
  const std::array salt{Dissolving{forms::salt, 400.0 * gram}};
  const auto rows = saturation(1.0 * kilogram, salt, degrees_celsius(20.0));
  CHECK(rows[0].overfull());
  CHECK(near(rows[0].undissolved, 41.0 * gram, 1e-9 * gram));
  CHECK_FALSE(rows[0].needs.has_value()); // 371 g at 60 degrees is too little too
}

TEST_CASE("crystals that stay keep their water, and those that dissolve bring theirs") {
  // Potash alum at 10 degrees, 4.0 g anhydrous in 100 g of water. By hand: 100 g hold 54.4282 g of
  // the anhydrous salt and 45.5718 g of water. In 1 kg of water x grams dissolve where
  // 0.544282 x = 0.04 (1000 + 0.455718 x): x = 40 / (0.544282 - 0.0182287) = 76.0378 g; 23.9622
  // stay.
  const std::array alum{Dissolving{forms::potassium_alum, 100.0 * gram}};
  const auto rows = saturation(1.0 * kilogram, alum, degrees_celsius(10.0));
  REQUIRE(rows.size() == 1);
  CHECK(near(rows[0].present.value, 54.4282 / 1045.5718, 1e-7));
  CHECK(near(rows[0].undissolved, 23.9622 * gram, 1e-3 * gram));
  // 5.20559 in 100 g: 10 + 10 x 1.20559 / 1.9 = 16.345 degrees.
  CHECK(near(celsius_value(rows[0].needs.value()), 16.345, 1e-2));
}

TEST_CASE("water of crystallisation of one chemical dissolves the other") {
  // By hand: 1 kg of water and 629.591 g from 1 kg of soda crystals; 500 g of salt are 30.68 % of
  // 1629.591 g, below 35.9, where 1 kg alone would leave 141 g.
  const std::array both{Dissolving{forms::salt, 500.0 * gram},
                        Dissolving{forms::soda_crystals, 1.0 * kilogram}};
  const auto rows = saturation(1.0 * kilogram, both, degrees_celsius(20.0));
  REQUIRE(rows.size() == 2);
  CHECK(near(rows[0].present.value, 0.30683, 1e-5));
  CHECK_FALSE(rows[0].overfull());
  // Soda: 370.409 / 1629.591 = 0.22730 against 0.215. x stay where 370.409 - 0.370409 x = 0.215
  // (1629.591 - 0.629591 x): x = 20.0469 / (0.370409 - 0.135362) = 85.289 g.
  CHECK(near(rows[1].present.value, 0.22730, 1e-5));
  CHECK(near(rows[1].undissolved, 85.29 * gram, 0.05 * gram));
}

TEST_CASE("two forms of one salt are held together against its limit") {
  // By hand: 185.2045 g of anhydrous soda from 500 g of crystals, with 314.7955 g of water, and
  // 100 g anhydrous: 285.2045 / 1314.7955 = 0.21692.
  const std::array soda{Dissolving{forms::soda_crystals, 500.0 * gram},
                        Dissolving{forms::soda_anhydrous, 100.0 * gram}};
  const auto rows = saturation(1.0 * kilogram, soda, degrees_celsius(20.0));
  REQUIRE(rows.size() == 1);
  CHECK(near(rows[0].present.value, 0.21692, 1e-5));
  CHECK(rows[0].overfull());
}

TEST_CASE("never more stays than was put in, and what is nothing is not listed") {
  const std::array much{Dissolving{forms::potassium_alum, 1.0 * kilogram}};
  const auto rows = saturation(1.0 * gram, much, degrees_celsius(0.0));
  CHECK(rows[0].undissolved <= 1.0 * kilogram);
  CHECK(rows[0].undissolved > 0.9 * kilogram);
  const std::array none{Dissolving{forms::salt, 0.0 * gram}, Dissolving{Form{}, 5.0 * gram}};
  CHECK(saturation(1.0 * kilogram, none, degrees_celsius(20.0)).empty());
}

TEST_CASE("a pound of potash alum in a US gallon needs about 21 degrees") {
  // By hand: 453.59 x 0.544282 = 246.88 g in 3785.4 x 0.9982 + 206.71 = 3985.3 g of water, 6.195 in
  // 100 g; 20 + 10 x (6.195 - 5.9) / 2.5 = 21.2.
  const std::array alum{Dissolving{forms::potassium_alum, pound}};
  const auto rows = saturation(3785.412 * 0.9982 * gram, alum, degrees_celsius(10.0));
  REQUIRE(rows.size() == 1);
  CHECK(near(rows[0].present.value, 0.06195, 1e-5));
  CHECK(near(celsius_value(rows[0].needs.value()), 21.2, 0.05));
}

TEST_CASE("the water asked for is three degrees warmer than the table's, in whole degrees") {
  // By hand: the pound in a gallon needs 21.2 degrees by the table; 24.2, rounded up 25.
  const std::array alum{Dissolving{forms::potassium_alum, pound}};
  const auto at = [&](double celsius) {
    const auto stated = degrees_celsius(celsius);
    return warmer_to_dissolve(saturation(3785.412 * 0.9982 * gram, alum, stated), stated);
  };
  REQUIRE(at(10.0).has_value());
  CHECK(near(celsius_value(*at(10.0)), 25.0, 1e-9));
  CHECK_FALSE(at(25.0).has_value()); // it is enough
  // Salt that no water holds has no such temperature, nor soda in too hot a water: 480 g are 48.0
  // in 100 g, which water holds from 38.9 to 46.7 degrees, and not at 60, where 46.0 is the limit.
  const std::array salt{Dissolving{forms::salt, 400.0 * gram}};
  const auto cold = degrees_celsius(10.0);
  CHECK_FALSE(warmer_to_dissolve(saturation(1.0 * kilogram, salt, cold), cold).has_value());
  const std::array soda{Dissolving{forms::soda_anhydrous, 480.0 * gram}};
  const auto hot = degrees_celsius(60.0);
  const auto rows = saturation(1.0 * kilogram, soda, hot);
  CHECK(rows[0].overfull());
  CHECK_FALSE(warmer_to_dissolve(rows, hot).has_value());
  // Of two salts the one that needs more decides.
  const std::array both{Dissolving{forms::soda_crystals, 300.0 * gram},
                        Dissolving{forms::potassium_alum, 100.0 * gram}};
  // By hand: 54.4282 g of alum in 1000 + 45.5718 + 188.877 = 1234.449 g of water, 4.4091 in 100 g:
  // 10 + 10 x 0.4091 / 1.9 = 12.153, with 3 degrees 15.153, rounded up 16. The soda, 111.123 g or
  // 9.0018, dissolves at 10 degrees.
  const auto warm = warmer_to_dissolve(saturation(1.0 * kilogram, both, cold), cold);
  REQUIRE(warm.has_value());
  CHECK(near(celsius_value(*warm), 16.0, 1e-9));
}

TEST_CASE("a liquor crystallises below the temperature that its least soluble salt needs") {
  // By hand, see below: the bulletin's alum needs 10.8 degrees; its salt and soda none.
  const std::array all{Dissolving{forms::potassium_alum, pound},
                       Dissolving{forms::salt, 8.0 * ounce},
                       Dissolving{forms::soda_crystals, 4.0 * ounce}};
  const Mass water = 5678.118 * 0.9982 * gram;
  const auto first = first_to_crystallise(saturation(water, all, degrees_celsius(30.0)));
  REQUIRE(first.has_value());
  CHECK(near(celsius_value(first->below), 10.8, 0.05));
  CHECK(first->solute == Solute::potassium_alum);
  // 100 g of alum: 54.43 in 5667.9 + 45.57 g of water, 0.95 in 100 g, below the 3.0 at freezing.
  const std::array little{Dissolving{forms::potassium_alum, 100.0 * gram}};
  CHECK_FALSE(first_to_crystallise(saturation(water, little, degrees_celsius(30.0))).has_value());
}

TEST_CASE("the bulletin's mixed liquor holds to about 11 degrees") {
  // By hand: 246.88 g of alum in 5678.1 x 0.9982 + 206.71 + 113.40 x 0.629591 = 5946.0 g of water,
  // 4.152 in 100 g; 10 + 10 x 0.152 / 1.9 = 10.8.
  const std::array all{Dissolving{forms::potassium_alum, pound},
                       Dissolving{forms::salt, 8.0 * ounce},
                       Dissolving{forms::soda_crystals, 4.0 * ounce}};
  const auto rows = saturation(5678.118 * 0.9982 * gram, all, degrees_celsius(20.0));
  REQUIRE(rows.size() == 3);
  CHECK(rows[0].solute == Solute::potassium_alum);
  CHECK(near(celsius_value(rows[0].needs.value()), 10.8, 0.05));
  CHECK_FALSE(rows[0].overfull());
  CHECK(rows[0].undissolved == 0.0 * kilogram);
}

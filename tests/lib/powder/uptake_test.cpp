#include "powders.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace whittaw_test;

TEST_CASE("the uptake table is in the order of the parts, and each row is an assumption") {
  for (std::size_t i = 0; i < uptake_table.size(); ++i) {
    CHECK(static_cast<std::size_t>(uptake_table[i].part) == i);
    CHECK(uptake_table[i].source.mark == Mark::assumption);
    CHECK(uptake_table[i].kept.value > 0.0);
    CHECK(uptake_table[i].kept.value < 1.0);
  }
}

TEST_CASE("what is left on the surface is what the skin did not keep") {
  Contents contents;
  for (auto &micro : contents.micro) micro = 1'000'000;
  const Contents left = left_on_surface(contents);
  // kept: aluminium and hydroxide 0.40, other salts 0.30, meal 0.02, other 0.50
  CHECK(left[Part::aluminium] == 600'000);
  CHECK(left[Part::sulfate] == 700'000);
  CHECK(left[Part::hydroxide] == 600'000);
  CHECK(left[Part::sodium] == 700'000);
  CHECK(left[Part::potassium] == 700'000);
  CHECK(left[Part::ammonium] == 700'000);
  CHECK(left[Part::chloride] == 700'000);
  CHECK(left[Part::meal] == 980'000);
  CHECK(left[Part::other] == 500'000);
  CHECK(is_empty(left_on_surface(Contents{})));
}

TEST_CASE("what is left and what was kept are whole counts that add up") {
  Contents contents;
  contents[Part::aluminium] = 3; // kept 1.2, rounded to 1
  contents[Part::sulfate] = 5;   // kept 1.5, rounded away from nothing to 2
  const Contents left = left_on_surface(contents);
  CHECK(left[Part::aluminium] == 2);
  CHECK(left[Part::sulfate] == 3);
}

TEST_CASE("the strength of a powder: aluminium that is left over the dry mass that is left") {
  // Left of 1258.192 g with 1 mol Al: 0.6 x 26.982 + 1.4 x 96.056 + 0.7 x 39.098 + 980 =
  // 1158.0362 g with 0.6 mol: (0.6 / 1158.0362) / (1 / 1258.192) = 0.6518926
  const Contents paste = round_paste();
  const Contents left = left_on_surface(paste);
  CHECK(close(dry_mass(left), 1158.0362 * gram, 1e-9));
  CHECK(near(strength_against(left, paste).value, 0.6518926, 1e-7));
  CHECK(near(strength_against(paste, paste).value, 1.0, 1e-12));
}

TEST_CASE("strength is none where there is no aluminium, in the powder or in the paste") {
  Contents salt;
  salt[Part::sodium] = 1'000'000;
  salt[Part::chloride] = 1'000'000;
  CHECK(strength_against(salt, round_paste()).value == 0.0);
  CHECK(strength_against(round_paste(), salt).value == 0.0);
  CHECK(strength_against(round_paste(), Contents{}).value == 0.0);
}

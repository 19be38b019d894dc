#include "bulletin.hpp"
#include "powders.hpp"

#include <doctest/doctest.h>

#include <cstdint>

using namespace whittaw_test;

namespace {

/// With a coat in round figures.
Recipe bulletin_of_two_millimetres() {
  Recipe recipe = bulletin();
  recipe.coat = 2.0 * millimetre;
  return recipe;
}

bool within(std::int64_t got, std::int64_t want, std::int64_t allowed) {
  return got - want <= allowed && want - got <= allowed;
}

} // namespace

// source: Farmers' Bulletin 1334: 1 lb alum, 4 oz soda crystals, 8 oz salt. Molar masses by hand
// from H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, Al 26.982, S 32.06, Cl 35.45, K 39.098.
TEST_CASE("a pound of potash alum brings its aluminium, twice the sulfate, as much potassium") {
  // 453.59237 / 474.372 = 0.956195
  const Contents contents = contents_of(forms::potassium_alum, pound);
  CHECK(contents[Part::aluminium] == 956'195);
  CHECK(contents[Part::sulfate] == 1'912'390);
  CHECK(contents[Part::potassium] == 956'195);
  CHECK(contents[Part::ammonium] == 0);
  CHECK(contents[Part::sodium] == 0);
  CHECK(contents[Part::hydroxide] == 0);
}

TEST_CASE("ammonium alum brings ammonium and no potassium") {
  // 100 / 453.313 = 0.220598
  const Contents contents = contents_of(forms::ammonium_alum, 100.0 * gram);
  CHECK(contents[Part::aluminium] == 220'598);
  CHECK(contents[Part::ammonium] == 220'598);
  CHECK(contents[Part::sulfate] == 441'196);
  CHECK(contents[Part::potassium] == 0);
}

TEST_CASE("aluminium sulfate brings three sulfates for two aluminium") {
  // Al2(SO4)3.18H2O: 2 x 26.982 + 3 x 96.056 + 18 x 18.015 = 666.402; 333.201 g hold 1 mol Al
  const Contents contents = contents_of(forms::aluminium_sulfate_18, 333.201 * gram);
  CHECK(contents[Part::aluminium] == 1'000'000);
  CHECK(contents[Part::sulfate] == 1'500'000);
  CHECK(contents[Part::potassium] == 0);
}

TEST_CASE("a grade by its alumina is aluminium sulfate too") {
  // 17 % Al2O3: 1000 g hold 170 / 101.961 x 2 = 3.334608 mol Al, 5.001912 mol SO4
  const Contents contents = contents_of(aluminium_sulfate_of_alumina({0.17}), 1000.0 * gram);
  CHECK(contents[Part::aluminium] == 3'334'608);
  CHECK(contents[Part::sulfate] == 5'001'912);
}

TEST_CASE("salt brings as much sodium as chloride, soda as much sodium as hydroxide") {
  // 58.44 g of salt are 1 mol. 286.138 g of soda crystals are 1 mol of carbonate, 2 of hydroxide;
  // 84.006 g of bicarbonate bring 1.
  const Contents salt = contents_of(forms::salt, 58.44 * gram);
  CHECK(salt[Part::sodium] == 1'000'000);
  CHECK(salt[Part::chloride] == 1'000'000);
  CHECK(salt[Part::hydroxide] == 0);
  const Contents soda = contents_of(forms::soda_crystals, 286.138 * gram);
  CHECK(soda[Part::sodium] == 2'000'000);
  CHECK(soda[Part::hydroxide] == 2'000'000);
  const Contents bicarbonate = contents_of(forms::sodium_bicarbonate, 84.006 * gram);
  CHECK(bicarbonate[Part::sodium] == 1'000'000);
  CHECK(bicarbonate[Part::hydroxide] == 1'000'000);
}

TEST_CASE("the bulletin's paste once over, part by part") {
  Day day;
  day.date = "2024-11-02";
  day.recipe = bulletin_of_two_millimetres();
  day.hides = {{"a", find_species("goat"), KnownArea{0.5 * square_metre}}};
  const auto batch = make_batch(day);
  REQUIRE(batch.ok());
  const double times = batch->times_recipe;
  const auto wanted = [&](double once) { return static_cast<std::int64_t>(1e6 * once * times); };
  const Contents contents = contents_of(*batch);
  // 1 lb alum 0.9561955 mol; 4 oz soda 113.39809 / 286.138 x 2 = 0.7926112 mol OH; 8 oz salt
  // 226.796185 / 58.44 = 3.8808382 mol Cl; sodium 0.7926112 + 3.8808382; meal 1360.77711 g
  CHECK(within(contents[Part::aluminium], wanted(0.9561955), 2));
  CHECK(within(contents[Part::sulfate], wanted(1.9123910), 3));
  CHECK(within(contents[Part::potassium], wanted(0.9561955), 2));
  CHECK(within(contents[Part::hydroxide], wanted(0.7926112), 2));
  CHECK(within(contents[Part::sodium], wanted(4.6734494), 4));
  CHECK(within(contents[Part::chloride], wanted(3.8808382), 3));
  CHECK(within(contents[Part::meal], wanted(1360.77711), 20));
  CHECK(contents[Part::other] == 0);
  // Without water: alum 453.592 x (1 - 216.18 / 474.372) = 246.882, salt 226.796, NaOH of the soda
  // 0.7926112 x 39.997 = 31.702, meal 1360.777: 1866.157 g
  CHECK(close(dry_mass(contents), times * 1866.1574 * gram, 1e-6));
}

TEST_CASE("what is not alum, salt, soda or meal is kept account of as other") {
  Day day;
  day.date = "2024-11-02";
  day.recipe = bulletin_of_two_millimetres();
  day.recipe.extras = {{"egg yolk", 200.0 * gram}};
  day.hides = {{"a", find_species("goat"), KnownArea{0.5 * square_metre}}};
  const auto batch = make_batch(day);
  REQUIRE(batch.ok());
  const double grams = static_cast<double>(contents_of(*batch)[Part::other]) * 1e-6;
  CHECK(close(grams, 200.0 * batch->times_recipe, 1e-8));
}

TEST_CASE("on a hide goes what its coats use of the paste") {
  Day day;
  day.date = "2024-11-02";
  day.recipe = bulletin_of_two_millimetres();
  day.hides = {{"a", find_species("goat"), KnownArea{0.5 * square_metre}},
               {"b", find_species("goat"), KnownArea{0.25 * square_metre}}};
  const auto batch = make_batch(day);
  REQUIRE(batch.ok());
  // The recipe's volumes added up: 3.785412 x 1.5 + 453.592 / 1.725 mL + 226.796 / 2.17 mL +
  // 113.398 / 1.46 mL + 1360.777 / 1.45 mL = 5.678118 + 0.262952 + 0.104514 + 0.077670 + 0.938467
  // = 7.061721 L. Two coats of 2 mm on 0.5 m2 use 2 L, with 2 / 7.061721 of a pound of alum:
  // 0.2832171 x 0.9561955 = 0.2708109 mol; half as much on half the area.
  const Contents on_a = contents_on_hide(*batch, 0);
  const Contents on_b = contents_on_hide(*batch, 1);
  CHECK(within(on_a[Part::aluminium], 270'811, 2));
  CHECK(within(on_b[Part::aluminium], 135'405, 2));
  CHECK(within(on_a[Part::meal], 385'395'330, 400)); // 0.2832171 x 1360.77711 g
}

TEST_CASE("the dry mass of each part alone is its molar mass") {
  const struct {
    Part part;
    double grams;
  } rows[] = {{Part::aluminium, 26.982}, {Part::sulfate, 96.056},   {Part::hydroxide, 17.007},
              {Part::sodium, 22.990},    {Part::potassium, 39.098}, {Part::ammonium, 18.039},
              {Part::chloride, 35.45},   {Part::meal, 1.0},         {Part::other, 1.0}};
  for (const auto &row : rows) {
    Contents contents;
    contents[row.part] = 1'000'000;
    CHECK(close(dry_mass(contents), row.grams * gram, 1e-12));
  }
  CHECK(close(dry_mass(round_paste()), 1258.192 * gram, 1e-12));
  CHECK(dry_mass(Contents{}) == 0.0 * kilogram);
}

TEST_CASE("the parts are in the table's order, each once") {
  for (std::size_t i = 0; i < part_table.size(); ++i)
    CHECK(static_cast<std::size_t>(part_table[i].part) == i);
}

TEST_CASE("a share is rounded to whole counts and the rest is exact") {
  Contents contents;
  contents[Part::aluminium] = 10;
  contents[Part::sulfate] = 1;
  contents[Part::meal] = 1'000'000'001;
  const Contents third = share_of(contents, Share{1.0 / 3.0});
  CHECK(third[Part::aluminium] == 3);
  CHECK(third[Part::sulfate] == 0);
  CHECK(third[Part::meal] == 333'333'334); // 333 333 333.67
  const Contents rest = contents - third;
  CHECK(rest[Part::aluminium] == 7);
  CHECK(rest[Part::sulfate] == 1);
  CHECK(rest[Part::meal] == 666'666'667);
  CHECK(third + rest == contents);
  CHECK(share_of(contents, Share{1.0}) == contents);
  CHECK(is_empty(share_of(contents, Share{0.0})));
}

TEST_CASE("any share and its rest add up and neither is below nothing") {
  Contents contents;
  for (std::size_t i = 0; i < contents.micro.size(); ++i)
    contents.micro[i] = static_cast<std::int64_t>(i * i * i * 7919 + i);
  for (int step = 0; step <= 1000; ++step) {
    const Contents taken = share_of(contents, Share{step / 1000.0});
    const Contents rest = contents - taken;
    REQUIRE(taken + rest == contents);
    for (std::size_t i = 0; i < contents.micro.size(); ++i) {
      REQUIRE(taken.micro[i] >= 0);
      REQUIRE(rest.micro[i] >= 0);
    }
  }
}

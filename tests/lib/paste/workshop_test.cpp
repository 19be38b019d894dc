// A batch by weight, by volume and by scoops.
#include <whittaw/paste/checks.hpp>
#include <whittaw/paste/workshop.hpp>

#include "close.hpp"
#include "days.hpp"

#include <cmath>
#include <optional>
#include <string>

using namespace whittaw;
using namespace whittaw_test;

namespace {

constexpr Density gram_per_cup = gram / us_cup;

Day scooped_day(Mass soda) {
  Day day = three_hides();
  day.recipe.soda->mass = soda;
  day.shelf = {{forms::potassium_alum, find_bulk("powdered alum")},
               {forms::salt, find_bulk("table salt")},
               {forms::soda_anhydrous, find_bulk("light soda ash")}};
  return day;
}
Workshop cups() {
  Workshop workshop;
  workshop.scoops = {{us_cup, "1 cup"},         {us_cup / 2.0, "1/2 cup"},
                     {us_cup / 3.0, "1/3 cup"}, {us_cup / 4.0, "1/4 cup"},
                     {us_tablespoon, "1 tbsp"}, {us_teaspoon, "1 tsp"}};
  workshop.ratio_tolerance = {0.01};
  return workshop;
}
std::optional<Check> scoops_check(const Day &day, const Workshop &workshop) {
  const Batch batch = batch_of(day);
  for (const auto &check :
       check_batch(day, batch, workshop, measure_batch(batch, workshop), UnitSystem::metric))
    if (check.id == "scoops") return check;
  return std::nullopt;
}
std::size_t place_of(const Batch &batch, Role role) {
  for (std::size_t i = 0; i < batch.ingredients.size(); ++i)
    if (batch.ingredients[i].role == role) return i;
  return batch.ingredients.size();
}

} // namespace

TEST_CASE("a workshop's own weighings take the place of the published range and shrink it") {
  const BulkRow *granular = find_bulk("granular aluminium sulfate");
  Workshop workshop;
  const auto published = bulk_density(*granular, workshop);
  REQUIRE(published.has_value());
  CHECK(close(count(published->density.value, gram_per_cup), 195.5, 1e-9)); // (171 + 220) / 2

  workshop.weighings.push_back({find_bulk("powdered alum"), {{150.0 * gram, us_cup}}});
  CHECK(close(count(bulk_density(*granular, workshop)->density.value, gram_per_cup), 195.5, 1e-9));

  workshop.weighings.push_back({granular, {{210.0 * gram, us_cup}, {220.0 * gram, us_cup}}});
  const auto own = bulk_density(*granular, workshop);
  REQUIRE(own.has_value());
  CHECK(close(count(own->density.value, gram_per_cup), 215.0, 1e-9));
  CHECK(own->density.sd() < published->density.sd()); // 8.16 and 49 / sqrt(12) = 14.1
  CHECK(own->source.mark == Mark::own);

  workshop.weighings = {{granular, {}}};
  CHECK(bulk_density(*granular, workshop)->source.mark != Mark::own);
  workshop.weighings = {{find_bulk("soda crystals"), {{200.0 * gram, us_cup}}}};
  CHECK(bulk_density(*find_bulk("soda crystals"), workshop).has_value());
}

TEST_CASE("each ingredient has the volume of its mass at its density") {
  const Day day = scooped_day(120.0 * gram);
  const Batch batch = batch_of(day);
  const auto portions = measure_batch(batch, {});
  REQUIRE(portions.each.size() == batch.ingredients.size());
  // By hand: 1311.600 g of alum at 180.5 g a cup, 7.2665 cups; spread 19 / sqrt(12) / 180.5 = 3.039
  // %.
  const auto &alum = portions.each[place_of(batch, Role::alum)];
  REQUIRE(alum.volume.has_value());
  CHECK(near(count(alum.volume->value, us_cup), 7.2665, 1e-4));
  CHECK(near(alum.volume->spread().value, 0.03039, 1e-5));
  // 116.599 g of soda ash at (118 + 190) / 2 = 154 g a cup: 0.75714.
  CHECK(
      near(count(portions.each[place_of(batch, Role::soda)].volume->value, us_cup), 0.75714, 1e-5));
  // 15710.869 g of water, and 198.185 g in place of the crystals' own, at 236.2 g a cup: 67.3542.
  CHECK(near(count(portions.each[place_of(batch, Role::water)].volume->value, us_cup), 67.3542,
             0.001));
  CHECK_FALSE(portions.by_scoops); // no scoops
}

TEST_CASE("alum, salt and soda are scooped together, near the ratio, and meal on its own") {
  const Day day = scooped_day(120.0 * gram);
  const Batch batch = batch_of(day);
  const auto portions = measure_batch(batch, cups());
  REQUIRE(portions.by_scoops);
  CHECK(portions.ratio_error <= 0.01 + 1e-9);
  for (const Role role : {Role::alum, Role::salt, Role::soda, Role::meal})
    CHECK_FALSE(portions.each[place_of(batch, role)].scoops.empty());
  CHECK(portions.each[place_of(batch, Role::water)].scoops.empty());
  CHECK(portions.least_over >= -0.01 - 1e-9);
  CHECK(portions.most_over <= 0.08 + 1e-9);
  // 26.5255 % by weight; by scoops off by no more than the ratio.
  CHECK(close(portions.basicity.value, 0.265255, portions.ratio_error + 1e-6));
  // By hand: soda 72 / sqrt(12) / 154 = 13.4965 %, alum 3.0387 %: 13.8343 % of the basicity.
  CHECK(near(portions.basicity_sd / portions.basicity.value, 0.138343, 1e-6));
}

TEST_CASE("an ingredient without a density keeps all three from being scooped") {
  Day day = scooped_day(120.0 * gram);
  day.shelf[2] = {forms::soda_crystals, find_bulk("soda crystals")};
  const Batch batch = batch_of(day);
  auto workshop = cups();
  const auto portions = measure_batch(batch, workshop);
  CHECK_FALSE(portions.by_scoops);
  for (const auto &portion : portions.each) CHECK(portion.scoops.empty());
  CHECK(portions.no_density == "washing soda crystals (decahydrate)");
  CHECK(scoops_check(day, workshop)->level == Level::note);
  CHECK(has(scoops_check(day, workshop)->text,
            "What a cup of washing soda crystals (decahydrate) weighs is not known"));
  // Of several the first is named: alum and soda without a grain, salt with one.
  Day two = day;
  two.shelf[0].grain = nullptr;
  CHECK(has(scoops_check(two, workshop)->text, "a cup of potassium alum weighs"));
  // The passing twin: a weighed cup.
  workshop.weighings = {{find_bulk("soda crystals"), {{200.0 * gram, us_cup}}}};
  CHECK(measure_batch(batch, workshop).by_scoops);
}

TEST_CASE("scoops: a soda of uncertain grind is warned of until its cup is weighed") {
  // 130 g: 28.74 % by weight; two deviations of 13.83 % up 36.7 %, over the fair band's 35 %.
  const Day day = scooped_day(130.0 * gram);
  auto workshop = cups();
  const auto unsure = scoops_check(day, workshop);
  REQUIRE(unsure.has_value());
  CHECK(unsure->level == Level::warn);
  // Weighed once: 4.24 % and the alum's 3.04 %, 5.22 %: 31.7 %.
  workshop.weighings = {{find_bulk("light soda ash"), {{150.0 * gram, us_cup}}}};
  const auto sure = scoops_check(day, workshop);
  REQUIRE(sure.has_value());
  CHECK(sure->level == Level::ok);
}

TEST_CASE("scoops: none are spoken of where none are owned, and coarse ones are noted") {
  const Day day = scooped_day(120.0 * gram);
  CHECK_FALSE(scoops_check(day, {}).has_value());
  Workshop coarse;
  coarse.scoops = {{us_gallon, "1 gal"}};
  REQUIRE(scoops_check(day, coarse).has_value());
  CHECK(scoops_check(day, coarse)->level == Level::note);
  CHECK(
      has(scoops_check(day, coarse)->text, "No scooping comes within -1 % to +8 % of each amount"));
}

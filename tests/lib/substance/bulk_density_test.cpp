// What a level cup of each ingredient weighs.
#include <whittaw/substance/bulk_density.hpp>

#include "close.hpp"

#include <cmath>
#include <string>
#include <vector>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::near;

namespace {
constexpr Density gram_per_cup = gram / us_cup;

struct Range {
  std::string_view name;
  double low, high;
};
} // namespace

TEST_CASE("published densities span the ranges seen, flat between their ends") {
  // source: ranges seen in kitchen tables and product sheets, grams in a US cup.
  for (const Range &range :
       {Range{"table salt", 288, 304}, Range{"kosher salt", 134, 248},
        Range{"granular aluminium sulfate", 171, 220}, Range{"powdered alum", 171, 190},
        Range{"light soda ash", 118, 190}, Range{"dense soda ash", 227, 288},
        Range{"corn meal", 125, 171}, Range{"wheat flour", 113, 160}, Range{"wheat bran", 58, 76},
        Range{"lump alum", 190, 227}, Range{"sodium bicarbonate", 163, 230},
        Range{"oatmeal", 80, 99}}) {
    CAPTURE(std::string(range.name));
    const BulkRow *row = find_bulk(range.name);
    REQUIRE(row != nullptr);
    const auto bulk = published_density(*row);
    REQUIRE(bulk.has_value());
    CHECK(close(count(bulk->density.value, gram_per_cup), 0.5 * (range.low + range.high), 1e-9));
    // A flat distribution of width w has a standard deviation of w / sqrt(12).
    CHECK(close(count(bulk->density.sd(), gram_per_cup), (range.high - range.low) / std::sqrt(12.0),
                1e-9));
    CHECK_FALSE(bulk->source.text.empty());
  }
}

TEST_CASE("charts in pounds a cubic foot give the ends of the ranges") {
  // By hand: 1 lb/ft3 is 453.59237 g in 28.316847 L, and a US cup 0.2365882 L: 3.78978 g a cup
  // (NIST SP 811). Ends are whole grams.
  struct Chart {
    std::string_view name;
    double low, high; ///< pounds a cubic foot; zero where the end is from another source
  };
  constexpr double grams_per_cup = 3.78978;
  for (const Chart &chart :
       {Chart{"granular aluminium sulfate", 45, 58}, Chart{"powdered alum", 45, 50},
        Chart{"lump alum", 50, 60}, Chart{"light soda ash", 0, 50}, Chart{"dense soda ash", 60, 76},
        Chart{"baking soda", 43, 0}, Chart{"bran", 0, 20}}) {
    CAPTURE(std::string(chart.name));
    const BulkRow *row = find_bulk(chart.name);
    REQUIRE(row != nullptr);
    if (chart.low > 0.0) CHECK(near(row->low_grams_per_cup, chart.low * grams_per_cup, 1.0));
    if (chart.high > 0.0) CHECK(near(row->high_grams_per_cup, chart.high * grams_per_cup, 1.0));
  }
  // source: IS 251:1998, light soda ash from 500 kg/m3: 0.5 g/mL x 236.588 mL = 118.3 g.
  CHECK(near(find_bulk("light soda ash")->low_grams_per_cup, 118.3, 0.5));
  // source: GNU units definitions: kosher salt 2.8 g a teaspoon, 48 of them: 134.4 g; flour 4 oz a
  // cup: 113.4 g.
  CHECK(near(find_bulk("kosher salt")->low_grams_per_cup, 134.4, 0.5));
  CHECK(near(find_bulk("wheat flour")->low_grams_per_cup, 113.4, 0.5));
}

TEST_CASE("lumps and powder of alum are two rows") {
  REQUIRE(find_bulk("lump alum") != nullptr);
  CHECK(find_bulk("alum crystals") == find_bulk("lump alum"));
  CHECK(find_bulk("alum") == find_bulk("powdered alum"));
  CHECK(find_bulk("lump alum")->role == Role::alum);
}

TEST_CASE("table salt and flour agree with a second source") {
  // source: GNU units definitions: salt 6 g a teaspoon, 48 of them to a cup; flour 4 to 5 oz a cup.
  const double salt =
      count(published_density(*find_bulk("salt"))->density.value, gram / us_teaspoon);
  CHECK(close(salt, 6.0, 0.05));
  const double flour = count(published_density(*find_bulk("flour"))->density.value, ounce / us_cup);
  CHECK(flour > 4.0);
  CHECK(flour < 5.0);
}

TEST_CASE("where nothing was published there is no density") {
  CHECK_FALSE(published_density(*find_bulk("soda crystals")).has_value());
  CHECK_FALSE(published_density(*find_bulk("soda monohydrate")).has_value());
  CHECK(find_bulk("gravel") == nullptr);
  CHECK(find_bulk("") == nullptr);
}

TEST_CASE("one own weighing takes the assumed spread of a level measure") {
  // By hand, grams a cup: mean 215, assumed 0.03 x 215 = 6.45; variance 2 x 6.45^2 / (2 + 1 - 1) x
  // (1 + 1 / 1) = 83.205, whose root is 9.1217.
  const std::vector<Weighing> one{{215.0 * gram, us_cup}};
  const auto own = own_density(one);
  CHECK(close(count(own.density.value, gram_per_cup), 215.0, 1e-9));
  CHECK(close(count(own.density.sd(), gram_per_cup), 9.1217, 1e-4));
  CHECK(own.source.mark == Mark::own);
}

TEST_CASE("two own weighings show some of their own scatter") {
  // By hand: 210 and 220 g: mean 215, squares 25 + 25; variance (2 x 41.6025 + 50) / 3 x 1.5 =
  // 66.6025, whose root is 8.1610. The second measure is a half cup of 110 g.
  const std::vector<Weighing> two{{210.0 * gram, us_cup}, {110.0 * gram, 0.5 * us_cup}};
  const auto own = own_density(two);
  CHECK(close(count(own.density.value, gram_per_cup), 215.0, 1e-9));
  CHECK(close(count(own.density.sd(), gram_per_cup), 8.1610, 1e-4));
}

TEST_CASE("many equal weighings shrink the spread, many scattered ones show it") {
  // By hand: ten of 215 g: 83.205 / 11 x 1.1 = 8.3205, root 2.8845.
  const std::vector<Weighing> equal(10, {215.0 * gram, us_cup});
  CHECK(close(count(own_density(equal).density.sd(), gram_per_cup), 2.8845, 1e-4));
  // By hand: five of 185 and five of 245: squares 10 x 900; (83.205 + 9000) / 11 x 1.1 = 908.3205,
  // root 30.1384.
  std::vector<Weighing> scattered(5, {185.0 * gram, us_cup});
  scattered.insert(scattered.end(), 5, {245.0 * gram, us_cup});
  CHECK(close(count(own_density(scattered).density.sd(), gram_per_cup), 30.1384, 1e-4));
}

TEST_CASE("volume and mass of an ingredient follow its density and carry its spread") {
  const auto salt = published_density(*find_bulk("table salt"));
  const auto volume = volume_of(296.0 * gram, salt->density);
  CHECK(close(volume.value, us_cup, 1e-9)); // (288 + 304) / 2 = 296
  CHECK(near(volume.spread().value, 16.0 / std::sqrt(12.0) / 296.0, 1e-9));
  const auto mass = mass_of(2.0 * us_cup, salt->density);
  CHECK(close(mass.value, 592.0 * gram, 1e-9));
  CHECK(near(mass.spread().value, 16.0 / std::sqrt(12.0) / 296.0, 1e-9));
}

TEST_CASE("no name of an ingredient stands for two") {
  std::vector<std::string_view> names;
  for (const auto &row : bulk_table) {
    names.push_back(row.name);
    for (const auto other : row.also_called)
      if (!other.empty()) names.push_back(other);
  }
  for (std::size_t i = 0; i < names.size(); ++i)
    for (std::size_t j = i + 1; j < names.size(); ++j) CHECK(names[i] != names[j]);
}

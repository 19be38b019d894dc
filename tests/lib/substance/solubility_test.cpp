// How much of each salt water holds.
#include <whittaw/substance/solubility.hpp>

#include "close.hpp"

#include <array>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::near;

namespace {
double grams_in_100(Solute solute, double celsius) {
  return 100.0 * solubility(solute, degrees_celsius(celsius)).value;
}
constexpr std::array columns{0.0, 10.0, 20.0, 30.0, 40.0, 60.0};

void check_row(Solute solute, const std::array<double, 6> &grams, double tolerance) {
  CAPTURE(static_cast<int>(solute));
  for (std::size_t i = 0; i < columns.size(); ++i) {
    CAPTURE(columns[i]);
    CHECK(near(grams_in_100(solute, columns[i]), grams[i], tolerance));
  }
}
/// Grams in 100 g of water of a solution of so many per cent by mass.
double of_mass_percent(double percent) { return 100.0 * percent / (100.0 - percent); }
} // namespace

TEST_CASE("at the columns of the table the printed figures come back") {
  // source: Lange's Handbook of Chemistry (from memory): grams of anhydrous salt in 100 g of water
  // at 0, 10, 20, 30, 40, 60 degrees.
  check_row(Solute::potassium_alum, {3.0, 4.0, 5.9, 8.4, 11.7, 24.8}, 1e-9);
  check_row(Solute::sodium_chloride, {35.7, 35.8, 35.9, 36.1, 36.4, 37.1}, 1e-9);
  check_row(Solute::sodium_carbonate, {7.0, 12.5, 21.5, 39.7, 49.0, 46.0}, 1e-9);
}

TEST_CASE("aluminium sulfate follows the lower of two handbooks") {
  // source: Perry's Chemical Engineers' Handbook, table 2-122: 31.2, 33.5, 36.4 at 0, 10, 20.
  // source: CRC Handbook, 98th ed. (from memory), mass per cent: 28.2, 29.2, 32.6 at 30, 40, 60.
  check_row(Solute::aluminium_sulfate,
            {31.2, 33.5, 36.4, of_mass_percent(28.2), of_mass_percent(29.2), of_mass_percent(32.6)},
            0.06);
}

TEST_CASE("sodium bicarbonate follows the mass per cents of the handbook") {
  // source: CRC Handbook, 98th ed. (from memory), mass per
  // cent 6.48, 7.59, 8.73, 9.91, 11.13, 13.70.
  check_row(Solute::sodium_bicarbonate,
            {of_mass_percent(6.48), of_mass_percent(7.59), of_mass_percent(8.73),
             of_mass_percent(9.91), of_mass_percent(11.13), of_mass_percent(13.70)},
            0.06);
}

TEST_CASE("ammonium alum dissolves as measured, and nowhere more than the handbooks say") {
  // source: ECHA registration data: 107 g of the dodecahydrate a litre at 20 degrees, mean of five
  // data 112, sd 12. By hand: 107 g hold 107 x 237.133 / 453.313 = 55.97 g of the anhydrous salt
  // and 51.03 g of water; in a litre of water that is 55.97 / 1049.2 = 5.33, at 112 g 5.56.
  CHECK(grams_in_100(Solute::ammonium_alum, 20.0) > 5.3);
  CHECK(grams_in_100(Solute::ammonium_alum, 20.0) < 5.6);
  // source: Perry's table 2-122 (2.1, 4.99, 7.74) and Lange's Handbook (from memory).
  const std::array most{2.1, 5.0, 7.74, 10.9, 14.9, 26.7};
  for (std::size_t i = 0; i < columns.size(); ++i)
    CHECK(grams_in_100(Solute::ammonium_alum, columns[i]) <= most[i] + 1e-9);
}

TEST_CASE("potash alum is near a second source") {
  // source: encyclopaedia table: 14.0 g of crystals in 100 mL at 20.5 degrees, 36.8 at 50. By hand:
  // 14.0 x 0.544282 = 7.62 g in 99.8 + 6.4 g of water, 7.2 in 100; 20.03 g in 98.8 + 16.8, 17.3.
  // The sources differ by a fifth.
  CHECK(close(grams_in_100(Solute::potassium_alum, 20.5), 7.2, 0.2));
  CHECK(close(grams_in_100(Solute::potassium_alum, 50.0), 17.3, 0.2));
}

TEST_CASE("between columns the line is straight, and outside them the end holds") {
  CHECK(near(grams_in_100(Solute::potassium_alum, 25.0), 7.15, 1e-9));    // (5.9 + 8.4) / 2
  CHECK(near(grams_in_100(Solute::potassium_alum, 12.0), 4.38, 1e-9));    // 4.0 + 0.2 x 1.9
  CHECK(near(grams_in_100(Solute::sodium_chloride, 45.0), 36.575, 1e-9)); // 36.4 + 0.25 x 0.7
  CHECK(near(grams_in_100(Solute::sodium_carbonate, 50.0), 47.5, 1e-9));  // falls again
  CHECK(near(grams_in_100(Solute::potassium_alum, -5.0), 3.0, 1e-9));
  CHECK(near(grams_in_100(Solute::potassium_alum, 80.0), 24.8, 1e-9));
}

TEST_CASE("the temperature that dissolves an amount is the first at which water holds it") {
  const auto needs = [](Solute solute, double grams) {
    return temperature_to_dissolve(solute, {grams / 100.0});
  };
  CHECK(near(celsius_value(*needs(Solute::potassium_alum, 7.15)), 25.0, 1e-9));
  CHECK(near(celsius_value(*needs(Solute::potassium_alum, 2.0)), 0.0, 1e-9));
  CHECK(
      near(celsius_value(*needs(Solute::sodium_carbonate, 47.5)), 38.3871, 1e-3)); // 30 + 78 / 9.3
  CHECK_FALSE(needs(Solute::potassium_alum, 25.0).has_value());
  CHECK_FALSE(needs(Solute::sodium_carbonate, 49.1).has_value());
}

TEST_CASE("each solute has its own row in its own place") {
  for (std::size_t i = 0; i < solubility_table.size(); ++i) {
    CHECK(static_cast<std::size_t>(solubility_table[i].solute) == i);
    CHECK_FALSE(solubility_table[i].source.text.empty());
  }
}

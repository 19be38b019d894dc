// Quantities written for people.
#include <whittaw/quantity/write.hpp>

#include "close.hpp"

#include <limits>

using namespace whittaw;
using whittaw_test::close;

TEST_CASE("a decimal is rounded, and zero never carries a sign") {
  CHECK(write_decimal(1.256, 2) == "1.26");
  CHECK(write_decimal(-1.256, 1) == "-1.3");
  CHECK(write_decimal(-0.04, 1) == "0.0");
  CHECK(write_decimal(-0.0, 0) == "0");
  CHECK(write_decimal(-0.4, 0) == "0");
  CHECK(write_decimal(12.0, -3) == "12");
  CHECK(write_decimal(std::numeric_limits<double>::quiet_NaN(), 2) == "?");
  CHECK(write_decimal(std::numeric_limits<double>::infinity(), 2) == "?");
}

TEST_CASE("significant digits never cut the whole part") {
  CHECK(write_significant(0.27634, 3) == "0.276");
  CHECK(write_significant(27.634, 3) == "27.6");
  CHECK(write_significant(12345.0, 3) == "12345");
  CHECK(write_significant(0.0, 3) == "0");
  CHECK(write_percent(Basicity{0.27634}, 3) == "27.6 %");
  CHECK(write_percent(Offer{0.17}, 2) == "17 %");
}

TEST_CASE("a metric mass is rounded to the step of the scale") {
  const auto metric = [](double grams, double step) {
    return write_mass(grams * gram, UnitSystem::metric, {step * gram, 0.1 * ounce});
  };
  CHECK(metric(42.4, 1.0) == "42 g");
  CHECK(metric(42.6, 1.0) == "43 g");
  CHECK(metric(42.44, 0.1) == "42.4 g");
  CHECK(metric(42.6, 5.0) == "45 g");
  CHECK(metric(1234.0, 1.0) == "1234 g");
  CHECK(metric(4999.4, 1.0) == "4999 g");
  CHECK(metric(4999.6, 1.0) == "5.00 kg"); // carried over the bound
  CHECK(metric(12'504.0, 1.0) == "12.50 kg");
  CHECK(metric(0.2, 1.0) == "0 g");
  CHECK(metric(-0.2, 1.0) == "0 g");
}

TEST_CASE("a customary mass carries its ounces into pounds") {
  const auto customary = [](double ounces, double step) {
    return write_mass(ounces * ounce, UnitSystem::us, {gram, step * ounce});
  };
  CHECK(customary(3.14, 0.1) == "3.1 oz");
  CHECK(customary(15.94, 0.1) == "15.9 oz");
  CHECK(customary(15.97, 0.1) == "1 lb");
  CHECK(customary(16.04, 0.1) == "1 lb");
  CHECK(customary(36.5, 0.1) == "2 lb 4.5 oz");
  CHECK(customary(31.97, 0.1) == "2 lb");
  CHECK(customary(36.4, 1.0) == "2 lb 4 oz");
  CHECK(customary(15.6, 1.0) == "1 lb");
  CHECK(customary(0.02, 0.1) == "0.0 oz");
  CHECK(customary(-0.02, 0.1) == "0.0 oz");
}

TEST_CASE("a figure rounded to a step shows all digits of the step") {
  // A scale that counts quarter ounces shows 2.25 oz, not 2.2; one of 2.5 g shows 7.5 g, not 8.
  CHECK(write_mass(2.26 * ounce, UnitSystem::us, {gram, 0.25 * ounce}) == "2.25 oz");
  CHECK(write_mass(7.6 * gram, UnitSystem::metric, {2.5 * gram, ounce}) == "7.5 g");
}

TEST_CASE("a step's decimals show all of its multiples") {
  CHECK(decimals_of_step(5.0) == 0);
  CHECK(decimals_of_step(1.0) == 0);
  CHECK(decimals_of_step(2.5) == 1);
  CHECK(decimals_of_step(0.1) == 1);
  CHECK(decimals_of_step(0.25) == 2);
  CHECK(decimals_of_step(0.05) == 2);
  CHECK(decimals_of_step(0.125) == 3);
  CHECK(decimals_of_step(1.0 / 3.0) == 6); // no end of decimals
}

TEST_CASE("a mass on the scale is the nearest of its steps") {
  const ScaleStep coarse{5.0 * gram, 0.25 * ounce};
  CHECK(close(on_scale(42.4 * gram, UnitSystem::metric, coarse), 40.0 * gram, 1e-12));
  CHECK(close(on_scale(42.6 * gram, UnitSystem::metric, coarse), 45.0 * gram, 1e-12));
  CHECK(close(on_scale(2.26 * ounce, UnitSystem::us, coarse), 2.25 * ounce, 1e-12));
  CHECK(on_scale(2.4 * gram, UnitSystem::metric, coarse) == 0.0 * gram);
  // What the scale shows is what is written.
  CHECK(write_mass(42.6 * gram, UnitSystem::metric, coarse) == "45 g");
  CHECK(write_mass(0.13 * ounce, UnitSystem::us, {gram, 0.125 * ounce}) == "0.125 oz");
}

TEST_CASE("volumes are written in the unit that suits their size") {
  CHECK(write_volume(850.2 * millilitre, UnitSystem::metric) == "850 mL");
  CHECK(write_volume(12.44 * litre, UnitSystem::metric) == "12.4 L");
  // A US gallon is 4 quarts and 16 cups, an imperial one 8 pints (NIST SP 811).
  CHECK(write_volume(2.0 * us_cup, UnitSystem::us) == "2.00 cup");
  CHECK(write_volume(3.9 * us_cup, UnitSystem::us) == "3.90 cup");
  CHECK(write_volume(0.25 * us_gallon, UnitSystem::us) == "1.00 US qt");
  CHECK(write_volume(3.5 * us_gallon, UnitSystem::us) == "14.0 US qt");
  CHECK(write_volume(4.0 * us_gallon, UnitSystem::us) == "4.00 US gal");
  CHECK(write_volume(6.2 * us_gallon, UnitSystem::us) == "6.20 US gal");
  CHECK(write_volume(2.0 * us_teaspoon, UnitSystem::us) == "2.00 tsp");
  CHECK(write_volume(2.0 * imperial_gallon, UnitSystem::imperial) == "2.00 imp gal");
  CHECK(write_volume(2.0 * imperial_pint, UnitSystem::imperial) == "2.00 imp pt");
  CHECK(write_volume(1.5 * imperial_gallon, UnitSystem::imperial) == "12.0 imp pt");
  CHECK(write_volume(5.0 * imperial_fluid_ounce, UnitSystem::imperial) == "5.00 imp fl oz");
}

TEST_CASE("a volume is rounded to the nearest, just below a bound too") {
  CHECK(write_volume(999.4 * millilitre, UnitSystem::metric) == "999 mL");
  CHECK(write_volume(999.6 * millilitre, UnitSystem::metric) == "1000 mL");
}

TEST_CASE("a volume is written with as many digits as are asked for") {
  CHECK(write_volume(12.44 * litre, UnitSystem::metric, 2) == "12 L");
  CHECK(write_volume(12.446 * litre, UnitSystem::metric, 4) == "12.45 L");
  CHECK(write_volume(3.5 * us_gallon, UnitSystem::us, 2) == "14 US qt");
  CHECK(write_volume(2.5 * imperial_gallon, UnitSystem::imperial, 2) == "2.5 imp gal");
}

TEST_CASE("short lengths are millimetres, or shop fractions of an inch") {
  CHECK(write_length(3.2 * millimetre, UnitSystem::metric) == "3.2 mm");
  CHECK(write_length(110.0 * centimetre, UnitSystem::metric) == "110 cm");
  CHECK(write_length(0.125 * inch, UnitSystem::us) == "1/8 in");
  CHECK(write_length(0.1875 * inch, UnitSystem::us) == "3/16 in");
  CHECK(write_length(0.5 * inch, UnitSystem::imperial) == "1/2 in");
  CHECK(write_length(43.0 * inch, UnitSystem::us) == "43.0 in");
}

TEST_CASE("a sixteenth of an inch stands only for what it is within 3 per cent of") {
  // By hand: 1/8 in is 0.125 / 0.1225 = 1.0204 of 0.1225 in, and 1.0417 of 0.12 in, 3.048 mm.
  CHECK(write_length(0.1225 * inch, UnitSystem::us) == "1/8 in");
  CHECK(write_length(0.12 * inch, UnitSystem::us) == "0.12 in (3.0 mm)");
  // 1/8 in is 0.125 / 0.1280 = 0.9766 of 0.128 in, and 0.9615 of 0.13 in, 3.302 mm.
  CHECK(write_length(0.128 * inch, UnitSystem::imperial) == "1/8 in");
  CHECK(write_length(0.13 * inch, UnitSystem::imperial) == "0.13 in (3.3 mm)");
  // Nearer to nothing than to 1/16 in: 0.762 mm. Nearer to an inch than to 15/16: 25.1 mm.
  CHECK(write_length(0.03 * inch, UnitSystem::us) == "0.030 in (0.76 mm)");
  CHECK(write_length(0.99 * inch, UnitSystem::us) == "0.99 in (25 mm)");
}

TEST_CASE("a share is written with its spread in percent, rounded to what it allows") {
  CHECK(write_percent_spread(Offer{0.0968}, 0.0102) == "9.7 \u00b1 1.0 %");
  CHECK(write_percent_spread(Offer{0.1069}, 0.0109) == "10.7 \u00b1 1.1 %");
  CHECK(write_percent_spread(Basicity{0.2653}, 0.0367) == "27 \u00b1 4 %");
  CHECK(write_percent_spread(Basicity{0.2653}, 0.0) == "26.5 %");
}

TEST_CASE("an estimate is rounded to what its spread allows") {
  const auto area = [](double value, double sd) {
    return write_estimate({value * square_metre, sd * square_metre, {}}, UnitSystem::metric);
  };
  CHECK(area(0.4467, 0.0683) == "0.45 \u00b1 0.07 m\u00b2");
  CHECK(area(0.4467, 0.0133) == "0.447 \u00b1 0.013 m\u00b2"); // two digits where the first is one
  CHECK(area(12.34, 3.3) == "12 \u00b1 3 m\u00b2");
  CHECK(area(0.5, 0.0996) == "0.50 \u00b1 0.10 m\u00b2");
  CHECK(area(0.5, 0.0) == "0.500 m\u00b2");
  // 0.50 m2 is 0.50 / 0.09290304 = 5.3820 sq ft, 0.05 m2 is 0.538 sq ft.
  CHECK(write_estimate({0.5 * square_metre, 0.05 * square_metre, {}}, UnitSystem::us) ==
        "5.4 \u00b1 0.5 sq ft");
}

TEST_CASE("temperatures, money and times are written plainly") {
  CHECK(write_temperature(degrees_celsius(10.0), UnitSystem::metric) == "10 \u00b0C");
  CHECK(write_temperature(degrees_celsius(10.0), UnitSystem::us) == "50 \u00b0F"); // 10 x 1.8 + 32
  CHECK(write_temperature(degrees_celsius(-0.3), UnitSystem::metric) == "0 \u00b0C");
  CHECK(write_money(2.4 * tender, "EUR") == "2.40 EUR");
  CHECK(write_duration(7.0 * days) == "7 days");
  CHECK(write_duration(1.0 * days) == "1 day");
  CHECK(write_duration(36.0 * hours) == "1.5 days");
  CHECK(write_duration(10.0 * days) == "10 days");
}

TEST_CASE("area is written in square metres or square feet") {
  CHECK(write_area(0.4467 * square_metre, UnitSystem::metric) == "0.45 m\u00b2");
  CHECK(write_area(10.0 * square_foot, UnitSystem::us) == "10 sq ft");
  CHECK(write_area(0.4467 * square_metre, UnitSystem::metric, 3) == "0.447 m\u00b2");
}

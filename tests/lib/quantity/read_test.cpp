// Quantities as people write them.
#include <whittaw/quantity/read.hpp>

#include "close.hpp"

#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::has;
using whittaw_test::near;

namespace {
struct Refused {
  std::string_view text;
  std::string_view found;
};
double grams(std::string_view text) {
  const auto mass = read_mass(text);
  REQUIRE_MESSAGE(mass.ok(), mass.problem().found);
  return count(*mass, gram);
}
} // namespace

TEST_CASE("masses are read in metric and customary units") {
  CHECK(close(grams("850 g"), 850.0, 1e-12));
  CHECK(close(grams("2.5 kg"), 2500.0, 1e-12));
  CHECK(close(grams("2.5KG"), 2500.0, 1e-12));
  // source: NIST SP 811, 1 lb = 453.59237 g; 1 lb 4 oz = 1.25 lb = 566.9904625 g.
  CHECK(close(grams("1 lb 4 oz"), 566.9904625, 1e-12));
  CHECK(close(grams("1 lb 4 oz"), grams("20 oz"), 1e-12));
  CHECK(close(grams("1\u00bd lb"), 680.388555, 1e-12));
  CHECK(close(grams("1 st 2 lb"), 16.0 * 453.59237, 1e-12));
  CHECK(close(grams("\u00a0 1 kg 250 g "), 1250.0, 1e-12));
}

TEST_CASE("the longest unit that stands there is meant") {
  // source: NIST SP 811: imperial fluid ounce 28.41306 mL, US 29.57353 mL, US gallon 3.785412 L.
  CHECK(near(count(*read_volume("1 imp fl oz"), millilitre), 28.41306, 1e-5));
  CHECK(near(count(*read_volume("1 fl oz"), millilitre), 29.57353, 1e-5));
  CHECK(near(count(*read_volume("1 US gal"), millilitre), 3785.412, 1e-3));
  CHECK(near(count(*read_volume("1 imp gal"), millilitre), 4546.09, 1e-6));
  CHECK(near(count(*read_area("2 m2"), square_metre), 2.0, 1e-12));
  CHECK(near(count(*read_length("2 m"), metre), 2.0, 1e-12));
}

TEST_CASE("a mass that is not sound is refused, with its reason and a remedy") {
  for (const Refused &bad : {
           Refused{"", "empty"},
           Refused{"   ", "empty"},
           Refused{"-5 kg", "negative"},
           Refused{"\u22125 kg", "negative"},
           Refused{"nan kg", "not a finite number"},
           Refused{"inf kg", "not a finite number"},
           Refused{"0x10 kg", "not a unit"},
           Refused{"1,5 kg", "comma"},
           Refused{"1,500 g", "comma"},
           Refused{"1e400 kg", "too large"},
           Refused{"1e300 kg", "more than 1000000 kg"},
           Refused{"1000001 kg", "more than 1000000 kg"},
           Refused{"0 kg", "is zero"},
           Refused{"0/5 kg", "is zero"},
           Refused{"5", "no unit"},
           Refused{"1/2", "no unit"},
           Refused{"1 kg 5", "no unit"},
           Refused{"5 hundredweight", "not a unit"},
           Refused{"5 kgs", "not a unit"},
           Refused{"1 000 kg", "not a unit"},
           Refused{"1.2.3 kg", "not a unit"},
           Refused{"kg", "does not start with a number"},
           Refused{"five kg", "does not start with a number"},
           Refused{"1/0 kg", "divides by zero"},
           Refused{"5 cm", "is a length, and a mass is wanted"},
           Refused{"2 cup", "is a volume, and a mass is wanted"},
           Refused{"1 lb 4 cm", "is a length, and a mass is wanted"},
           Refused{"4 oz 1 lb", "out of order"},
           Refused{"1 lb 1 lb", "out of order"},
           Refused{"5 kg/m2", "is a mass by area, and a mass is wanted"},
       }) {
    CAPTURE(std::string(bad.text));
    const auto mass = read_mass(bad.text);
    REQUIRE_FALSE(mass.ok());
    CHECK(has(mass.problem().found, bad.found));
    CHECK_FALSE(mass.problem().remedy.empty());
  }
  CHECK(read_mass("1000000 kg").ok()); // the passing twin of 1000001 kg
}

TEST_CASE("no part of a sum may be negative") {
  CHECK(grams("1 lb +4 oz") > 500.0);
  CHECK_FALSE(read_mass("1 lb -4 oz").ok());
  CHECK_FALSE(read_mass("1 lb +-4 oz").ok());
  CHECK_FALSE(read_length("+-5 cm", Zero::allowed).ok());
}

TEST_CASE("of a refused text no more than sixty letters are quoted, and none is cut in two") {
  // 59 plain letters, then a two-byte letter across the place of the cut.
  const std::string text = "5 " + std::string(57, 'x') + "\u00e9" + std::string(300, 'y');
  const auto mass = read_mass(text);
  REQUIRE_FALSE(mass.ok());
  // The whole and its unit, each of 60 letters, two marks and three dots, and 31 letters of words.
  CHECK(mass.problem().found.size() <= 2 * 65 + 31);
  std::size_t lead = 0;
  std::size_t follow = 0;
  for (const char c : mass.problem().found) {
    if ((static_cast<unsigned char>(c) & 0xE0U) == 0xC0U) ++lead;
    if ((static_cast<unsigned char>(c) & 0xC0U) == 0x80U) ++follow;
  }
  CHECK(lead == follow);
}

TEST_CASE("zero is allowed only where it is asked for") {
  CHECK_FALSE(read_length("0 cm").ok());
  REQUIRE(read_length("0 cm", Zero::allowed).ok());
  CHECK(*read_length("0 cm", Zero::allowed) == 0.0 * metre);
  CHECK_FALSE(read_volume("0 L").ok());
  CHECK(read_volume("0 L", Zero::allowed).ok());
  CHECK_FALSE(read_length("nan cm", Zero::allowed).ok());
  CHECK_FALSE(read_length("+nan cm", Zero::allowed).ok());
}

TEST_CASE("a share is read as per cent or as a fraction of one, within bounds") {
  const auto read = [](std::string_view text) {
    return read_fraction<ShareKind>(text, {0.0}, {0.5});
  };
  CHECK(near(read("17 %")->value, 0.17, 1e-15));
  CHECK(near(read("17%")->value, 0.17, 1e-15));
  CHECK(near(read("0.17")->value, 0.17, 1e-15));
  CHECK(near(read("1/4")->value, 0.25, 1e-15));
  CHECK(read("50 %").ok());
  for (const std::string_view bad : {"51 %", "0.51", "17", "-1 %", "17 kg", "17 % x", "", "nan"}) {
    CAPTURE(std::string(bad));
    CHECK_FALSE(read(bad).ok());
  }
  CHECK(has(read("60 %").problem().remedy, "from 0 % to 50 %"));
  CHECK(has(read("17 kg").problem().found, "is a mass, and a share is wanted"));
}

TEST_CASE("a temperature is a point on its scale") {
  const auto celsius = [](std::string_view text) { return celsius_value(*read_temperature(text)); };
  CHECK(near(celsius("12 C"), 12.0, 1e-12));
  CHECK(near(celsius("12\u00b0C"), 12.0, 1e-12));
  CHECK(near(celsius("-5 C"), -5.0, 1e-12));
  CHECK(near(celsius("32 F"), 0.0, 1e-12));
  CHECK(near(celsius("212 \u00b0F"), 100.0, 1e-12));
  CHECK(near(celsius("-40 F"), -40.0, 1e-12));
  CHECK(near(celsius("0 K"), -273.15, 1e-12));
  for (const std::string_view bad :
       {"12", "12 kg", "", "-300 C", "-1 K", "2000 C", "12 C 3", "nan C", "1e400 C", "12,5 C"}) {
    CAPTURE(std::string(bad));
    CHECK_FALSE(read_temperature(bad).ok());
  }
}

TEST_CASE("the bounds that a refusal of a share names are allowed themselves") {
  const auto refusal = [](double low, double high) {
    const auto read = read_fraction<ShareKind>("99 %", {low}, {high});
    REQUIRE_FALSE(read.ok());
    return read.problem().remedy;
  };
  CHECK(refusal(0.0, 0.5) == "write a share from 0 % to 50 %");
  // Inward to a tenth: 0.049 % up to 0.1 %, 29.802 % down to 29.8 %.
  CHECK(refusal(0.00049, 0.29802) == "write a share from 0.1 % to 29.8 %");
  CHECK(refusal(0.005, 0.999 - 0.1) == "write a share from 0.5 % to 89.9 %");
}

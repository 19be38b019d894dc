// Numbers as people write them.
#include <whittaw/quantity/number.hpp>

#include "close.hpp"

#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::has;

namespace {
struct Good {
  std::string_view text;
  double value;
  std::string_view rest;
};
struct Bad {
  std::string_view text;
  std::string_view found;
};
} // namespace

TEST_CASE("whole numbers, decimals, fractions and mixed numbers are read, and the rest is left") {
  for (const Good &good : {
           Good{"12", 12.0, ""},
           Good{"12 kg", 12.0, " kg"},
           Good{"1.5kg", 1.5, "kg"},
           Good{".5", 0.5, ""},
           Good{"1e3 g", 1000.0, " g"},
           Good{"+3", 3.0, ""},
           Good{"1/2 cup", 0.5, " cup"},
           Good{"1 / 2", 0.5, ""},
           Good{"3/2", 1.5, ""},
           Good{"21/2", 10.5, ""},
           Good{"2 1/2 cup", 2.5, " cup"},
           Good{"  2   3/8 in", 2.375, " in"},
           Good{"\u00bd", 0.5, ""},
           Good{"2\u00bd", 2.5, ""},
           Good{"2 \u00bd", 2.5, ""},
           Good{"2\u00a0\u00be", 2.75, ""},
           Good{"1\u2153", 1.0 + 1.0 / 3.0, ""},
           Good{"\u215e in", 0.875, " in"},
           Good{"0", 0.0, ""},
           Good{"1 4 oz", 1.0, " 4 oz"},
       }) {
    CAPTURE(std::string(good.text));
    std::string_view text = good.text;
    const auto number = take_number(text);
    REQUIRE(number.ok());
    CHECK(close(*number, good.value, 1e-15));
    CHECK(std::string(text) == std::string(good.rest));
  }
}

TEST_CASE("each vulgar fraction has the value of its digits") {
  // source: The Unicode Standard, character names (VULGAR FRACTION ONE HALF and so on).
  struct Named {
    std::string_view sign;
    int above, below;
  };
  for (const Named &each :
       {Named{"\u00bd", 1, 2}, Named{"\u00bc", 1, 4}, Named{"\u00be", 3, 4}, Named{"\u2153", 1, 3},
        Named{"\u2154", 2, 3}, Named{"\u215b", 1, 8}, Named{"\u215c", 3, 8}, Named{"\u215d", 5, 8},
        Named{"\u215e", 7, 8}, Named{"\u2155", 1, 5}, Named{"\u2159", 1, 6}}) {
    std::string_view text = each.sign;
    CAPTURE(std::string(text));
    const auto number = take_number(text);
    REQUIRE(number.ok());
    CHECK(close(*number * each.below, static_cast<double>(each.above), 1e-15));
  }
}

TEST_CASE("what is no finite number above or at zero is refused with its reason") {
  for (const Bad &bad : {
           Bad{"-5", "negative"},
           Bad{"\u22125", "negative"}, // the minus sign of typesetters
           Bad{"nan", "not a finite number"},
           Bad{"NaN", "not a finite number"},
           Bad{"inf", "not a finite number"},
           Bad{"Infinity", "not a finite number"},
           Bad{"1e400", "too large"},
           Bad{"1e-400", "too small"},
           Bad{"1,5", "comma"},
           Bad{"1,500", "comma"},
           Bad{"1/0", "divides by zero"},
           Bad{"0/0", "divides by zero"},
           Bad{"2 3/2", "not below one"},
           Bad{"2 1/0", "not below one"},
           Bad{"2 0/0", "not below one"},
           Bad{"", "does not start with a number"},
           Bad{"kg", "does not start with a number"},
           Bad{"\u221e", "does not start with a number"},
       }) {
    CAPTURE(std::string(bad.text));
    std::string_view text = bad.text;
    const auto number = take_number(text);
    REQUIRE_FALSE(number.ok());
    CHECK(has(number.problem().found, bad.found));
    CHECK_FALSE(number.problem().remedy.empty());
  }
}

TEST_CASE("a sign after a plus sign is refused as a bare one is") {
  for (const std::string_view refused :
       {"+-5", "+\u22125", "+nan", "+inf", "+Infinity", "+-1/2", "++5"}) {
    CAPTURE(std::string(refused));
    std::string_view text = refused;
    CHECK_FALSE(take_number(text).ok());
  }
}

TEST_CASE("a hexadecimal number is read as its first digit only, so its unit is refused later") {
  std::string_view text = "0x10";
  const auto number = take_number(text);
  REQUIRE(number.ok());
  CHECK(*number == 0.0);
  CHECK(text == "x10");
}

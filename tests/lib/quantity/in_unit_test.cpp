// Figures in a unit that a person names.
#include <whittaw/quantity/in_unit.hpp>

#include "close.hpp"

#include <string>

using namespace whittaw;
using whittaw_test::has;

TEST_CASE("a unit is found by its name and kind") {
  const auto pound_row = read_unit("lb", Kind::mass);
  REQUIRE(pound_row.ok());
  CHECK((*pound_row)->gnu == "lb");
  CHECK((*read_unit(" US gal ", Kind::volume))->gnu == "usgallon");
  CHECK_FALSE(read_unit("lb", Kind::volume).ok());
  CHECK(has(read_unit("lb", Kind::volume).problem().found, "is a mass, and a volume is wanted"));
  for (const std::string_view bad : {"", "stein", "lb 3", "3 lb"}) {
    CAPTURE(std::string(bad));
    CHECK_FALSE(read_unit(bad, Kind::mass).ok());
  }
}

TEST_CASE("the kind of a quantity is that of its first unit") {
  CHECK(*kind_of("850 g") == Kind::mass);
  CHECK(*kind_of("2 1/2 cup") == Kind::volume);
  CHECK(*kind_of("1 lb 4 oz") == Kind::mass);
  CHECK_FALSE(kind_of("850").ok());
  CHECK_FALSE(kind_of("850 stein").ok());
  CHECK_FALSE(kind_of("-850 g").ok());
}

TEST_CASE("an estimate is written in the named unit, no finer than its spread") {
  const UnitRow &gram_row = **read_unit("g", Kind::mass);
  CHECK(write_in_unit(Estimate<Mass>{738.6 * gram, 12.4 * gram, {}}, kilogram, gram_row) ==
        "739 \u00b1 12 g");
  // By hand: 738.6 g are 1.6283 lb, 12.4 g are 0.02734 lb.
  const UnitRow &pound_row = **read_unit("lb", Kind::mass);
  CHECK(write_in_unit(Estimate<Mass>{738.6 * gram, 12.4 * gram, {}}, kilogram, pound_row) ==
        "1.63 \u00b1 0.03 lb");
  // Litres have a capital letter, and so has US.
  const UnitRow &millilitre_row = **read_unit("ml", Kind::volume);
  CHECK(write_in_unit(Estimate<Volume>{738.6 * millilitre, 12.4 * millilitre, {}}, cubic_metre,
                      millilitre_row) == "739 \u00b1 12 mL");
  CHECK(printed_name(**read_unit("L", Kind::volume)) == "L");
  CHECK(printed_name(**read_unit("us gal", Kind::volume)) == "US gal");
  CHECK(printed_name(**read_unit("gal", Kind::volume)) != "gaL");
}

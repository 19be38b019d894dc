// Holds every unit a person may write against GNU units, run here and now.
#include <whittaw/quantity/read.hpp>

#include "close.hpp"
#include "shell.hpp"

#include <cstdlib>
#include <set>
#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::near;

namespace {

std::string si_of(Kind kind) {
  switch (kind) {
  case Kind::length: return "m";
  case Kind::area: return "m^2";
  case Kind::volume: return "m^3";
  case Kind::mass: return "kg";
  case Kind::duration: return "s";
  case Kind::areal_mass: return "kg/m^2";
  case Kind::temperature: return "tempC";
  case Kind::fraction: return "1";
  }
  return {};
}

/// What GNU units makes of `have` in `want`; fails the test where it gives no number.
double gnu_units(const std::string &have, const std::string &want) {
  const auto answer =
      whittaw_test::run("LC_ALL=C units -t -o '%.15g' -- '" + have + "' '" + want + "'");
  CAPTURE(have);
  CAPTURE(answer.text);
  REQUIRE_MESSAGE(answer.status == 0, "GNU units must be installed and know this unit");
  char *end = nullptr;
  const double value = std::strtod(answer.text.c_str(), &end);
  REQUIRE_MESSAGE((end != answer.text.c_str() && *end == '\0'), "units printed no plain number");
  return value;
}

template <class Q> void check_read(const Result<Q> &read, double want) {
  REQUIRE_MESSAGE(read.ok(), read.problem().found);
  CHECK(close(whittaw_test::plain(*read), want, 1e-12));
}

} // namespace

TEST_CASE("GNU units is installed") { REQUIRE(whittaw_test::run("units --version").status == 0); }

TEST_CASE("every unit has the size that GNU units gives it") {
  for (const auto &row : unit_table) {
    if (row.kind == Kind::temperature) continue;
    CAPTURE(std::string(row.name));
    CHECK(close(row.size, gnu_units("(" + std::string(row.gnu) + ")", si_of(row.kind)), 1e-13));
  }
}

TEST_CASE("every unit is read by its name at the size that GNU units gives it") {
  for (const auto &row : unit_table) {
    const std::string text = "3 " + std::string(row.name);
    CAPTURE(text);
    if (row.kind == Kind::temperature) continue;
    const double want = gnu_units("3 (" + std::string(row.gnu) + ")", si_of(row.kind));
    switch (row.kind) {
    case Kind::length: check_read(read_length(text), want); break;
    case Kind::area: check_read(read_area(text), want); break;
    case Kind::volume: check_read(read_volume(text), want); break;
    case Kind::mass: check_read(read_mass(text), want); break;
    case Kind::duration: check_read(read_duration(text), want); break;
    case Kind::areal_mass: check_read(read_areal_mass(text), want); break;
    case Kind::fraction: {
      const auto share = read_fraction<ShareKind>(text, {0.0}, {1.0});
      REQUIRE(share.ok());
      CHECK(close(share->value, want, 1e-12));
      break;
    }
    case Kind::temperature: break;
    }
  }
}

TEST_CASE("every temperature is the point that GNU units says it is") {
  for (const auto &row : unit_table) {
    if (row.kind != Kind::temperature) continue;
    for (const int figure : {0, 12, 54, 285}) {
      const std::string text = std::to_string(figure) + " " + std::string(row.name);
      CAPTURE(text);
      const auto read = read_temperature(text);
      REQUIRE(read.ok());
      const double want =
          gnu_units(std::string(row.gnu) + "(" + std::to_string(figure) + ")", "tempC");
      CHECK(near(celsius_value(*read), want, 1e-9));
    }
  }
}

TEST_CASE("no unit is listed twice, and names are written as the reader wants them") {
  std::set<std::string_view> seen;
  for (const auto &row : unit_table) {
    CAPTURE(std::string(row.name));
    CHECK(seen.insert(row.name).second);
    for (const char letter : row.name) CHECK_FALSE((letter >= 'A' && letter <= 'Z'));
    CHECK_FALSE(whittaw_test::has(row.name, "  "));
  }
}

TEST_CASE("every kind stands in its own place, and its example reads as that kind") {
  for (std::size_t i = 0; i < kind_table.size(); ++i)
    CHECK(static_cast<std::size_t>(kind_table[i].kind) == i);
  // The examples of kind_table, as far as their first comma.
  CHECK(read_length("110 cm").ok());
  CHECK(read_area("0.62 m2").ok());
  CHECK(read_volume("2 1/2 cup").ok());
  CHECK(read_mass("1 lb 4 oz").ok());
  CHECK(read_duration("36 h").ok());
  CHECK(read_areal_mass("0.5 lb/sq ft").ok());
}

// source: NIST Special Publication 811 (2008), appendix B.8, exact by definition.
static_assert(inch == 0.0254 * metre);
static_assert(square_foot == 0.09290304 * square_metre);
static_assert(pound == 453.59237 * gram || pound == 0.45359237 * kilogram);
// source: the same; 28.349523 g, 236.5882 mL, 28.41306 mL (rounded there).
static_assert(whittaw_test::is_near(count(ounce, gram), 28.349523125, 1e-12));
static_assert(whittaw_test::is_near(count(us_cup, millilitre), 236.5882365, 1e-9));
static_assert(whittaw_test::is_near(count(imperial_fluid_ounce, millilitre), 28.4130625, 1e-9));

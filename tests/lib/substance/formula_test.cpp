// Formulae and molar masses.
#include <whittaw/substance/form.hpp>

#include "close.hpp"
#include "shell.hpp"

#include <cstdlib>
#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::has;
using whittaw_test::is_near;

namespace {
consteval double grams_per_mole(std::string_view text) {
  return count(molar_mass(formula(text)), gram_per_mole);
}
/// "Na2CO3.10H2O" in the way chemeq wants it: "Na2CO3(H2O)10".
std::string for_chemeq(std::string_view text) {
  const std::size_t dot = text.find('.');
  if (dot == std::string_view::npos) return std::string(text);
  const auto water = text.substr(dot + 1);
  const auto times = water.substr(0, water.find("H2O"));
  return std::string(text.substr(0, dot)) + "(H2O)" + std::string(times);
}
} // namespace

// source: IUPAC/CIAAW abridged standard atomic weights (H 1.008, C 12.011, N 14.007, O 15.999,
// Na 22.990, Al 26.982, S 32.06, Cl 35.45, K 39.098), summed by hand:
// water 2.016 + 15.999 = 18.015; K + Al + 2 S + 8 O = 258.192, and 12 x 18.015 = 216.180.
static_assert(is_near(grams_per_mole("H2O"), 18.015, 1e-9));
static_assert(is_near(grams_per_mole("KAl(SO4)2.12H2O"), 474.372, 1e-9));
static_assert(is_near(grams_per_mole("NH4Al(SO4)2.12H2O"), 453.313, 1e-9)); // 237.133 + 216.180
static_assert(is_near(grams_per_mole("Al2(SO4)3"), 342.132, 1e-9)); // 53.964 + 96.180 + 191.988
static_assert(is_near(grams_per_mole("Al2(SO4)3.14H2O"), 594.342, 1e-9)); // + 252.210
static_assert(is_near(grams_per_mole("Al2(SO4)3.16H2O"), 630.372, 1e-9)); // + 288.240
static_assert(is_near(grams_per_mole("Al2(SO4)3.18H2O"), 666.402, 1e-9)); // + 324.270
static_assert(is_near(grams_per_mole("Na2CO3"), 105.988, 1e-9)); // 45.980 + 12.011 + 47.997
static_assert(is_near(grams_per_mole("Na2CO3.H2O"), 124.003, 1e-9));
static_assert(is_near(grams_per_mole("Na2CO3.10H2O"), 286.138, 1e-9));
static_assert(is_near(grams_per_mole("NaHCO3"), 84.006, 1e-9)); // 22.990 + 1.008 + 12.011 + 47.997
static_assert(is_near(grams_per_mole("NaCl"), 58.440, 1e-9));
static_assert(is_near(grams_per_mole("Al2O3"), 101.961, 1e-9));

TEST_CASE("every form has the molar mass that chemeq gives it") {
  int compared = 0;
  for (const auto &form : forms::fixed) {
    const std::string text = for_chemeq(form.formula);
    CAPTURE(text);
    const auto answer = whittaw_test::run("echo '" + text + "' | chemeq -M");
    REQUIRE_MESSAGE(answer.status == 0, "chemeq must be installed");
    const double want = std::strtod(answer.text.c_str(), nullptr);
    REQUIRE(want > 0.0);
    const auto composition = read_formula(form.formula);
    REQUIRE(composition.ok());
    // chemeq has older atomic weights (S 32.065, H 1.00794): 1e-4 covers them.
    CHECK(close(count(molar_mass(*composition), gram_per_mole), want, 1e-4));
    ++compared;
  }
  CHECK(compared == 10);
}

TEST_CASE("a formula is read with brackets, any dot, and water before or behind") {
  const auto same = [](std::string_view a, std::string_view b) {
    const auto left = read_formula(a);
    const auto right = read_formula(b);
    REQUIRE(left.ok());
    REQUIRE(right.ok());
    return *left == *right;
  };
  CHECK(same("KAl(SO4)2.12H2O", "KAl(SO4)2\u00b712H2O"));
  CHECK(same("KAl(SO4)2.12H2O", "KAl(SO4)2*12H2O"));
  CHECK(same("KAl(SO4)2.12H2O", "KAlS2O20H24"));
  CHECK(same("2H2O", "H4O2"));
  CHECK(same("Al((SO4))2", "AlS2O8"));
  CHECK_FALSE(same("NaCl", "NCl")); // sodium before nitrogen
  CHECK_FALSE(same("Na2CO3.H2O", "Na2CO3.10H2O"));
}

TEST_CASE("what is no formula is refused") {
  for (const std::string_view bad : {"",
                                     "X",
                                     "H2o",
                                     "h2o",
                                     "(SO4",
                                     "SO4)",
                                     "()",
                                     "()2",
                                     "Na()",
                                     "Al((SO4)())2",
                                     "SO4)2",
                                     "Na0",
                                     "Na2CO3.",
                                     ".H2O",
                                     "Na 2",
                                     "12",
                                     "NaCl.",
                                     "Na2CO3..H2O",
                                     "H99999",
                                     "FeSO4",
                                     "((((((((((((H))))))))))))",
                                     "NaCl;H2O"}) {
    CAPTURE(std::string(bad));
    const auto read = read_formula(bad);
    CHECK_FALSE(read.ok());
    if (!read.ok()) CHECK(has(read.problem().remedy, "KAl(SO4)2.12H2O"));
  }
}

TEST_CASE("a refusal says from where on it is not understood") {
  CHECK(has(read_formula("NaClX2").problem().found, "from 'X2'"));
}

// What a trim leaves, against shapes whose largest rectangle and ellipse are known.
#include <whittaw/hide/hide.hpp>

#include "close.hpp"

#include <cmath>
#include <numbers>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::near;

namespace {
Tape tape(double length, std::vector<double> widths) {
  Tape made{length * metre};
  for (const double width : widths) made.widths.push_back(width * metre);
  return made;
}
HideArea trimmed(const AreaMeasure &measure, Trim trim) {
  Hide hide{"h1", find_species("goat"), measure};
  hide.trim = trim;
  const auto found = hide_area(hide);
  REQUIRE(found.ok());
  return *found;
}
double kept(const HideArea &of) { return count(of.trimmed.value, of.flayed.value); }
} // namespace

TEST_CASE("a rectangle holds all of itself as a rectangle, and pi / 4 of itself as an ellipse") {
  const Tape rectangle = tape(1.2, {0.8, 0.8, 0.8});
  CHECK(close(inscribed_rectangle(rectangle), 0.96 * square_metre, 1e-12));
  CHECK(close(inscribed_ellipse(rectangle), std::numbers::pi / 4.0 * 0.96 * square_metre, 1e-12));
}

TEST_CASE("a triangle holds half of itself as a rectangle") {
  // Width W x / L: a rectangle from x to L has (L - x) W x / L, most at x = L / 2: W L / 4, half of
  // the triangle's W L / 2 = 0.48 m2.
  CHECK(close(inscribed_rectangle(tape(1.2, {0.0, 0.4, 0.8})), 0.24 * square_metre, 1e-9));
}

TEST_CASE("a triangle holds pi / 8 of itself as an ellipse centred on the backbone") {
  // Long axis s L and short axis b, centred at L / 2: b sqrt(1 - u^2) <= W (1 + s u) / 2, which is
  // tightest at u = -s: b = W sqrt(1 - s^2) / 2. Most of s b at s^2 = 1 / 2: pi / 4 L W / 4. The
  // search goes by sixteenths of the length, good to half a per cent.
  CHECK(close(inscribed_ellipse(tape(1.2, {0.0, 0.4, 0.8})),
              std::numbers::pi / 16.0 * 0.96 * square_metre, 0.005));
}

TEST_CASE("a diamond holds half of itself as a rectangle, and pi / 4 of itself as an ellipse") {
  // The largest rectangle and ellipse of a rhombus of diagonals L and W: L W / 4 and pi L W / 8.
  const Tape diamond = tape(1.2, {0.0, 0.8, 0.0});
  CHECK(close(inscribed_rectangle(diamond), 0.24 * square_metre, 1e-9));
  CHECK(close(inscribed_ellipse(diamond), std::numbers::pi / 8.0 * 0.96 * square_metre, 0.005));
}

TEST_CASE("without widths a trim keeps the table's share") {
  // By hand: 1 / 1.095 = 0.913242; pi / 4 / 1.095 = 0.717259.
  const LiveWeight live{27.0 * kilogram};
  CHECK(near(kept(trimmed(live, Trim::whole)), 1.0, 1e-12));
  CHECK(near(kept(trimmed(live, Trim::square)), 0.913242, 1e-6));
  CHECK(near(kept(trimmed(live, Trim::ellipse)), 0.717259, 1e-6));
  // One width: the rectangle of length x width and the ellipse in it.
  CHECK(close(trimmed(tape(1.1, {0.7}), Trim::square).trimmed.value, 0.77 * square_metre, 1e-9));
  CHECK(close(trimmed(tape(1.1, {0.7}), Trim::ellipse).trimmed.value,
              std::numbers::pi / 4.0 * 0.77 * square_metre, 1e-9));
}

TEST_CASE("a trim widens the spread by its own") {
  // By hand, ellipse, spread 7 %: sqrt(0.13^2 + 0.07^2) = 14.765 %.
  CHECK(near(trimmed(LiveWeight{27.0 * kilogram}, Trim::whole).trimmed.spread().value, 0.13, 1e-9));
  CHECK(near(trimmed(LiveWeight{27.0 * kilogram}, Trim::ellipse).trimmed.spread().value, 0.14765,
             1e-5));
}

TEST_CASE("with widths a trim follows them") {
  const auto whole = trimmed(tape(1.2, {0.8, 0.8, 0.8}), Trim::square);
  CHECK(near(kept(whole), 1.0, 1e-9));
  const auto diamond = trimmed(tape(1.2, {0.0, 0.8, 0.0}), Trim::square);
  CHECK(close(diamond.trimmed.value, 0.24 * square_metre, 1e-9));
}

TEST_CASE("a trim never leaves more than there was") {
  for (const auto &shape : {tape(1.2, {0.8, 0.8, 0.8}), tape(1.2, {0.2, 0.8, 0.2}),
                            tape(1.2, {0.8, 0.2, 0.8}), tape(1.2, {0.5, 0.9, 0.7, 0.9, 0.4})})
    for (const Trim trim : {Trim::square, Trim::ellipse})
      CHECK(kept(trimmed(shape, trim)) <= 1.0 + 1e-12);
}

TEST_CASE("a waist between stations is not cut across") {
  // Widths 0.8, 0.2, 0.8 at 0, 0.35 and 1: no grid of halvings meets the waist, yet a rectangle of
  // the whole length can be no wider than it: 0.2 m2. Ones of one side: width 0.2 + 0.6 t at
  // distance 0.65 t from the waist leave (1 - t) 0.65 (0.2 + 0.6 t), most at t = 1/3: 0.1733.
  Tape waist = tape(1.0, {0.8, 0.2, 0.8});
  waist.at = {0.0 * metre, 0.35 * metre, 1.0 * metre};
  CHECK(close(inscribed_rectangle(waist), 0.2 * square_metre, 1e-9));
  // The ellipse of the whole length touches the waist, 0.15 of 0.5 off its centre: its short axis
  // is 0.2 / sqrt(1 - 0.3^2) = 0.209657, its area pi / 4 x 0.209657 = 0.164664 m2. Shorter ones are
  // smaller: the area goes as s^2 / sqrt(s^2 - 0.09), which rises above s = 0.42.
  CHECK(near(inscribed_ellipse(waist), 0.164664 * square_metre, 1e-6 * square_metre));
}

TEST_CASE("the share that a trim leaves is one error for all hides of the trim") {
  // By hand, two goats of 27 kg to an ellipse, relative: the law's shared part 0.0169 / 2, its own
  // 0.0169 / 4, the trim's 0.07^2: sqrt(0.00845 + 0.004225 + 0.0049) = 13.2571 %.
  auto two = trimmed(LiveWeight{27.0 * kilogram}, Trim::ellipse).trimmed;
  two += trimmed(LiveWeight{27.0 * kilogram}, Trim::ellipse).trimmed;
  CHECK(near(two.spread().value, 0.132571, 1e-6));
  // A square and an ellipse are two errors of 5 and 7 %: shares 0.913242 and 0.717259, of the sum
  // 0.560098 and 0.439902. sqrt(0.00845 + 0.00845 x (0.560098^2 + 0.439902^2) + (0.05 x 0.560098)^2
  // + (0.07 x 0.439902)^2) = sqrt(0.00845 + 0.004286 + 0.000784 + 0.000948) = 12.0285 %.
  auto mixed = trimmed(LiveWeight{27.0 * kilogram}, Trim::square).trimmed;
  mixed += trimmed(LiveWeight{27.0 * kilogram}, Trim::ellipse).trimmed;
  CHECK(near(mixed.spread().value, 0.120285, 1e-5));
  for (const auto &row : trim_table)
    for (const auto &other : trim_table) CHECK((row.error == other.error) == (&row == &other));
}

TEST_CASE("one width trimmed square is the rectangle that was read, with no factor and none of its "
          "error") {
  // By hand: 1.1 x 0.7 = 0.77 m2; reading 3 %, laying 4 %, cutting 3 %: sqrt(0.0034) = 5.8310 %.
  const auto square = trimmed(tape(1.1, {0.7}), Trim::square);
  CHECK(close(square.trimmed.value, 0.77 * square_metre, 1e-12));
  CHECK(square.trimmed.shared.empty());
  CHECK(near(square.trimmed.spread().value, 0.058310, 1e-6));
  CHECK(near(trimmed(tape(1.1, {0.7}), Trim::ellipse).trimmed.spread().value, 0.058310, 1e-6));
  // The flayed skin keeps the factor: 1.095 x 0.77 = 0.84315 m2.
  CHECK(near(square.flayed.value, 0.84315 * square_metre, 1e-9 * square_metre));
}

TEST_CASE("a cut along widths that were read adds the spread of the cut alone") {
  // By hand: reading 0.03 / sqrt(3) = 1.7321 %, laying 4 %, cutting 3 %: sqrt(0.0003 + 0.0016 +
  // 0.0009) = 5.2915 %.
  const auto square = trimmed(tape(1.2, {0.8, 0.8, 0.8}), Trim::square);
  CHECK(near(square.trimmed.spread().value, 0.052915, 1e-6));
  CHECK(square.trimmed.shared.empty());
}

TEST_CASE("a known area is the hide as it lies, and is not trimmed twice") {
  const auto known = trimmed(KnownArea{0.62 * square_metre}, Trim::ellipse);
  CHECK(known.trimmed.value == 0.62 * square_metre);
  CHECK(near(known.trimmed.spread().value, 0.02, 1e-9));
}

TEST_CASE("trims are found by name, each in its place") {
  for (const auto &row : trim_table) {
    CHECK(find_trim(row.name) == row.trim);
    CHECK(&trim_row(row.trim) == &row);
    CHECK_FALSE(row.source.text.empty());
  }
  CHECK_FALSE(find_trim("round").has_value());
}

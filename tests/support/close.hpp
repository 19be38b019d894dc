// Comparison with stated tolerances, for doctest assertions. doctest's own Approx calls 1e-6 and
// 2e-6 equal; here each comparison says how far off is near enough.
#pragma once

#include <whittaw/quantity/units.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <ostream>
#include <string_view>

namespace whittaw_test {

/// What came of a comparison; prints both figures where a test fails.
struct Closeness {
  double got = 0.0;
  double want = 0.0;
  double allowed = 0.0;
  explicit operator bool() const { return std::abs(got - want) <= allowed; } // false for nan
  friend std::ostream &operator<<(std::ostream &out, const Closeness &of) {
    const auto digits = out.precision(12);
    out << of.got << ", wanted " << of.want << " to " << of.allowed;
    out.precision(digits);
    return out;
  }
};

/// How a quantity counts as a plain number: in its own SI unit.
template <class Q> constexpr double plain(Q quantity) {
  if constexpr (requires { quantity.value(); })
    return quantity.value();
  else
    return quantity;
}

/// Whether `got` lies within `relative` times `want`, or within `absolute`, whichever is wider.
template <class Q> Closeness close(Q got, Q want, double relative, Q absolute) {
  return {plain(got), plain(want), std::max(relative * std::abs(plain(want)), plain(absolute))};
}
/// Within `relative` times `want`; nothing but zero is near zero.
template <class Q> Closeness close(Q got, Q want, double relative) {
  return {plain(got), plain(want), relative * std::abs(plain(want))};
}
/// Within `absolute`.
template <class Q> Closeness near(Q got, Q want, Q absolute) {
  return {plain(got), plain(want), plain(absolute)};
}

/// The same at compile time.
constexpr bool is_near(double got, double want, double absolute) {
  return got - want <= absolute && want - got <= absolute;
}

inline bool has(std::string_view text, std::string_view part) {
  return text.find(part) != std::string_view::npos;
}

} // namespace whittaw_test

namespace doctest {
template <class Unit, class Value> struct StringMaker<boost::units::quantity<Unit, Value>> {
  static String convert(const boost::units::quantity<Unit, Value> &quantity) {
    return toString(whittaw_test::plain(quantity)) + " (SI)";
  }
};
} // namespace doctest

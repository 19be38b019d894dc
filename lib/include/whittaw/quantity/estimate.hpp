// A value with its spread, carried to first order through sums, products and powers.
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/units.hpp>

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

namespace whittaw {

/// Part of a figure's error that it shares with other figures, such as the error of one species
/// coefficient. Errors of the same name are one error and add up; others are independent.
template <class Q> struct SharedError {
  std::string_view name; ///< must outlive the estimate; use a literal or a table's row
  Q sd = Q(); ///< signed: how far the figure moves when the shared error is one standard deviation
};

/// An estimated figure: its value, the standard deviation of its own error, and the errors it
/// shares. Example: three goats from one formula have own errors, and share the formula's.
/// Own errors are taken as independent each time a figure is used: write `2.0 * x`, not `x + x`.
/// The rules are first order: good while the spread is below about a third of the value. Guesses
/// wider than that (the mammal row, an assumed weight) keep their place but not their decimals.
template <class Q> struct Estimate {
  Q value = Q();
  Q own_sd = Q();
  std::vector<SharedError<Q>> shared = {};

  [[nodiscard]] Q sd() const {
    double sum = count(own_sd, unit()) * count(own_sd, unit());
    for (const auto &error : shared) sum += count(error.sd, unit()) * count(error.sd, unit());
    return std::sqrt(sum) * unit();
  }
  [[nodiscard]] Spread spread() const { return {std::abs(count(sd(), value))}; }

private:
  static constexpr Q unit() {
    if constexpr (requires { Q::from_value(1.0); })
      return Q::from_value(1.0);
    else
      return Q(1.0);
  }
};

/// A figure with an error of its own only.
template <class Q> Estimate<Q> estimate(Q value, Spread spread) {
  return {value, std::abs(spread.value) * value, {}};
}
/// A figure whose whole error is the named shared one.
template <class Q> Estimate<Q> shared_estimate(Q value, Spread spread, std::string_view name) {
  return {value, 0.0 * value, {{name, spread.value * value}}};
}

namespace detail {
template <class Q> void add_shared(std::vector<SharedError<Q>> &to, std::string_view name, Q sd) {
  for (auto &error : to) {
    if (error.name == name) {
      error.sd += sd;
      return;
    }
  }
  to.push_back({name, sd});
}
template <class Q> Q root_sum_square(Q a, Q b, Q unit) {
  return std::hypot(count(a, unit), count(b, unit)) * unit;
}
} // namespace detail

/// Adds `term` to `sum` in place: the way to total thousands of hides.
template <class Q> Estimate<Q> &operator+=(Estimate<Q> &sum, const Estimate<Q> &term) {
  sum.value += term.value;
  const Q larger = std::max(sum.own_sd, term.own_sd);
  if (larger > Q()) sum.own_sd = detail::root_sum_square(sum.own_sd, term.own_sd, larger);
  for (const auto &error : term.shared) detail::add_shared(sum.shared, error.name, error.sd);
  return sum;
}
template <class Q> Estimate<Q> operator+(Estimate<Q> a, const Estimate<Q> &b) { return a += b; }

template <class Q> Estimate<Q> operator*(double factor, Estimate<Q> a) {
  a.value *= factor;
  a.own_sd *= std::abs(factor);
  for (auto &error : a.shared) error.sd *= factor;
  return a;
}
template <class Q> Estimate<Q> operator-(Estimate<Q> a, const Estimate<Q> &b) {
  return a += -1.0 * b;
}

/// Scales by an exactly known quantity.
template <class Q, class Exact>
auto scale(const Estimate<Q> &a, Exact exact) -> Estimate<decltype(Q() * Exact())> {
  Estimate<decltype(Q() * Exact())> product{a.value * exact, a.own_sd * exact, {}};
  if (product.own_sd < 0.0 * product.own_sd) product.own_sd = -product.own_sd;
  product.shared.reserve(a.shared.size());
  for (const auto &error : a.shared) product.shared.push_back({error.name, error.sd * exact});
  return product;
}

template <class A, class B>
auto operator*(const Estimate<A> &a, const Estimate<B> &b) -> Estimate<decltype(A() * B())> {
  auto product = scale(a, b.value);
  auto other = scale(b, a.value);
  other.value -= other.value; // its errors alone: the value stands in `product` already
  return product += other;
}

/// One over the figure.
template <class Q> auto reciprocal(const Estimate<Q> &a) -> Estimate<decltype(1.0 / Q())> {
  const auto slope = 1.0 / (a.value * a.value);
  Estimate<decltype(1.0 / Q())> result{1.0 / a.value, a.own_sd * slope, {}};
  for (const auto &error : a.shared) result.shared.push_back({error.name, -1.0 * error.sd * slope});
  return result;
}
template <class A, class B> auto operator/(const Estimate<A> &a, const Estimate<B> &b) {
  return a * reciprocal(b);
}

/// The errors of a figure over its value, about nothing.
template <class Q> Estimate<double> relative_error(const Estimate<Q> &a) {
  Estimate<double> error{0.0, std::abs(count(a.own_sd, a.value)), {}};
  for (const auto &each : a.shared) error.shared.push_back({each.name, count(each.sd, a.value)});
  return error;
}

/// How many of `b` there are in `a`, for figures of one kind.
template <class Q> Estimate<double> ratio(const Estimate<Q> &a, const Estimate<Q> &b) {
  Estimate<double> result{count(a.value, b.value), 0.0, {}};
  result.own_sd =
      std::abs(result.value) * std::hypot(count(a.own_sd, a.value), count(b.own_sd, b.value));
  for (const auto &error : a.shared)
    detail::add_shared(result.shared, error.name, count(error.sd, b.value));
  for (const auto &error : b.shared)
    detail::add_shared(result.shared, error.name, -result.value * count(error.sd, b.value));
  return result;
}

/// `factor` times (figure over unit) to the power `exponent`, the form of every law of body size.
template <class Factor, class Q>
Estimate<Factor> power_law(Factor factor, const Estimate<Q> &figure, Q unit, double exponent) {
  const Factor value = std::pow(count(figure.value, unit), exponent) * factor;
  Estimate<Factor> result{
      value, std::abs(exponent) * count(figure.own_sd, figure.value) * value, {}};
  for (const auto &error : figure.shared)
    result.shared.push_back({error.name, exponent * count(error.sd, figure.value) * value});
  return result;
}

} // namespace whittaw

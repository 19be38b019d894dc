// Area from a tape: the length along the backbone and widths across it.
#pragma once

#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/source.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>
#include <string>
#include <vector>

namespace whittaw {

/// One width, wherever it was read, is the plain length x width measure. More are read across
/// the backbone from the neck end to the tail end: at even distances, both ends counted, when `at`
/// is empty, else at the stated distances from the neck end, rising. A width may be zero at an end.
struct Tape {
  Length length = 0.0 * metre;
  std::vector<Length> widths = {};
  std::vector<Length> at = {};
};

enum class TapeRule { length_by_width, trapezoid, simpson };

struct TapeArea {
  Estimate<Area> area;
  TapeRule rule = TapeRule::length_by_width;
};

/// Area over length x width.
/// source: calculated from Salehi et al. 2014, goat leather, 1.06 to 1.13.
inline constexpr double length_by_width_factor = 1.095;
inline constexpr Spread length_by_width_spread{0.05};
inline constexpr Source length_by_width_source{
    "factor 1.095 on length x width, calculated from Salehi et al. 2014 (1.06 to 1.13)",
    Mark::calculated};
inline constexpr Source tape_rule_source{
    "Simpson's and the trapezoidal rule, Abramowitz and Stegun, Handbook of Mathematical "
    "Functions, 25.4",
    Mark::memory};
/// Width beyond the outermost stations, of the nearest width read: an assumption.
inline constexpr Share width_beyond{0.75};
/// The trapezoidal rule's own error, in end corrections: what ellipses of 4 to 10 widths miss.
inline constexpr double end_corrections = 2.0;
/// One standard deviation of one width read on a limp skin: an assumption.
inline constexpr Spread width_reading_spread{0.03};
/// One standard deviation of a hide's area by how it happens to be laid and pulled when it is
/// taped: an assumption.
inline constexpr Spread laying_spread{0.04};
inline constexpr std::string_view length_by_width_error = "length by width factor";

namespace detail {

inline std::vector<Length> stations(const Tape &tape) {
  if (!tape.at.empty()) return tape.at;
  std::vector<Length> places(tape.widths.size());
  for (std::size_t i = 0; i < places.size(); ++i)
    places[i] = static_cast<double>(i) / static_cast<double>(places.size() - 1) * tape.length;
  return places;
}

inline Area trapezoid(std::span<const Length> at, std::span<const Length> widths) {
  Area sum = 0.0 * square_metre;
  for (std::size_t i = 1; i < at.size(); ++i)
    sum += 0.5 * (widths[i - 1] + widths[i]) * (at[i] - at[i - 1]);
  return sum;
}

/// Simpson's rule over pairs of strips that need not be even: the parabola through three widths.
inline Area simpson(std::span<const Length> at, std::span<const Length> widths) {
  Area sum = 0.0 * square_metre;
  for (std::size_t i = 2; i < at.size(); i += 2) {
    const Length left = at[i - 1] - at[i - 2];
    const Length right = at[i] - at[i - 1];
    const double ratio = count(right, left);
    sum += (left + right) / 6.0 *
           ((2.0 - ratio) * widths[i - 2] + (2.0 + ratio + 1.0 / ratio) * widths[i - 1] +
            (2.0 - 1.0 / ratio) * widths[i]);
  }
  return sum;
}

/// What the trapezoidal rule misses by the curve of the outline, to first order: the end correction
/// of Euler and Maclaurin, with the slopes of the outermost strips. Zero for straight sides.
/// source: Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.3 (from memory).
inline Area end_correction(std::span<const Length> at, std::span<const Length> widths) {
  if (at.size() < 3) return 0.0 * square_metre;
  const std::size_t last = at.size() - 1;
  return ((at[1] - at[0]) * (widths[1] - widths[0]) +
          (at[last] - at[last - 1]) * (widths[last - 1] - widths[last])) /
         12.0;
}

/// Simpson wants an odd number of widths, and strips of each pair within a factor of two.
inline bool simpson_fits(std::span<const Length> at) {
  if (at.size() < 3 || at.size() % 2 == 0) return false;
  for (std::size_t i = 2; i < at.size(); i += 2) {
    const double ratio = count(at[i] - at[i - 1], at[i - 1] - at[i - 2]);
    if (ratio < 0.5 || ratio > 2.0) return false;
  }
  return true;
}

} // namespace detail

/// Says what is wrong with a tape, if anything.
inline Result<Tape> check_tape(Tape tape) {
  const auto finite_positive = [](Length length) {
    return std::isfinite(count(length, metre)) && length > 0.0 * metre;
  };
  if (!finite_positive(tape.length))
    return Problem{"the tape's length is not above zero", "give the length along the backbone"};
  if (tape.widths.empty())
    return Problem{"the tape has a length and no width",
                   "give one width, or several from the neck end to the tail end"};
  for (const auto &width : tape.widths)
    if (!std::isfinite(count(width, metre)) || width < 0.0 * metre)
      return Problem{"a width of the tape is below zero", "give each width as read, zero or more"};
  if (std::none_of(tape.widths.begin(), tape.widths.end(), finite_positive))
    return Problem{"every width of the tape is zero", "give each width as read"};
  if (tape.at.empty()) return tape;
  if (tape.at.size() != tape.widths.size())
    return Problem{std::to_string(tape.widths.size()) + " widths at " +
                       std::to_string(tape.at.size()) + " stations",
                   "give one station for each width"};
  if (tape.at.size() == 1)
    return Problem{"one width needs no station", "leave `at` out, or give more widths"};
  for (std::size_t i = 0; i < tape.at.size(); ++i) {
    if (!std::isfinite(count(tape.at[i], metre)) || tape.at[i] < 0.0 * metre ||
        tape.at[i] > tape.length * (1.0 + 1e-9))
      return Problem{"a station lies off the hide's length",
                     "give stations as distances from the neck end, up to the length"};
    if (i > 0 && !(tape.at[i] > tape.at[i - 1]))
      return Problem{"stations do not rise", "list stations and widths from neck end to tail end"};
  }
  return tape;
}

/// Area of a sound tape (see check_tape). Its own error holds the reading of the widths, the laying
/// of the hide, half the difference between the two rules (the end corrections where only the
/// trapezoidal one fits), and what lies beyond the outermost
/// stations: there the width is taken as 3/4 of the nearest, as it may be anything from half of it
/// to all of it.
inline TapeArea tape_area(const Tape &tape) {
  if (tape.widths.size() == 1) {
    auto area = shared_estimate(length_by_width_factor * tape.length * tape.widths.front(),
                                length_by_width_spread, length_by_width_error);
    area.own_sd = std::hypot(width_reading_spread.value, laying_spread.value) * area.value;
    return {area, TapeRule::length_by_width};
  }
  const auto at = detail::stations(tape);
  const bool smooth = detail::simpson_fits(at);
  const Area by_trapezoid = detail::trapezoid(at, tape.widths);
  const Area between = smooth ? detail::simpson(at, tape.widths) : by_trapezoid;
  const Area beyond =
      at.front() * tape.widths.front() + (tape.length - at.back()) * tape.widths.back();

  double readings = 0.0;
  for (const auto &width : tape.widths) readings += count(width, metre) * count(width, metre);
  double total = 0.0;
  for (const auto &width : tape.widths) total += count(width, metre);
  const double reading = width_reading_spread.value * std::sqrt(readings) / total;
  const Area value = between + width_beyond.value * beyond;
  // A flat guess from 0.5 to 1 of `beyond` has a standard deviation of 0.25 / sqrt(3).
  const double ends = 0.25 / std::numbers::sqrt3 * count(beyond, square_metre);
  const Area by_rule = smooth ? 0.5 * (between - by_trapezoid)
                              : end_corrections * detail::end_correction(at, tape.widths);
  const double rules = count(by_rule, square_metre);
  const double limp = std::hypot(reading, laying_spread.value) * count(value, square_metre);
  const double sd = std::hypot(limp, ends, rules);
  return {{value, sd * square_metre, {}}, smooth ? TapeRule::simpson : TapeRule::trapezoid};
}

/// Width at a distance from the neck end, along straight lines between the stations; beyond the
/// outermost as in tape_area.
inline Length width_at(std::span<const Length> at, std::span<const Length> widths, Length place) {
  if (place < at.front()) return width_beyond.value * widths.front();
  for (std::size_t i = 1; i < at.size(); ++i) {
    if (place <= at[i]) {
      const double part = count(place - at[i - 1], at[i] - at[i - 1]);
      return widths[i - 1] + part * (widths[i] - widths[i - 1]);
    }
  }
  return width_beyond.value * widths.back();
}

} // namespace whittaw

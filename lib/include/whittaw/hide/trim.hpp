// What is cut off a flayed skin before it is pasted.
#pragma once

#include <whittaw/hide/tape.hpp>

#include <array>
#include <numbers>
#include <optional>
#include <string_view>

namespace whittaw {

enum class Trim { whole, square, ellipse };

struct TrimRow {
  Trim trim;
  std::string_view name;
  std::string_view cut_off; ///< in words
  Share kept;
  Spread spread;
  Source source;
};

/// Shares kept where the outline is not known. A skin is about 1.095 x length x width (see
/// length_by_width_factor); the rectangle of that length and width is 1 / 1.095 of it, and the
/// ellipse in the rectangle pi / 4 of that.
inline constexpr std::array<TrimRow, 3> trim_table{{
    {Trim::whole,
     "whole",
     "nothing beyond head and shanks",
     {1.0},
     {0.0},
     {"flayed skin, head and shanks off", Mark::practice}},
    {Trim::square,
     "square",
     "belly flaps, neck and leg ends, to straight sides",
     {1.0 / length_by_width_factor},
     {0.05},
     {"rectangle of length x width over skin area, calculated from Salehi et al. 2014",
      Mark::calculated}},
    {Trim::ellipse,
     "ellipse",
     "corners, belly flaps and leg ends, to a rough ellipse",
     {std::numbers::pi / 4.0 / length_by_width_factor},
     {0.07},
     {"ellipse in the rectangle of length x width, calculated from Salehi et al. 2014",
      Mark::calculated}},
}};

constexpr const TrimRow &trim_row(Trim trim) { return trim_table[static_cast<std::size_t>(trim)]; }

constexpr std::optional<Trim> find_trim(std::string_view name) {
  for (const auto &row : trim_table)
    if (row.name == name) return row.trim;
  return std::nullopt;
}

/// The largest rectangle across the backbone that lies within the widths read.
inline Area inscribed_rectangle(const Tape &tape) {
  const auto at = detail::stations(tape);
  constexpr int steps = 64;
  std::array<double, steps + 1> width{};
  for (int i = 0; i <= steps; ++i)
    width[static_cast<std::size_t>(i)] =
        count(width_at(at, tape.widths, i / double{steps} * tape.length), metre);
  double best = 0.0;
  for (std::size_t from = 0; from < steps; ++from) {
    double narrowest = width[from];
    for (std::size_t to = from + 1; to <= steps; ++to) {
      narrowest = std::min(narrowest, width[to]);
      best = std::max(best, narrowest * static_cast<double>(to - from) / steps);
    }
  }
  return best * metre * tape.length;
}

/// The largest ellipse centred half-way along the backbone that lies within the widths read.
inline Area inscribed_ellipse(const Tape &tape) {
  const auto at = detail::stations(tape);
  constexpr int sizes = 16;
  constexpr int steps = 48;
  double best = 0.0;
  for (int size = sizes / 2; size <= sizes; ++size) {
    const double along = size / double{sizes}; // long axis over the length
    double across = 1e300;                     // short axis, metres
    for (int i = 1; i < steps; ++i) {
      const double u = 2.0 * i / steps - 1.0; // -1 to 1 along the long axis
      const Length place = 0.5 * (1.0 + u * along) * tape.length;
      across =
          std::min(across, count(width_at(at, tape.widths, place), metre) / std::sqrt(1.0 - u * u));
    }
    best = std::max(best, along * across);
  }
  return std::numbers::pi / 4.0 * best * metre * tape.length;
}

} // namespace whittaw

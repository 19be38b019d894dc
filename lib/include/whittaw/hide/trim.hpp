// What is cut off a flayed skin before it is pasted.
#pragma once

#include <whittaw/hide/tape.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace whittaw {

enum class Trim { whole, square, ellipse };

struct TrimRow {
  Trim trim;
  std::string_view name;
  std::string_view cut_off; ///< in words
  Share kept;
  Spread spread; ///< of the share, an error that all hides of the trim share
  Source source;
  std::string_view error; ///< its name
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
     {"flayed skin, head and shanks off", Mark::practice},
     "trim whole"},
    {Trim::square,
     "square",
     "belly flaps, neck and leg ends, to straight sides",
     {1.0 / length_by_width_factor},
     {0.05},
     {"rectangle of length x width over skin area, calculated from Salehi et al. 2014",
      Mark::calculated},
     "trim square"},
    {Trim::ellipse,
     "ellipse",
     "corners, belly flaps and leg ends, to a rough ellipse",
     {std::numbers::pi / 4.0 / length_by_width_factor},
     {0.07},
     {"ellipse in the rectangle of length x width, calculated from Salehi et al. 2014",
      Mark::calculated},
     "trim ellipse"},
}};

constexpr const TrimRow &trim_row(Trim trim) { return trim_table[static_cast<std::size_t>(trim)]; }

constexpr std::optional<Trim> find_trim(std::string_view name) {
  for (const auto &row : trim_table)
    if (row.name == name) return row.trim;
  return std::nullopt;
}

namespace detail {
/// Places to look at along the backbone: an even grid and every station, rising.
inline std::vector<Length> grid_with_stations(std::span<const Length> at, Length length,
                                              int steps) {
  std::vector<Length> places(at.begin(), at.end());
  for (int i = 0; i <= steps; ++i) places.push_back(i / static_cast<double>(steps) * length);
  std::sort(places.begin(), places.end());
  return places;
}
} // namespace detail

/// One standard deviation of a cut made by eye along a line that fits the hide: an assumption.
inline constexpr Spread cutting_spread{0.03};

/// The largest rectangle across the backbone that lies within the widths read.
inline Area inscribed_rectangle(const Tape &tape) {
  const auto at = detail::stations(tape);
  const auto places = detail::grid_with_stations(at, tape.length, 64);
  std::vector<Length> width;
  width.reserve(places.size());
  for (const auto &place : places) width.push_back(width_at(at, tape.widths, place));
  Area best = 0.0 * square_metre;
  for (std::size_t from = 0; from < places.size(); ++from) {
    Length narrowest = width[from];
    for (std::size_t to = from + 1; to < places.size(); ++to) {
      narrowest = std::min(narrowest, width[to]);
      best = std::max(best, narrowest * (places[to] - places[from]));
    }
  }
  return best;
}

/// The largest ellipse centred half-way along the backbone that lies within the widths read.
inline Area inscribed_ellipse(const Tape &tape) {
  const auto at = detail::stations(tape);
  const auto places = detail::grid_with_stations(at, tape.length, 48);
  constexpr int sizes = 16;
  Area best = 0.0 * square_metre;
  for (int size = sizes / 2; size <= sizes; ++size) {
    const Length half = 0.5 * size / sizes * tape.length; // half the long axis
    Length across = 1e9 * metre;                          // the short axis
    for (const auto &place : places) {
      const double u = count(place - 0.5 * tape.length, half);
      if (u * u > 1.0 - 1e-9) continue;
      across = std::min(across, width_at(at, tape.widths, place) / std::sqrt(1.0 - u * u));
    }
    best = std::max(best, std::numbers::pi / 2.0 * half * across);
  }
  return best;
}

} // namespace whittaw

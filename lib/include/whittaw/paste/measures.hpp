// Rounds a batch to the scoops that a person owns, all ingredients together.
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/units.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace whittaw {

struct Scoop {
  Volume volume = 0.0 * litre;
  std::string name; ///< as its owner writes it: "1/2 cup"
};

struct ScoopCount {
  std::size_t scoop = 0; ///< index into the scoops
  int times = 0;
};

/// One ingredient by scoops.
struct Measure {
  std::vector<ScoopCount> counts; ///< larger scoops first
  Volume volume = 0.0 * litre;    ///< what the scoops hold
  double over = 0.0;              ///< scoops over exact amount, less one
};

struct Rounding {
  std::vector<Measure> measures; ///< one for each exact volume, in its order
  double ratio_error = 0.0; ///< largest over smallest of (1 + over), less one: how far the ratio of
                            ///< any two ingredients is off
};

/// How far all ingredients together may be scooped under or over the exact batch.
inline constexpr double least_over = -0.01;
inline constexpr double most_over = 0.08;
/// More scoops of one ingredient than this are miscounted; weigh instead.
inline constexpr int most_scoops = 40;

namespace detail {

struct Scooping {
  std::vector<ScoopCount> counts;
  double over = 0.0;
  int effort = 0; ///< movements, and two for each change of scoop
};

/// All sensible ways to scoop `exact` within the allowed total: of a smaller scoop never so many as
/// would fill a larger one in use, and at most three sizes.
class ScoopWays {
public:
  ScoopWays(const std::vector<Scoop> &scoops, const std::vector<std::size_t> &order, Volume exact)
      : scoops_(scoops), order_(order), exact_(count(exact, millilitre)) {}

  std::vector<Scooping> find() {
    descend(0, 0.0, 0);
    return std::move(ways_);
  }

private:
  const std::vector<Scoop> &scoops_;
  const std::vector<std::size_t> &order_;
  double exact_;
  std::vector<ScoopCount> counts_ = {};
  std::vector<Scooping> ways_ = {};

  void descend(std::size_t place, double volume, int number) {
    const double over = volume / exact_ - 1.0;
    if (over > most_over + 1e-12) return;
    if (over >= least_over - 1e-12 && !counts_.empty())
      ways_.push_back({counts_, over, number + 2 * static_cast<int>(counts_.size())});
    if (place == order_.size() || counts_.size() == 3) return;
    descend_with(place, volume, number);
  }

  void descend_with(std::size_t first, double volume, int number) {
    for (std::size_t place = first; place < order_.size(); ++place) {
      const double one = count(scoops_[order_[place]].volume, millilitre);
      const double larger =
          counts_.empty() ? 1e300 : count(scoops_[counts_.back().scoop].volume, millilitre);
      for (int times = 1; number + times <= most_scoops && times * one < larger * (1.0 - 1e-9);
           ++times) {
        const double filled = volume + times * one;
        if (filled > exact_ * (1.0 + most_over + 1e-9)) break;
        counts_.push_back({order_[place], times});
        descend(place + 1, filled, number + times);
        counts_.pop_back();
      }
    }
  }
};

/// Of ways that fill the same volume only the one of least effort is ever chosen. Sorted by `over`.
inline std::vector<Scooping> useful_ways(std::vector<Scooping> ways) {
  std::sort(ways.begin(), ways.end(), [](const Scooping &a, const Scooping &b) {
    if (a.over != b.over) return a.over < b.over;
    return a.effort < b.effort;
  });
  std::vector<Scooping> kept;
  for (auto &way : ways) {
    if (kept.empty() || way.over > kept.back().over + 1e-9)
      kept.push_back(std::move(way));
    else if (way.effort < kept.back().effort)
      kept.back() = std::move(way);
  }
  return kept;
}

} // namespace detail

/// Chooses scoops for all ingredients at once: with the fewest movements of the hand for which the
/// ratio of any two is off by no more than `tolerance`, and the least error among equals. The
/// choice is exact: for every possible lowest `over` it takes each ingredient's least effort within
/// the tolerance above it. Nothing if no such choice exists, as with scoops too coarse.
/// `exact` holds volumes above zero.
inline std::optional<Rounding> round_to_scoops(const std::vector<Volume> &exact,
                                               const std::vector<Scoop> &scoops, Spread tolerance) {
  if (exact.empty() || scoops.empty()) return std::nullopt;
  std::vector<std::size_t> order(scoops.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return scoops[a].volume > scoops[b].volume;
  });

  std::vector<std::vector<detail::Scooping>> ways;
  std::vector<double> floors;
  for (const auto &volume : exact) {
    ways.push_back(detail::useful_ways(detail::ScoopWays(scoops, order, volume).find()));
    if (ways.back().empty()) return std::nullopt;
    for (const auto &way : ways.back()) floors.push_back(way.over);
  }
  std::sort(floors.begin(), floors.end());
  floors.erase(std::unique(floors.begin(), floors.end()), floors.end());

  std::vector<const detail::Scooping *> best;
  int best_effort = 0;
  double best_error = 0.0;
  std::vector<const detail::Scooping *> chosen(exact.size());
  for (const double floor : floors) {
    const double ceiling = (1.0 + floor) * (1.0 + tolerance.value) - 1.0 + 1e-12;
    int effort = 0;
    double highest = floor;
    double lowest = 1e300;
    bool complete = true;
    for (std::size_t i = 0; i < exact.size() && complete; ++i) {
      const auto &mine = ways[i];
      auto way = std::lower_bound(mine.begin(), mine.end(), floor,
                                  [](const detail::Scooping &a, double b) { return a.over < b; });
      const detail::Scooping *least = nullptr;
      for (; way != mine.end() && way->over <= ceiling; ++way)
        if (least == nullptr || way->effort < least->effort) least = &*way;
      chosen[i] = least;
      complete = least != nullptr;
      if (!complete) continue;
      effort += least->effort;
      highest = std::max(highest, least->over);
      lowest = std::min(lowest, least->over);
    }
    if (!complete) continue;
    const double error = (1.0 + highest) / (1.0 + lowest) - 1.0;
    if (best.empty() || effort < best_effort || (effort == best_effort && error < best_error)) {
      best = chosen;
      best_effort = effort;
      best_error = error;
    }
  }
  if (best.empty()) return std::nullopt;
  Rounding rounding;
  rounding.ratio_error = best_error;
  for (std::size_t i = 0; i < best.size(); ++i)
    rounding.measures.push_back({best[i]->counts, (1.0 + best[i]->over) * exact[i], best[i]->over});
  return rounding;
}

/// "3 x 1 cup + 2 x 1 tbsp".
inline std::string write_measure(const Measure &measure, const std::vector<Scoop> &scoops) {
  std::string text;
  for (const auto &each : measure.counts) {
    if (!text.empty()) text += " + ";
    text += std::to_string(each.times) + " \u00d7 " + scoops[each.scoop].name;
  }
  return text;
}

} // namespace whittaw

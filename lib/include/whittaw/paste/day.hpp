// One day's work: its hides, its shelf, and how it is to be mixed.
#pragma once

#include <whittaw/hide/hide.hpp>
#include <whittaw/paste/recipe.hpp>
#include <whittaw/paste/shelf.hpp>

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw {

struct VesselRow {
  std::string_view name;
  bool metal = false;
};
inline constexpr std::array<VesselRow, 12> vessel_table{{
    {"plastic"},
    {"glass"},
    {"stoneware"},
    {"wood"},
    {"sound enamel"},
    {"rubber"},
    {"stainless steel", true},
    {"galvanised steel", true},
    {"zinc", true},
    {"aluminium", true},
    {"iron", true},
    {"copper", true},
}};

constexpr const VesselRow *find_vessel(std::string_view name) {
  for (const auto &row : vessel_table)
    if (row.name == name) return &row;
  return nullptr;
}

struct Bucket {
  const VesselRow *material = nullptr; ///< null when not stated
  std::optional<Volume> volume = std::nullopt;
};

/// Paste that stays in the bucket, on the hands and on the floor, of all that is mixed.
inline constexpr Share usual_working_loss{0.05};
inline constexpr Chance usual_chance{0.90};
/// Cold tap water, where a day states no temperature: an assumption on the safe side.
inline constexpr Temperature assumed_water_temperature = degrees_celsius(10.0);

struct Day {
  std::string date; ///< ISO 8601
  Recipe recipe;
  std::vector<Hide> hides;
  std::vector<Bag> shelf = {};
  std::string currency = {}; ///< of all prices of the shelf
  Bucket bucket = {};
  std::optional<Temperature> water_temperature = std::nullopt;
  std::optional<Length> coat = std::nullopt; ///< instead of the recipe's
  std::optional<int> coats = std::nullopt;   ///< instead of the recipe's
  Share working_loss = usual_working_loss;
  Chance chance = usual_chance;
};

} // namespace whittaw

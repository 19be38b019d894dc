// How much a level measure of each dry ingredient weighs.
#pragma once

#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/substance/form.hpp>

#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <string_view>

namespace whittaw {

/// An ingredient as it lies in the bag: chemistry aside, its grain decides what a cup of it weighs.
struct BulkRow {
  std::string_view name;
  std::array<std::string_view, 4> also_called{};
  Role role = Role::extra;
  /// Lowest and highest published, grams in a level US cup; zeros where none was found.
  double low_grams_per_cup = 0.0;
  double high_grams_per_cup = 0.0;
  Source source;
};

inline constexpr std::array<BulkRow, 16> bulk_table{{
    {"water", {}, Role::water, 236.2, 236.2, {"water at 20 degrees, 0.9982 g/mL", Mark::memory}},
    {"table salt",
     {"salt", "fine salt"},
     Role::salt,
     288,
     304,
     {"published kitchen weights of a level cup; 6 g a teaspoon in the GNU units definitions",
      Mark::seen}},
    {"kosher flake salt",
     {"kosher salt", "flake salt"},
     Role::salt,
     134,
     248,
     {"2.8 to 4.8 g a teaspoon in the GNU units definitions; published kitchen weights",
      Mark::seen}},
    {"granular aluminium sulfate",
     {"aluminium sulfate", "granular alum"},
     Role::alum,
     171,
     220,
     {"bulk density charts, aluminium sulfate 45 to 58 lb/ft3", Mark::seen}},
    {"powdered alum",
     {"alum", "potassium alum", "ammonium alum"},
     Role::alum,
     171,
     190,
     {"bulk density charts, fine alum 45 to 50 lb/ft3", Mark::seen}},
    {"lump alum",
     {"alum crystals"},
     Role::alum,
     190,
     227,
     {"bulk density charts, lumpy alum 50 to 60 lb/ft3", Mark::seen}},
    {"light soda ash",
     {"washing soda powder", "soda ash"},
     Role::soda,
     118,
     190,
     {"bulk density sheets, 35 to 50 lb/ft3; IS 251:1998, 500 to 750 kg/m3", Mark::seen}},
    {"dense soda ash",
     {},
     Role::soda,
     227,
     288,
     {"bulk density sheets, 60 to 76 lb/ft3", Mark::seen}},
    {"soda crystals", {"washing soda crystals"}, Role::soda, 0, 0, {}},
    {"soda monohydrate", {}, Role::soda, 0, 0, {}},
    {"sodium bicarbonate",
     {"baking soda"},
     Role::soda,
     163,
     230,
     {"bulk density charts, 43 to 55 lb/ft3; a level kitchen cup of 220 to 230 g from memory",
      Mark::seen}},
    {"corn meal",
     {"cornmeal", "maize meal"},
     Role::meal,
     125,
     171,
     {"published kitchen weights; USDA FoodData Central 122 to 157 g", Mark::seen}},
    {"wheat flour",
     {"flour"},
     Role::meal,
     113,
     160,
     {"4 to 5 oz a cup by how it is filled, GNU units definitions; published kitchen weights",
      Mark::seen}},
    {"wheat bran",
     {"bran"},
     Role::meal,
     58,
     76,
     {"bulk density charts, 16 to 20 lb/ft3; published kitchen weights", Mark::seen}},
    {"oatmeal",
     {"rolled oats", "oats"},
     Role::meal,
     80,
     99,
     {"USDA FoodData Central, rolled oats spooned and packed, as quoted", Mark::seen}},
    {"rye flour", {}, Role::meal, 102, 128, {"kitchen weights of a level cup", Mark::memory}},
}};

constexpr const BulkRow *find_bulk(std::string_view name) {
  for (const auto &row : bulk_table) {
    if (row.name == name) return &row;
    for (const auto other : row.also_called)
      if (!other.empty() && other == name) return &row;
  }
  return nullptr;
}

/// A bulk density and where it is from.
struct BulkDensity {
  Estimate<Density> density;
  Source source;
};

/// The table's density: the middle of the published range, which is taken as flat, so that its
/// standard deviation is half its width over the root of three. Nothing where none was published.
inline std::optional<BulkDensity> published_density(const BulkRow &row) {
  if (!(row.high_grams_per_cup > 0.0)) return std::nullopt;
  const Density middle = 0.5 * (row.low_grams_per_cup + row.high_grams_per_cup) * gram / us_cup;
  const Density half = 0.5 * (row.high_grams_per_cup - row.low_grams_per_cup) * gram / us_cup;
  return BulkDensity{{middle, half / std::sqrt(3.0), {}}, row.source};
}

/// A level measure of an ingredient, weighed in the workshop.
struct Weighing {
  Mass mass = 0.0 * kilogram;
  Volume volume = 0.0 * litre;
};

/// One standard deviation of one careful level measure: an assumption, used until there are enough
/// weighings to show their own scatter.
inline constexpr Spread level_measure_spread{0.03};

/// How many earlier weighings the assumed spread counts for: an assumption.
inline constexpr double assumed_weighings = 2.0;
/// No powder or meal of the trade lies outside these. Common practice.
inline constexpr Density lightest_powder = 0.05 * gram_per_millilitre;
inline constexpr Density heaviest_powder = 3.0 * gram_per_millilitre;

/// The density that the workshop's own weighings give: their mean, and for the spread of a measure
/// filled later, the scatter of the weighings (not less than a part of the assumed one, weighted as
/// if it were two earlier weighings) widened by the error of the mean.
/// `weighings` holds at least one, masses and volumes above zero.
inline BulkDensity own_density(std::span<const Weighing> weighings) {
  const double number = static_cast<double>(weighings.size());
  double mean = 0.0;
  for (const auto &each : weighings)
    mean += count(each.mass / each.volume, gram_per_millilitre) / number;
  double squares = 0.0;
  for (const auto &each : weighings) {
    const double off = count(each.mass / each.volume, gram_per_millilitre) - mean;
    squares += off * off;
  }
  const double assumed = level_measure_spread.value * mean;
  const double variance = (assumed_weighings * assumed * assumed + squares) /
                          (assumed_weighings + number - 1.0) * (1.0 + 1.0 / number);
  return {{mean * gram_per_millilitre, std::sqrt(variance) * gram_per_millilitre, {}},
          {"the workshop's own weighings of a level measure", Mark::own}};
}

inline Estimate<Volume> volume_of(Mass mass, const Estimate<Density> &density) {
  return scale(reciprocal(density), mass);
}
inline Estimate<Mass> mass_of(Volume volume, const Estimate<Density> &density) {
  return scale(density, volume);
}

} // namespace whittaw

// How much of each salt water holds, by temperature.
#pragma once

#include <whittaw/quantity/result.hpp>
#include <whittaw/substance/form.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace whittaw {

/// Temperatures of the columns of the table below, in degrees Celsius.
inline constexpr std::array<double, 6> solubility_columns{0, 10, 20, 30, 40, 60};

struct SolubilityRow {
  Solute solute;
  std::string_view name;
  /// grams of the anhydrous salt in 100 g of water
  std::array<double, solubility_columns.size()> grams_per_100_g;
  Source source;
};

inline constexpr Source crc_solubility{"CRC Handbook of Chemistry and Physics, 98th ed. 2017, "
                                       "aqueous solubility of inorganic compounds "
                                       "at various temperatures (transcribed as mass per cent)",
                                       Mark::seen};
inline constexpr Source lower_solubility{
    "the lower of Perry's table 2-122 (0 to 20 degrees) and the CRC Handbook, 98th ed. 2017",
    Mark::seen};
inline constexpr Source ammonium_alum_solubility{
    "measured 5.5 at 20 degrees as quoted in ECHA registration data, a third below the handbooks' "
    "row (2.1, 5.0, 7.7, 10.9, 14.9, 26.7); the row scaled to it above 0 degrees",
    Mark::calculated};
inline constexpr Source lange_solubility{"Lange's Handbook of Chemistry, solubility in water",
                                         Mark::memory};

/// Where handbooks differ the row holds the lower figure, for the question is whether all of it
/// dissolves.
inline constexpr std::array<SolubilityRow, 6> solubility_table{{
    {Solute::potassium_alum, "potassium alum", {3.0, 4.0, 5.9, 8.4, 11.7, 24.8}, lange_solubility},
    {Solute::ammonium_alum,
     "ammonium alum",
     {2.1, 3.6, 5.5, 7.8, 10.6, 19.1},
     ammonium_alum_solubility},
    {Solute::aluminium_sulfate,
     "aluminium sulfate",
     {31.2, 33.5, 36.4, 39.3, 41.2, 48.4},
     lower_solubility},
    {Solute::sodium_chloride, "salt", {35.7, 35.8, 35.9, 36.1, 36.4, 37.1}, crc_solubility},
    {Solute::sodium_carbonate, "washing soda", {7.0, 12.5, 21.5, 39.7, 49.0, 46.0}, crc_solubility},
    {Solute::sodium_bicarbonate,
     "sodium bicarbonate",
     {6.93, 8.21, 9.57, 11.0, 12.5, 15.9},
     crc_solubility},
}};

inline constexpr Temperature solubility_from = degrees_celsius(solubility_columns.front());
inline constexpr Temperature solubility_to = degrees_celsius(solubility_columns.back());

constexpr const SolubilityRow &solubility_row(Solute solute) {
  return solubility_table[static_cast<std::size_t>(solute)];
}

/// Mass of anhydrous salt that a mass of pure water holds, between the table's columns along
/// straight lines. `temperature` is clamped to the table's 0 to 60 degrees.
inline MassPerWater solubility(Solute solute, Temperature temperature) {
  const auto &grams = solubility_row(solute).grams_per_100_g;
  const double celsius =
      std::clamp(celsius_value(temperature), solubility_columns.front(), solubility_columns.back());
  std::size_t right = 1;
  while (right + 1 < solubility_columns.size() && celsius > solubility_columns[right]) ++right;
  const double left_celsius = solubility_columns[right - 1];
  const double part = (celsius - left_celsius) / (solubility_columns[right] - left_celsius);
  return {std::lerp(grams[right - 1], grams[right], part) / 100.0};
}

/// The lowest temperature of the table at which water holds `wanted`; nothing if none does. Soda's
/// solubility falls again above 40 degrees; the first crossing is what is given.
inline std::optional<Temperature> temperature_to_dissolve(Solute solute, MassPerWater wanted) {
  const auto &grams = solubility_row(solute).grams_per_100_g;
  const double want = wanted.value * 100.0;
  if (want <= grams.front()) return solubility_from;
  for (std::size_t right = 1; right < grams.size(); ++right) {
    if (want <= grams[right]) {
      const double part = (want - grams[right - 1]) / (grams[right] - grams[right - 1]);
      return degrees_celsius(
          std::lerp(solubility_columns[right - 1], solubility_columns[right], part));
    }
  }
  return std::nullopt;
}

/// The column of the table at which most of it dissolves.
inline Temperature best_temperature(Solute solute) {
  const auto &grams = solubility_row(solute).grams_per_100_g;
  const auto most = std::max_element(grams.begin(), grams.end()) - grams.begin();
  return degrees_celsius(solubility_columns[static_cast<std::size_t>(most)]);
}

} // namespace whittaw

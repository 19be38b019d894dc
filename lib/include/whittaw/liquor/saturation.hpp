// Whether the water holds what is put into it.
#pragma once

#include <whittaw/substance/solubility.hpp>

#include <optional>
#include <span>
#include <vector>

namespace whittaw {

/// One chemical in a water.
struct Dissolving {
  Form form;
  Mass mass = 0.0 * kilogram;
};

/// How one salt stands against its solubility.
struct Saturation {
  Solute solute = Solute::sodium_chloride;
  MassPerWater present = {0.0};
  MassPerWater limit = {0.0};
  Mass undissolved = 0.0 * kilogram; ///< of the form added, its water included
  std::optional<Temperature> needs;  ///< temperature that dissolves it all, if any up to 60 degrees
  bool overfull() const { return present > limit; }
};

/// Saturation of each salt in `water` with the chemicals' own water of crystallisation added to it.
/// Each salt is held against its own table in pure water: other salts in the same water make it a
/// little more or less soluble, which the table does not know.
inline std::vector<Saturation> saturation(Mass water, std::span<const Dissolving> chemicals,
                                          Temperature temperature) {
  Mass all_water = water;
  for (const auto &chemical : chemicals) all_water += chemical.form.water.value * chemical.mass;

  std::vector<Saturation> rows;
  std::vector<Mass> anhydrous;
  std::vector<Mass> whole;
  for (const auto &chemical : chemicals) {
    if (!chemical.form.solute || !(chemical.mass > 0.0 * kilogram)) continue;
    std::size_t row = 0;
    while (row < rows.size() && rows[row].solute != *chemical.form.solute) ++row;
    if (row == rows.size()) {
      rows.push_back({*chemical.form.solute, {}, {}, 0.0 * kilogram, std::nullopt});
      anhydrous.push_back(0.0 * kilogram);
      whole.push_back(0.0 * kilogram);
    }
    anhydrous[row] += chemical.form.anhydrous.value * chemical.mass;
    whole[row] += chemical.mass;
  }
  for (std::size_t row = 0; row < rows.size(); ++row) {
    auto &salt = rows[row];
    salt.present = {count(anhydrous[row], all_water)};
    salt.limit = solubility(salt.solute, temperature);
    salt.needs = temperature_to_dissolve(salt.solute, salt.present);
    if (salt.overfull()) {
      // Crystals that stay take their water of crystallisation with them: solve for the mass x of
      // crystals with anhydrous share a and water share 1 - a,
      // anhydrous - a x = limit (water - (1 - a) x).
      const double share = count(anhydrous[row], whole[row]);
      const double crystals =
          (count(anhydrous[row], kilogram) - salt.limit.value * count(all_water, kilogram)) /
          (share - salt.limit.value * (1.0 - share));
      salt.undissolved = std::min(whole[row], crystals * kilogram);
    }
  }
  return rows;
}

/// Added to the table's temperature: alum chills the water that it dissolves in, and a shed is
/// cold. An assumption.
inline constexpr double dissolving_margin_celsius = 3.0;

/// Temperature at which all of these dissolve with the margin, in whole degrees; nothing if they do
/// at `stated`, or at none up to 60 degrees, or only below it.
inline std::optional<Temperature> warmer_to_dissolve(std::span<const Saturation> salts,
                                                     Temperature stated) {
  std::optional<Temperature> warmest;
  for (const auto &salt : salts) {
    if (!salt.overfull() || !salt.needs || *salt.needs <= stated) continue;
    const auto enough =
        degrees_celsius(std::ceil(celsius_value(*salt.needs) + dissolving_margin_celsius));
    if (!warmest || enough > *warmest) warmest = enough;
  }
  return warmest;
}

/// Temperature below which a salt crystallises out of the liquor.
struct Crystallising {
  Temperature below = solubility_from;
  Solute solute = Solute::sodium_chloride;
};

/// The first to crystallise as a mixed liquor cools; nothing if none does above freezing. Soda is
/// left out: it has reacted by then.
inline std::optional<Crystallising> first_to_crystallise(std::span<const Saturation> salts) {
  std::optional<Crystallising> first;
  for (const auto &salt : salts) {
    if (salt.solute == Solute::sodium_carbonate || salt.solute == Solute::sodium_bicarbonate)
      continue;
    if (salt.needs && *salt.needs > solubility_from && (!first || *salt.needs > first->below))
      first = Crystallising{*salt.needs, salt.solute};
  }
  return first;
}

} // namespace whittaw

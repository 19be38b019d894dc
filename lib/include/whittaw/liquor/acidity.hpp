// What pH to look for with a strip. A line between two published figures, not a computation.
#pragma once

#include <whittaw/liquor/basicity.hpp>

#include <optional>

namespace whittaw {

struct AcidityEstimate {
  double ph = 0.0; ///< a logarithm, and so a plain number
  double ph_sd = 0.0;
};

/// What a strip may show of a sound liquor: two standard deviations either way.
constexpr double lowest_ph(const AcidityEstimate &acidity) {
  return acidity.ph - 2.0 * acidity.ph_sd;
}
constexpr double highest_ph(const AcidityEstimate &acidity) {
  return acidity.ph + 2.0 * acidity.ph_sd;
}

inline constexpr Source acidity_source{
    "pH on a line from 3.3 at basicity 0 (potash alum, 0.2 mol/L, measured) to 4.0 at 27.6 % "
    "(bulletin paste, published models 3.7 to 4.3)",
    Mark::calculated};

/// The two ends of the line.
inline constexpr double plain_alum_ph = 3.3;
inline constexpr double bulletin_ph = 4.0;
inline constexpr Basicity bulletin_basicity{0.276};
inline constexpr double ph_spread = 0.5;

/// pH of a potash alum liquor with soda, good to half a unit; nothing beyond the fair band, where
/// aluminium may drop out and no published figure stands.
constexpr std::optional<AcidityEstimate> estimated_acidity(Basicity basicity) {
  if (basicity_band(basicity).band > BasicityBand::fair) return std::nullopt;
  return AcidityEstimate{plain_alum_ph + (bulletin_ph - plain_alum_ph) * basicity.value /
                                             bulletin_basicity.value,
                         ph_spread};
}

} // namespace whittaw

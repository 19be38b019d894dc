// Ratios of like quantities, each a named type: kilogram per kilogram would otherwise collapse to a
// bare number, and an offer could be passed for a basicity.
#pragma once

#include <compare>

namespace whittaw {

/// A dimensionless figure of one kind, as a fraction of 1 (0.08 is 8 %).
template <class Kind> struct Fraction {
  double value = 0.0;
  constexpr auto operator<=>(const Fraction &) const = default;
};

/// Mass of a chemical offered per mass of fleshed hide.
using Offer = Fraction<struct OfferKind>;
/// Schorlemmer basicity: hydroxide bound per aluminium, over three.
using Basicity = Fraction<struct BasicityKind>;
/// Mass of a part per mass of the whole.
using MassFraction = Fraction<struct MassFractionKind>;
/// Mass of dissolved solid per mass of water.
using MassPerWater = Fraction<struct MassPerWaterKind>;
/// Part of an area, a volume or a mass that is kept, lost or added.
using Share = Fraction<struct ShareKind>;
/// Aluminium of a dry powder by mass over that of fresh dry paste.
using Strength = Fraction<struct StrengthKind>;
/// Probability that an amount is enough.
using Chance = Fraction<struct ChanceKind>;
/// Relative standard deviation.
using Spread = Fraction<struct SpreadKind>;

template <class Kind> constexpr Fraction<Kind> percent(double value) { return {value / 100.0}; }

} // namespace whittaw

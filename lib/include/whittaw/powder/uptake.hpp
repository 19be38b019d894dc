// What a skin keeps of a paste, and how damp a powder is.
#pragma once

#include <whittaw/powder/contents.hpp>

#include <array>

namespace whittaw {

struct UptakeRow {
  Part part;
  Share kept; ///< by the skin, or lost with it, of what was put on
  Share sd;   ///< one standard deviation
  Source source;
};

inline constexpr Source no_uptake_source{
    "no figure was found for what a tawed skin takes up; the workshop's own weighings are better",
    Mark::assumption};

/// Assumed for want of any published figure, each with a spread to match.
inline constexpr std::array<UptakeRow, part_table.size()> uptake_table{{
    {Part::aluminium, {0.40}, {0.15}, no_uptake_source},
    {Part::sulfate, {0.30}, {0.15}, no_uptake_source},
    {Part::hydroxide, {0.40}, {0.15}, no_uptake_source},
    {Part::sodium, {0.30}, {0.15}, no_uptake_source},
    {Part::potassium, {0.30}, {0.15}, no_uptake_source},
    {Part::ammonium, {0.30}, {0.15}, no_uptake_source},
    {Part::chloride, {0.30}, {0.15}, no_uptake_source},
    {Part::meal, {0.02}, {0.02}, no_uptake_source},
    {Part::other, {0.50}, {0.25}, no_uptake_source},
}};

/// What is left on the surface of a skin to be shaken off.
inline Contents left_on_surface(const Contents &applied) {
  Contents left = applied;
  for (const auto &row : uptake_table)
    left[row.part] -= std::llround(static_cast<double>(applied[row.part]) * row.kept.value);
  return left;
}

/// Water in a powder dried in air, of its whole mass: alum keeps most of its water of
/// crystallisation, meal about 12 %. An assumption.
inline constexpr MassFraction air_dry_moisture{0.20};
inline constexpr Spread air_dry_moisture_sd{0.06};
/// A powder wetter than this is damp: it cakes, and is better dried or thrown out. An assumption.
inline constexpr MassFraction damp_above{0.35};

/// Aluminium in a dry powder by mass over that in the fresh dry paste, both known to the gram: the
/// strength of the powder. One for a powder as strong as fresh.
inline Strength strength_against(const Contents &powder, const Contents &fresh) {
  const double now = count(aluminium_of(powder) / dry_mass(powder), mole / kilogram);
  const double then = count(aluminium_of(fresh) / dry_mass(fresh), mole / kilogram);
  return {then > 0.0 ? now / then : 0.0};
}

} // namespace whittaw

// The names of whittaw/quantity/units.hpp with every quantity a plain double in SI units: what the
// library's own code costs when nothing checks its units. For the benchmark only.
#pragma once

namespace whittaw {

using Length = double;
using Area = double;
using Volume = double;
using Mass = double;
using Amount = double;
using Duration = double;
using Density = double;
using ArealMass = double;
using MolarMass = double;
using AmountPerMass = double;
using Temperature = double; ///< degrees Celsius

constexpr Temperature degrees_celsius(double value) { return value; }
constexpr double celsius_value(Temperature temperature) { return temperature; }

inline constexpr Length metre = 1.0;
inline constexpr Length centimetre = 0.01;
inline constexpr Length millimetre = 0.001;
inline constexpr Area square_metre = 1.0;
inline constexpr Volume cubic_metre = 1.0;
inline constexpr Volume litre = 1e-3;
inline constexpr Volume millilitre = 1e-6;
inline constexpr Mass kilogram = 1.0;
inline constexpr Mass gram = 1e-3;
inline constexpr Amount mole = 1.0;
inline constexpr Duration seconds = 1.0;
inline constexpr Duration hours = 3600.0;
inline constexpr Duration days = 86400.0;
inline constexpr Density gram_per_millilitre = 1000.0;
inline constexpr ArealMass kilogram_per_square_metre = 1.0;
inline constexpr MolarMass gram_per_mole = gram / mole;

inline constexpr Length inch = 0.0254;
inline constexpr Length foot = 0.3048;
inline constexpr Area square_foot = 0.09290304;
inline constexpr Mass pound = 0.45359237;
inline constexpr Mass ounce = 0.45359237 / 16.0;
inline constexpr Volume us_gallon = 3.785411784e-3;
inline constexpr Volume us_cup = 3.785411784e-3 / 16.0;
inline constexpr Volume us_fluid_ounce = 3.785411784e-3 / 128.0;
inline constexpr Volume us_tablespoon = 3.785411784e-3 / 256.0;
inline constexpr Volume us_teaspoon = 3.785411784e-3 / 768.0;
inline constexpr Volume imperial_gallon = 4.54609e-3;
inline constexpr Volume imperial_pint = 4.54609e-3 / 8.0;
inline constexpr Volume imperial_fluid_ounce = 4.54609e-3 / 160.0;

constexpr double count(double quantity, double unit) { return quantity / unit; }

} // namespace whittaw

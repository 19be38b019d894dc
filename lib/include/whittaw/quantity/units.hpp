// The physical quantities of the library. Every one is a Boost.Units quantity held in SI units, so
// that a mass given where an area is wanted, or a sum of the two, does not compile.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/base_dimension.hpp>
#include <boost/units/base_unit.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/amount.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/dimensionless.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/surface_density.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/volume.hpp>
#include <boost/units/systems/temperature/celsius.hpp>

namespace whittaw {

namespace si = boost::units::si;

using Length = boost::units::quantity<si::length>;
using Area = boost::units::quantity<si::area>;
using Volume = boost::units::quantity<si::volume>;
using Mass = boost::units::quantity<si::mass>;
using Amount = boost::units::quantity<si::amount>;
using Duration = boost::units::quantity<si::time>;
using Density = boost::units::quantity<si::mass_density>;
/// Mass of hide or of chemical on one square metre.
using ArealMass = boost::units::quantity<si::surface_density>;
using MolarMass = decltype(Mass() / Amount());
/// Moles of something (aluminium, hydroxide, ...) brought by one kilogram of a chemical.
using AmountPerMass = decltype(Amount() / Mass());
/// A point on the Celsius scale. There is no bare Celsius quantity: Boost.Units would read it as a
/// temperature difference and turn 5 degrees into 5 kelvin.
using Temperature =
    boost::units::quantity<boost::units::absolute<boost::units::celsius::temperature>>;

constexpr Temperature degrees_celsius(double value) {
  return value * boost::units::absolute<boost::units::celsius::temperature>();
}
constexpr double celsius_value(Temperature temperature) { return temperature.value(); }

inline constexpr Length metre = Length::from_value(1.0);
inline constexpr Length centimetre = Length::from_value(0.01);
inline constexpr Length millimetre = Length::from_value(0.001);
inline constexpr Area square_metre = Area::from_value(1.0);
inline constexpr Volume cubic_metre = Volume::from_value(1.0);
inline constexpr Volume litre = Volume::from_value(1e-3);
inline constexpr Volume millilitre = Volume::from_value(1e-6);
inline constexpr Mass kilogram = Mass::from_value(1.0);
inline constexpr Mass gram = Mass::from_value(1e-3);
inline constexpr Amount mole = Amount::from_value(1.0);
inline constexpr Duration seconds = Duration::from_value(1.0);
inline constexpr Duration hours = Duration::from_value(3600.0);
inline constexpr Duration days = Duration::from_value(86400.0);
inline constexpr Density gram_per_millilitre = Density::from_value(1000.0);
inline constexpr ArealMass kilogram_per_square_metre = ArealMass::from_value(1.0);
inline constexpr MolarMass gram_per_mole = gram / mole;

// Customary units, exact by definition. source: NIST Special Publication 811 (2008), appendix B.8.
inline constexpr Length inch = Length::from_value(0.0254);
inline constexpr Length foot = Length::from_value(0.3048);
inline constexpr Area square_foot = Area::from_value(0.09290304);
inline constexpr Mass pound = Mass::from_value(0.45359237);
inline constexpr Mass ounce = Mass::from_value(0.45359237 / 16.0);
inline constexpr Volume us_gallon = Volume::from_value(3.785411784e-3);
inline constexpr Volume us_cup = Volume::from_value(3.785411784e-3 / 16.0);
inline constexpr Volume us_fluid_ounce = Volume::from_value(3.785411784e-3 / 128.0);
inline constexpr Volume us_tablespoon = Volume::from_value(3.785411784e-3 / 256.0);
inline constexpr Volume us_teaspoon = Volume::from_value(3.785411784e-3 / 768.0);
inline constexpr Volume imperial_gallon = Volume::from_value(4.54609e-3);
inline constexpr Volume imperial_pint = Volume::from_value(4.54609e-3 / 8.0);
inline constexpr Volume imperial_fluid_ounce = Volume::from_value(4.54609e-3 / 160.0);

/// How many `unit` there are in `quantity`: the one door from quantities to plain numbers.
template <class Q> constexpr double count(Q quantity, Q unit) { return quantity / unit; }

} // namespace whittaw

// Carbon dioxide from the soda, and the room its foam needs.
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/quantity/units.hpp>

namespace whittaw {

/// Volume of carbon dioxide at one standard atmosphere, as an ideal gas, all of it set free.
/// source: R = 8.314462618 J/(mol K) (CODATA 2018), 1 atm = 101325 Pa exactly.
constexpr Volume carbon_dioxide_volume(Amount carbonate, Temperature temperature) {
  constexpr double gas_constant = 8.314462618;
  constexpr double atmosphere = 101325.0;
  const double kelvin = celsius_value(temperature) + 273.15;
  return count(carbonate, mole) * gas_constant * kelvin / atmosphere * cubic_metre;
}

/// The temperature that gas volumes are stated at.
inline constexpr Temperature gas_temperature = degrees_celsius(20.0);

/// Portions that the soda water is poured in, at the least, each left until the foam is down.
inline constexpr int pouring_portions = 8;
/// Room for stirring, of the volume of paste.
inline constexpr Share stirring_room{0.25};
inline constexpr Source bucket_source{
    "the paste, a quarter more for stirring, and the gas of one of 8 portions of soda "
    "standing as foam",
    Mark::assumption};

/// Smallest bucket that holds the paste while it is stirred and foams.
constexpr Volume bucket_volume(Volume paste, Volume gas) {
  return (1.0 + stirring_room.value) * paste + gas / static_cast<double>(pouring_portions);
}

} // namespace whittaw

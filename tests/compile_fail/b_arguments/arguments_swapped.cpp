// B5: amount and temperature of a gas volume stand in each other's place.
// expect: could not convert 'whittaw::gas_temperature' from
// expect: temperature_base_dimension
// expect: amount_base_dimension
// expect-clang: no matching function for call to 'carbon_dioxide_volume'
// expect-clang: for 1st argument
#include <whittaw/liquor/gas.hpp>

using namespace whittaw;

Volume foam(Amount carbonate) {
#ifdef BROKEN
  return carbon_dioxide_volume(gas_temperature, carbonate);
#else
  return carbon_dioxide_volume(carbonate, gas_temperature);
#endif
}

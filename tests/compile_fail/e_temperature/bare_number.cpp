// E1: a bare number is given where a temperature is wanted.
// expect: from 'double' to 'whittaw::Temperature'
// expect-clang: no known conversion from 'double' to 'whittaw::Temperature'
#include <whittaw/substance/solubility.hpp>

using namespace whittaw;

MassPerWater alum_in_cold_water() {
#ifdef BROKEN
  return solubility(Solute::potassium_alum, 12.0);
#else
  return solubility(Solute::potassium_alum, degrees_celsius(12.0));
#endif
}

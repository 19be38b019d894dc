// G1: an estimated area is given where an estimated mass is wanted.
// expect: could not convert 'area' from 'Estimate<
// expect: length_base_dimension
// expect: mass_base_dimension
// expect-clang: returned value of type 'const Estimate<
// expect-clang: length_base_dimension
// expect-clang: mass_base_dimension
#include <whittaw/hide/hide.hpp>

using namespace whittaw;

Estimate<Mass> green_weight(const Estimate<Area> &area, const Species &species) {
#ifdef BROKEN
  (void)species;
  return area;
#else
  return scale(area, species.green.areal_mass);
#endif
}

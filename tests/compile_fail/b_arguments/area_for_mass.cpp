// B1: an area is given where a live weight is wanted.
// expect: could not convert 'skin' from
// expect: length_base_dimension
// expect: to 'quantity<
// expect: mass_base_dimension
// expect-clang: no viable conversion from
// expect-clang: length_base_dimension
// expect-clang: mass_base_dimension
#include <whittaw/hide/hide.hpp>

using namespace whittaw;

LiveWeight weight_of_goat(Area skin, Mass goat) {
#ifdef BROKEN
  (void)goat;
  return LiveWeight{skin};
#else
  (void)skin;
  return LiveWeight{goat};
#endif
}

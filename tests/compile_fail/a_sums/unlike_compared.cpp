// A3: a mass is held against a volume.
// expect: no match for 'operator<' (operand types are 'whittaw::Mass'
// expect: and 'whittaw::Volume'
// expect-clang: invalid operands to binary expression ('whittaw::Mass'
// expect-clang: and 'whittaw::Volume'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

bool fits(Mass paste, Density density, Volume bucket) {
#ifdef BROKEN
  (void)density;
  return paste < bucket;
#else
  return paste / density < bucket;
#endif
}

// A1: a mass and a volume are added.
// expect: no match for 'operator+' (operand types are 'whittaw::Mass'
// expect: mass_base_dimension
// expect: and 'whittaw::Volume'
// expect-clang: invalid operands to binary expression ('whittaw::Mass'
// expect-clang: and 'whittaw::Volume'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

Mass weight_of_bucket(Mass alum, Volume water) {
#ifdef BROKEN
  return alum + water;
#else
  return alum + water * gram_per_millilitre;
#endif
}

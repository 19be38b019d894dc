// D3: a mass fraction is held against a limit by mass of water.
// expect: no match for 'operator>' (operand types are 'whittaw::MassFraction'
// expect: and 'whittaw::MassPerWater'
// expect-clang: invalid operands to binary expression ('whittaw::MassFraction'
// expect-clang: and 'whittaw::MassPerWater'
#include <whittaw/quantity/fraction.hpp>

using namespace whittaw;

bool overfull(MassFraction dissolved, MassPerWater limit) {
#ifdef BROKEN
  return dissolved > limit;
#else
  return MassPerWater{dissolved.value / (1.0 - dissolved.value)} > limit;
#endif
}

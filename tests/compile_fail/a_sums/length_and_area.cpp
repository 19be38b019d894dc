// A2: a coat is added to the area it goes on.
// expect: no match for 'operator+' (operand types are 'whittaw::Area'
// expect: and 'whittaw::Length'
// expect-clang: invalid operands to binary expression ('whittaw::Area'
// expect-clang: and 'whittaw::Length'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

Volume paste_for(Area hide, Length coat) {
#ifdef BROKEN
  return hide + coat;
#else
  return hide * coat;
#endif
}

// E3: two temperatures are added.
// expect: no match for 'operator+' (operand types are
// expect: boost::units::absolute<
// expect-clang: invalid operands to binary expression
// expect-clang: absolute<
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

Temperature mean(Temperature morning, Temperature evening) {
#ifdef BROKEN
  return 0.5 * (morning + evening);
#else
  return morning + 0.5 * (evening - morning);
#endif
}

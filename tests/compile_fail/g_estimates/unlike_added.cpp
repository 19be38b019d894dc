// G2: an estimated area and an estimated mass are added.
// expect: no match for 'operator+' (operand types are 'const whittaw::Estimate<
// expect-clang: invalid operands to binary expression ('const Estimate<whittaw::Mass>'
// expect-clang: and 'const Estimate<whittaw::Area>'
#include <whittaw/quantity/estimate.hpp>

using namespace whittaw;

Estimate<Mass> total(const Estimate<Mass> &first, const Estimate<Area> &second, ArealMass by_area) {
#ifdef BROKEN
  (void)by_area;
  return first + second;
#else
  return first + scale(second, by_area);
#endif
}

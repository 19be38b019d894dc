// C1: pounds of alum are given where money is wanted.
// expect: could not convert 'alum' from
// expect: mass_base_dimension
// expect: money_base_dimension
// expect-clang: no viable conversion from
// expect-clang: mass_base_dimension
// expect-clang: money_base_dimension
#include <whittaw/quantity/money.hpp>

using namespace whittaw;

Money cost_of_alum(PricePerMass price, Mass alum) {
#ifdef BROKEN
  (void)price;
  return alum;
#else
  return cost_of(price, alum);
#endif
}

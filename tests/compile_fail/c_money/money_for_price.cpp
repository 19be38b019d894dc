// C4: the price of a whole bag is given where a price by mass is wanted.
// expect: could not convert 'bag_price' from
// expect: money_base_dimension
// expect-clang: no matching function for call to 'cost_of'
// expect-clang: for 1st argument
#include <whittaw/quantity/money.hpp>

using namespace whittaw;

Money share_of_bag(Money bag_price, Mass bag, Mass used) {
#ifdef BROKEN
  (void)bag;
  return cost_of(bag_price, used);
#else
  return cost_of(bag_price / bag, used);
#endif
}

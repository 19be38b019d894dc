// C2: pounds sterling are given where dollars are wanted.
// expect: could not convert 'price' from
// expect: pound_sterling_base_unit
// expect: us_dollar_base_unit
// expect-clang: returned value of type 'MoneyIn<whittaw::pound_sterling_base_unit>'
// expect-clang: to function return type 'MoneyIn<whittaw::us_dollar_base_unit>'
#include <whittaw/quantity/money.hpp>

using namespace whittaw;

UsDollars price_in_dollars(PoundsSterling price, double dollars_for_a_pound) {
#ifdef BROKEN
  (void)dollars_for_a_pound;
  return price;
#else
  return UsDollars::from_value(price.value() * dollars_for_a_pound);
#endif
}

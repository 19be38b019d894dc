// C3: euros and dollars are added.
// expect: no match for 'operator+' (operand types are 'whittaw::Euros'
// expect: and 'whittaw::UsDollars'
// expect-clang: invalid operands to binary expression ('whittaw::Euros'
// expect-clang: and 'whittaw::UsDollars'
#include <whittaw/quantity/money.hpp>

using namespace whittaw;

Euros total(Euros salt, UsDollars alum, double euros_for_a_dollar) {
#ifdef BROKEN
  (void)euros_for_a_dollar;
  return salt + alum;
#else
  return salt + Euros::from_value(alum.value() * euros_for_a_dollar);
#endif
}

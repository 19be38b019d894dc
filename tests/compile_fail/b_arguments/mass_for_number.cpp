// B3: a mass is used as a bare number.
// expect: cannot convert 'whittaw::Mass'
// expect: to 'const double' in initialization
// expect-clang: no viable conversion from 'whittaw::Mass'
// expect-clang: to 'const double'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

double ounces(Mass salt) {
#ifdef BROKEN
  const double number = salt;
#else
  const double number = count(salt, ounce);
#endif
  return number;
}

// E2: a difference of two temperatures is given where a temperature is wanted.
// expect: could not convert
// expect: subtract_typeof_helper
// expect: ' to 'quantity<boost::units::absolute<
// expect-clang: no viable conversion from returned value of type
// expect-clang: subtract_typeof_helper
// expect-clang: temperature_base_dimension
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

Temperature warmed(Temperature tap, Temperature bath) {
#ifdef BROKEN
  return bath - tap;
#else
  return tap + (bath - tap);
#endif
}

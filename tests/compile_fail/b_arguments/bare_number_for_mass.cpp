// B2: a bare number is given where a mass is wanted.
// expect: could not convert
// expect: from 'double' to 'whittaw::Mass'
// expect-clang: no known conversion from 'double' to 'whittaw::Mass'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

double mass_to_grams(Mass mass) { return count(mass, gram); }

double grams_of_alum() {
#ifdef BROKEN
  return mass_to_grams(0.45);
#else
  return mass_to_grams(0.45 * kilogram);
#endif
}

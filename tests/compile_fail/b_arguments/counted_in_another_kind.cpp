// B4: a mass is counted in cups.
// expect: no matching function for call to 'count(whittaw::Mass&, const whittaw::Volume&)'
// expect: deduced conflicting types for parameter 'Q'
// expect-clang: no matching function for call to 'count'
// expect-clang: deduced conflicting types for parameter 'Q'
#include <whittaw/quantity/units.hpp>

using namespace whittaw;

double cups_of_flour(Mass flour, Density bulk) {
#ifdef BROKEN
  (void)bulk;
  return count(flour, us_cup);
#else
  return count(flour / bulk, us_cup);
#endif
}

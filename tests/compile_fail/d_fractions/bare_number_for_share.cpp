// D2: a bare number is given where a share is wanted; 17 or 0.17?
// expect: from 'double' to 'whittaw::MassFraction'
// expect-clang: no known conversion from 'double' to 'whittaw::MassFraction'
#include <whittaw/substance/form.hpp>

using namespace whittaw;

Form alum_of_bag() {
#ifdef BROKEN
  return aluminium_sulfate_of_alumina(17.0);
#else
  return aluminium_sulfate_of_alumina(percent<MassFractionKind>(17.0));
#endif
}

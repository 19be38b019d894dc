// F1: a formula names an element that is none.
// expect: '<throw-expression>' is not a constant expression
// expect: "not a chemical formula"
// expect-clang: consteval function 'whittaw::formula' is not a constant expression
#include <whittaw/substance/formula.hpp>

using namespace whittaw;

constexpr MolarMass soda() {
#ifdef BROKEN
  return molar_mass(formula("Ma2CO3.10H2O"));
#else
  return molar_mass(formula("Na2CO3.10H2O"));
#endif
}
static_assert(soda() > 0.286 * kilogram / mole);

// F2: a bracket of a formula is left open.
// expect: '<throw-expression>' is not a constant expression
// expect: "not a chemical formula"
// expect-clang: consteval function 'whittaw::formula' is not a constant expression
#include <whittaw/substance/formula.hpp>

using namespace whittaw;

#ifdef BROKEN
constexpr Composition alum = formula("KAl(SO4.12H2O");
#else
constexpr Composition alum = formula("KAl(SO4)2.12H2O");
#endif
static_assert(alum.atoms.size() > 0);

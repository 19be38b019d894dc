// F3: a text that is not a literal is read as one.
// expect: error: 'typed' is not a constant expression
// expect-clang: function parameter 'typed' with unknown value
#include <whittaw/substance/formula.hpp>

using namespace whittaw;

bool is_formula(std::string_view typed) {
#ifdef BROKEN
  return formula(typed) == Composition{};
#else
  return read_formula(typed).ok();
#endif
}

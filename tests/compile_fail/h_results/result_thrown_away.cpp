// H2: a result is thrown away, its problem with it.
// expect: ignoring returned value of type 'whittaw::Result<whittaw::Tape>'
// expect-clang: ignoring return value of function declared with 'nodiscard' attribute
#include <whittaw/hide/tape.hpp>

using namespace whittaw;

bool sound(const Tape &tape) {
#ifdef BROKEN
  check_tape(tape);
  return true;
#else
  return check_tape(tape).ok();
#endif
}

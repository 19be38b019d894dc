// H3: a result is returned as yes or no; a zero and a problem would look alike.
// expect: cannot convert 'whittaw::Result<double>' to 'bool' in return
// expect-clang: returned value of type 'Result<double>' to function return type 'bool'
#include <whittaw/quantity/number.hpp>

using namespace whittaw;

bool starts_with_number(std::string_view typed) {
#ifdef BROKEN
  return take_number(typed);
#else
  return take_number(typed).ok();
#endif
}

// H1: what was read is used with no look at whether it could be.
// expect: could not convert 'whittaw::read_mass(
// expect: from 'whittaw::Result<
// expect-clang: returned value of type 'Result<whittaw::Mass>'
#include <whittaw/quantity/read.hpp>

using namespace whittaw;

Mass mass_of_salt(std::string_view typed) {
#ifdef BROKEN
  return read_mass(typed);
#else
  const auto mass = read_mass(typed);
  return mass ? *mass : 0.0 * kilogram;
#endif
}

// The other of two translation units that both include everything.
#include "linked.hpp"

#include "close.hpp"

namespace {
// Not inline, so that each translation unit takes the addresses for itself.
whittaw_test::Addresses addresses_of_this_file() {
  return {&whittaw::species_table, &whittaw::unit_table, &whittaw::caution_table,
          &whittaw::make_batch};
}
} // namespace

TEST_CASE("two translation units with everything link, and share tables and functions") {
  CHECK((addresses_of_this_file() == whittaw_test::addresses_here()));
  CHECK(whittaw_test::addresses_here().make_batch(whittaw::Day{}).ok() == false);
}

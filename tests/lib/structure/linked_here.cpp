// One of two translation units that both include everything.
#include "linked.hpp"

namespace whittaw_test {
Addresses addresses_here() {
  return {&whittaw::species_table, &whittaw::unit_table, &whittaw::caution_table,
          &whittaw::make_batch};
}
} // namespace whittaw_test

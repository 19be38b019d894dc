// What two translation units must agree on: one address for each inline thing.
#pragma once

#include <whittaw/whittaw.hpp>

namespace whittaw_test {

struct Addresses {
  const void *species = nullptr;
  const void *units = nullptr;
  const void *cautions = nullptr;
  whittaw::Result<whittaw::Batch> (*make_batch)(const whittaw::Day &) = nullptr;
  bool operator==(const Addresses &) const = default;
};

Addresses addresses_here();

} // namespace whittaw_test

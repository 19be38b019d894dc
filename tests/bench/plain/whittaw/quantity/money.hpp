// The names of whittaw/quantity/money.hpp as plain doubles. For the benchmark only.
#pragma once

#include <whittaw/quantity/units.hpp>

namespace whittaw {

using Money = double;
using PricePerMass = double;

inline constexpr Money tender = 1.0;

inline Money cost_of(PricePerMass price, Mass mass) { return price * mass; }

} // namespace whittaw

// Basicity of an aluminium liquor, and the bands that practice keeps it in.
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/substance/form.hpp>

#include <array>
#include <string_view>

namespace whittaw {

/// What is in the liquor, in moles.
struct LiquorAmounts {
  Amount aluminium = 0.0 * mole;
  Amount hydroxide = 0.0 * mole; ///< what the soda can bind to aluminium
  Amount carbonate = 0.0 * mole; ///< all of it leaves as carbon dioxide
};

constexpr void add_to(LiquorAmounts &liquor, const Form &form, Mass mass) {
  liquor.aluminium += form.aluminium * mass;
  liquor.hydroxide += form.hydroxide * mass;
  liquor.carbonate += form.carbonate * mass;
}

/// Schorlemmer basicity: moles of hydroxide per mole of aluminium, over three. Carbonate gives two
/// hydroxides, bicarbonate one. Zero without aluminium.
constexpr Basicity basicity(const LiquorAmounts &liquor) {
  if (!(liquor.aluminium > 0.0 * mole)) return {0.0};
  return {count(liquor.hydroxide, liquor.aluminium) / 3.0};
}

/// The bulletin's liquor: 1 lb potash alum, 4 oz soda crystals. source: hand computation,
/// 453.59237 / 474.371 = 0.9562 mol Al, 113.398 / 286.138 = 0.3963 mol carbonate, 2 x 0.3963 / 3 /
/// 0.9562 = 27.6 %.
static_assert([] {
  LiquorAmounts liquor;
  add_to(liquor, forms::potassium_alum, pound);
  add_to(liquor, forms::soda_crystals, 4.0 * ounce);
  const double value = basicity(liquor).value;
  return value > 0.2755 && value < 0.2765;
}());

enum class BasicityBand { plain, low, fair, high, dropping };

struct BasicityBandRow {
  BasicityBand band;
  std::string_view name;
  Basicity up_to;
  std::string_view meaning;
  Source source;
};

inline constexpr std::array<BasicityBandRow, 5> basicity_bands{{
    {BasicityBand::plain,
     "plain",
     {0.001},
     "no soda: the alum is held loosely and washes out",
     {"tawing with alum and salt alone", Mark::practice}},
    {BasicityBand::low,
     "low",
     {0.10},
     "little soda: a sour liquor, the alum is held loosely",
     {"tawing with alum and salt alone", Mark::practice}},
    {BasicityBand::fair,
     "fair",
     {0.35},
     "the band of the bulletin's paste",
     {"USDA Farmers' Bulletin 1334, 27.6 % with soda crystals", Mark::calculated}},
    {BasicityBand::high,
     "high",
     {0.50},
     "much soda: may turn cloudy, and basic alum may settle on the skin's face",
     {"basified aluminium sulfate liquors of the trade", Mark::memory}},
    {BasicityBand::dropping,
     "dropping out",
     {1e9},
     "too much soda: aluminium drops out of the liquor and does not taw",
     {"basified aluminium sulfate liquors of the trade", Mark::memory}},
}};

constexpr const BasicityBandRow &basicity_band(Basicity value) {
  for (const auto &row : basicity_bands)
    if (value <= row.up_to) return row;
  return basicity_bands.back();
}

} // namespace whittaw

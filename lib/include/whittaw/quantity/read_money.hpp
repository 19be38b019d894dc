// Reads money and prices: "2.40 EUR/kg", "$1.20/lb", "£3 per kg".
#pragma once

#include <whittaw/quantity/money.hpp>
#include <whittaw/quantity/read.hpp>

#include <array>
#include <string>
#include <string_view>

namespace whittaw {

struct CurrencyRow {
  std::string_view code; ///< ISO 4217
  std::string_view sign; ///< written before the figure; empty if none
};

/// source: ISO 4217 currency codes (from memory). A sign that several currencies share stands for
/// the first row that has it.
inline constexpr std::array<CurrencyRow, 12> currency_table{{
    {"EUR", "\u20ac"},
    {"USD", "$"},
    {"GBP", "\u00a3"},
    {"CHF", ""},
    {"SEK", ""},
    {"NOK", ""},
    {"DKK", ""},
    {"PLN", ""},
    {"CZK", ""},
    {"CAD", ""},
    {"AUD", ""},
    {"NZD", ""},
}};

/// A price by mass, and the currency it was written in.
struct Price {
  PricePerMass per_mass;
  std::string_view currency; ///< a code of currency_table
};

inline Result<Price> read_price(std::string_view text) {
  const auto remedy = [] {
    return std::string("write a price by mass, as 2.40 EUR/kg or $1.20/lb");
  };
  std::string_view rest = text;
  detail::skip_spaces(rest);
  std::string_view currency;
  for (const auto &row : currency_table) {
    const auto mark = !row.sign.empty() && rest.starts_with(row.sign) ? row.sign : row.code;
    if (rest.starts_with(mark)) {
      currency = row.code;
      rest.remove_prefix(mark.size());
      break;
    }
  }
  auto number = take_number(rest);
  if (!number) return Problem{number.problem().found, remedy()};
  detail::skip_spaces(rest);
  if (currency.empty()) {
    for (const auto &row : currency_table) {
      const auto mark = !row.sign.empty() && rest.starts_with(row.sign) ? row.sign : row.code;
      if (rest.starts_with(mark)) {
        currency = row.code;
        rest.remove_prefix(mark.size());
        break;
      }
    }
  }
  if (currency.empty())
    return Problem{detail::quoted(text) + " names no currency known here", remedy()};
  detail::skip_spaces(rest);
  if (rest.starts_with("per ")) {
    rest.remove_prefix(4);
  } else if (rest.starts_with('/')) {
    rest.remove_prefix(1);
  } else {
    return Problem{detail::quoted(text) + " is not a price by mass", remedy()};
  }
  detail::skip_spaces(rest);
  double of = 1.0;
  if (!rest.empty() && detail::is_digit(rest.front())) { // "12 EUR/5 kg"
    auto divisor = take_number(rest);
    if (!divisor) return Problem{divisor.problem().found, remedy()};
    of = *divisor;
  }
  const UnitRow *unit = detail::take_unit(rest);
  detail::skip_spaces(rest);
  if (unit == nullptr || unit->kind != Kind::mass || !rest.empty() || !(of > 0.0))
    return Problem{detail::quoted(text) + " is not a price by mass", remedy()};
  if (!(*number <= 1e9))
    return Problem{detail::quoted(text) + " is more than any price", "check the digits"};
  return Price{*number * tender / (of * unit->size * kilogram), currency};
}

} // namespace whittaw

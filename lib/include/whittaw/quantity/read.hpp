// Reads a quantity as a person writes it: "2 1/2 cup", "1 lb 4 oz", "12 C", "17 %".
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/money.hpp>
#include <whittaw/quantity/number.hpp>
#include <whittaw/quantity/unit_table.hpp>

#include <string>
#include <string_view>

namespace whittaw {

/// What a quantity may be besides positive.
enum class Zero { refused, allowed };

namespace detail {

inline std::string quoted(std::string_view text) {
  constexpr std::size_t longest = 60;
  if (text.size() <= longest) return "'" + std::string(text) + "'";
  std::size_t end = longest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  return "'" + std::string(text.substr(0, end)) + "...'";
}

/// A number to a tenth, without a trailing zero.
inline std::string tenths(double value) {
  std::string digits = std::to_string(std::llround(value * 10.0));
  if (digits.size() == 1) digits.insert(0, "0");
  const char last = digits.back();
  digits.pop_back();
  return last == '0' ? digits : digits + "." + last;
}

/// Length of `name` as it stands at the front of `text`, letters of either case and any run of
/// spaces for one; zero if it does not stand there, or goes on as a longer word.
inline std::size_t matches(std::string_view text, std::string_view name) {
  std::size_t at = 0;
  for (const char wanted : name) {
    if (wanted == ' ') {
      const std::size_t before = at;
      while (at < text.size() && text[at] == ' ') ++at;
      if (at == before) return 0;
      continue;
    }
    if (at >= text.size()) return 0;
    const char found =
        text[at] >= 'A' && text[at] <= 'Z' ? static_cast<char>(text[at] + 32) : text[at];
    if (found != wanted) return 0;
    ++at;
  }
  if (at < text.size()) {
    const char next = text[at];
    const bool goes_on = (next >= 'a' && next <= 'z') || (next >= 'A' && next <= 'Z') ||
                         next == '/' || (static_cast<unsigned char>(next) & 0x80U) != 0U;
    if (goes_on && name != "%") return 0;
  }
  return at;
}

/// Takes the longest known unit off the front.
inline const UnitRow *take_unit(std::string_view &text) {
  skip_spaces(text);
  const UnitRow *best = nullptr;
  std::size_t longest = 0;
  for (const auto &row : unit_table) {
    if (const std::size_t length = matches(text, row.name); length > longest) {
      longest = length;
      best = &row;
    }
  }
  text.remove_prefix(longest);
  return best;
}

struct Limit {
  double high; ///< SI units
  std::string_view words;
};

/// Beyond these a figure is a slip of the finger. A larger shop than that does not exist.
constexpr Limit limit_of(Kind kind) {
  switch (kind) {
  case Kind::length: return {1000.0, "1000 m"};
  case Kind::area: return {100'000.0, "100 000 m2"};
  case Kind::volume: return {1000.0, "1000 m3"};
  case Kind::mass: return {1e6, "1000000 kg"};
  case Kind::duration: return {10.0 * 365.25 * 86400.0, "10 years"};
  case Kind::areal_mass: return {1000.0, "1000 kg/m2"};
  case Kind::temperature: return {1000.0, "1000 K"};
  case Kind::fraction: return {1000.0, "100 000 %"};
  }
  return {};
}

inline Problem wrong_kind(std::string_view text, Kind wanted, std::string_view found) {
  return {quoted(text) + " is " + std::string(found) + ", and " +
              std::string(kind_row(wanted).name) + " is wanted",
          "write " + std::string(kind_row(wanted).name) + ", as " +
              std::string(kind_row(wanted).example)};
}

/// Reads a sum of like quantities into the SI unit of `wanted`.
inline Result<double> read_kind(std::string_view text, Kind wanted, Zero zero) {
  std::string_view rest = text;
  double sum = 0.0;
  double smallest_unit = 1e300;
  bool any = false;
  skip_spaces(rest);
  if (rest.empty())
    return Problem{"the text is empty", "write " + std::string(kind_row(wanted).name) + ", as " +
                                            std::string(kind_row(wanted).example)};
  while (!rest.empty()) {
    auto number = take_number(rest);
    if (!number) return Problem{number.problem().found, number.problem().remedy};
    skip_spaces(rest);
    const std::string_view unit_text = rest;
    if (rest.empty())
      return Problem{quoted(text) + " has no unit", "write " + std::string(kind_row(wanted).name) +
                                                        ", as " +
                                                        std::string(kind_row(wanted).example)};
    const UnitRow *unit = take_unit(rest);
    if (unit == nullptr)
      return Problem{"in " + quoted(text) + ", " + quoted(unit_text) + " is not a unit known here",
                     "write " + std::string(kind_row(wanted).name) + ", as " +
                         std::string(kind_row(wanted).example)};
    if (unit->kind != wanted) return wrong_kind(text, wanted, kind_row(unit->kind).name);
    if (any && !(unit->size < smallest_unit))
      return Problem{quoted(text) + " names its units out of order",
                     "write the larger unit first and each once, as 1 lb 4 oz"};
    smallest_unit = unit->size;
    any = true;
    sum += *number * unit->size;
    skip_spaces(rest);
  }
  if (!(sum > 0.0) && zero == Zero::refused)
    return Problem{quoted(text) + " is zero", "write a figure above zero"};
  // A billionth of the SI unit: less than any scale or rule of ours shows.
  if (sum > 0.0 && sum < 1e-9)
    return Problem{quoted(text) + " is next to nothing", "check the digits and the unit"};
  if (!(sum <= limit_of(wanted).high))
    return Problem{quoted(text) + " is more than " + std::string(limit_of(wanted).words),
                   "check the digits and the unit"};
  return sum;
}

} // namespace detail

inline Result<Length> read_length(std::string_view text, Zero zero = Zero::refused) {
  auto value = detail::read_kind(text, Kind::length, zero);
  if (!value) return value.problem();
  return *value * metre;
}
inline Result<Area> read_area(std::string_view text) {
  auto value = detail::read_kind(text, Kind::area, Zero::refused);
  if (!value) return value.problem();
  return *value * square_metre;
}
inline Result<Volume> read_volume(std::string_view text, Zero zero = Zero::refused) {
  auto value = detail::read_kind(text, Kind::volume, zero);
  if (!value) return value.problem();
  return *value * cubic_metre;
}
inline Result<Mass> read_mass(std::string_view text) {
  auto value = detail::read_kind(text, Kind::mass, Zero::refused);
  if (!value) return value.problem();
  return *value * kilogram;
}
inline Result<Duration> read_duration(std::string_view text) {
  auto value = detail::read_kind(text, Kind::duration, Zero::refused);
  if (!value) return value.problem();
  return *value * seconds;
}
inline Result<ArealMass> read_areal_mass(std::string_view text) {
  auto value = detail::read_kind(text, Kind::areal_mass, Zero::refused);
  if (!value) return value.problem();
  return *value * kilogram_per_square_metre;
}

/// Reads "17 %" or "0.17" (a bare number is a fraction of 1) within the stated bounds.
template <class FractionKind>
Result<Fraction<FractionKind>> read_fraction(std::string_view text, Fraction<FractionKind> low,
                                             Fraction<FractionKind> high) {
  std::string_view rest = text;
  auto number = take_number(rest);
  if (!number) return Problem{number.problem().found, "write a share, as 17 % or 0.17"};
  double value = *number;
  if (const UnitRow *unit = detail::take_unit(rest)) {
    if (unit->kind != Kind::fraction)
      return detail::wrong_kind(text, Kind::fraction, kind_row(unit->kind).name);
    value *= unit->size;
  }
  detail::skip_spaces(rest);
  if (!rest.empty())
    return Problem{detail::quoted(text) + " is not a share", "write it as 17 % or 0.17"};
  if (!(value >= low.value && value <= high.value)) {
    // Inward to a tenth of a percent, so that what is printed is allowed.
    const auto bound = [](double fraction, double inward) {
      return detail::tenths(inward * std::floor(inward * fraction * 1000.0 + 1e-6) / 10.0) + " %";
    };
    return Problem{detail::quoted(text) + " is out of range", "write a share from " +
                                                                  bound(low.value, -1.0) + " to " +
                                                                  bound(high.value, 1.0)};
  }
  return Fraction<FractionKind>{value};
}

/// Reads "12 C", "54 F" or "285 K" as a point on the scale. A sign is allowed here.
inline Result<Temperature> read_temperature(std::string_view text) {
  std::string_view rest = text;
  detail::skip_spaces(rest);
  const bool below = rest.starts_with('-');
  if (below) rest.remove_prefix(1);
  if (below && rest.starts_with('+'))
    return Problem{detail::quoted(text) + " has two signs", "write a temperature, as 12 C or 54 F"};
  auto number = take_number(rest);
  if (!number) return Problem{number.problem().found, "write a temperature, as 12 C or 54 F"};
  const double value = below ? -*number : *number;
  const UnitRow *unit = detail::take_unit(rest);
  detail::skip_spaces(rest);
  if (unit == nullptr || !rest.empty())
    return Problem{detail::quoted(text) + " has no unit of temperature",
                   "write it as 12 C or 54 F"};
  if (unit->kind != Kind::temperature)
    return detail::wrong_kind(text, Kind::temperature, kind_row(unit->kind).name);
  double celsius = value;
  if (unit->gnu == "tempF") celsius = (value - 32.0) * unit->size;
  if (unit->gnu == "tempK") celsius = value - 273.15;
  if (!(celsius >= -273.15 && celsius <= 1000.0))
    return Problem{detail::quoted(text) + " is no temperature of this world",
                   "write it as 12 C or 54 F"};
  return degrees_celsius(celsius);
}

} // namespace whittaw

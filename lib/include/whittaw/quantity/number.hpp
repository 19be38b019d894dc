// Reads one number as a person writes it: 12, 1.5, 1/2, 2 1/2, 2½.
#pragma once

#include <whittaw/quantity/result.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <string>
#include <string_view>

namespace whittaw {

namespace detail {

inline void skip_spaces(std::string_view &text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  if (text.starts_with("\u00a0")) { // no-break space
    text.remove_prefix(2);
    skip_spaces(text);
  }
}

struct VulgarFraction {
  std::string_view sign;
  double value;
};

inline constexpr std::array<VulgarFraction, 11> vulgar_fractions{{
    {"\u00bd", 1.0 / 2.0},
    {"\u00bc", 1.0 / 4.0},
    {"\u00be", 3.0 / 4.0},
    {"\u2153", 1.0 / 3.0},
    {"\u2154", 2.0 / 3.0},
    {"\u215b", 1.0 / 8.0},
    {"\u215c", 3.0 / 8.0},
    {"\u215d", 5.0 / 8.0},
    {"\u215e", 7.0 / 8.0},
    {"\u2155", 1.0 / 5.0},
    {"\u2159", 1.0 / 6.0},
}};

inline bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes a vulgar fraction off the front, or gives zero.
inline double take_vulgar(std::string_view &text) {
  for (const auto &fraction : vulgar_fractions) {
    if (text.starts_with(fraction.sign)) {
      text.remove_prefix(fraction.sign.size());
      return fraction.value;
    }
  }
  return 0.0;
}

/// Takes digits off the front; `digits` tells how many there were.
inline double take_whole(std::string_view &text, std::size_t &digits) {
  double value = 0.0;
  for (digits = 0; digits < text.size() && is_digit(text[digits]); ++digits)
    value = value * 10.0 + (text[digits] - '0');
  text.remove_prefix(digits);
  return value;
}

/// Takes "1/2" off the front, or leaves the text alone and gives a negative number.
inline double take_ratio(std::string_view &text) {
  std::string_view rest = text;
  std::size_t above_digits = 0;
  std::size_t below_digits = 0;
  const double above = take_whole(rest, above_digits);
  skip_spaces(rest);
  if (above_digits == 0 || !rest.starts_with('/')) return -1.0;
  rest.remove_prefix(1);
  skip_spaces(rest);
  const double below = take_whole(rest, below_digits);
  if (below_digits == 0) return -1.0;
  text = rest;
  return above / below;
}

} // namespace detail

/// Takes one number off the front of `text`. Refuses a sign, a comma, and what is not finite.
inline Result<double> take_number(std::string_view &text) {
  const std::string whole(text.substr(0, 40));
  detail::skip_spaces(text);
  if (text.starts_with('+')) text.remove_prefix(1);
  const std::string_view start = text;
  const auto begins = [&](std::string_view word) {
    if (start.size() < word.size()) return false;
    for (std::size_t i = 0; i < word.size(); ++i)
      if ((start[i] | 0x20) != word[i]) return false;
    return true;
  };
  if (start.starts_with('-') || start.starts_with("\u2212"))
    return Problem{"'" + whole + "' is negative", "write a number above zero"};
  if (begins("nan") || begins("inf"))
    return Problem{"'" + whole + "' is not a finite number", "write a number such as 12 or 2 1/2"};

  if (const double only = detail::take_vulgar(text); only > 0.0) return only;
  if (const double ratio = detail::take_ratio(text); !(ratio < 0.0)) {
    if (!std::isfinite(ratio))
      return Problem{"'" + whole + "' divides by zero", "write a fraction such as 1/2"};
    return ratio;
  }

  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error == std::errc::result_out_of_range)
    return Problem{"'" + whole + "' is too large or too small a number", "check the digits"};
  if (error != std::errc{})
    return Problem{"'" + whole + "' does not start with a number",
                   "write a number and its unit, as 12 kg or 2 1/2 cup"};
  const bool plain = std::string_view(text.data(), static_cast<std::size_t>(end - text.data()))
                         .find_first_not_of("0123456789") == std::string_view::npos;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  if (text.starts_with(','))
    return Problem{"the comma in '" + whole + "' could mark decimals or thousands",
                   "write 1.5 for one and a half, 1500 for fifteen hundred"};
  if (!plain) return value;

  if (const double more = detail::take_vulgar(text); more > 0.0) return value + more;
  std::string_view after = text;
  detail::skip_spaces(after);
  if (after.size() != text.size()) {
    if (const double more = detail::take_vulgar(after); more > 0.0) {
      text = after;
      return value + more;
    }
    if (const double more = detail::take_ratio(after); !(more < 0.0)) {
      if (!(more < 1.0))
        return Problem{"the fraction in '" + whole + "' is not below one",
                       "write a mixed number such as 2 1/2"};
      text = after;
      return value + more;
    }
  }
  return value;
}

} // namespace whittaw

// Writes quantities for people, in the units they use, no finer than they can measure.
#pragma once

#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/money.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <string>
#include <string_view>

namespace whittaw {

enum class UnitSystem { metric, us, imperial };

/// A number with so many decimals, and a full stop for the decimal mark. Zero is never "-0".
inline std::string write_decimal(double value, int decimals) {
  if (!std::isfinite(value)) return "?";
  std::array<char, 400> buffer{};
  const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                          std::chars_format::fixed, std::max(decimals, 0));
  if (error != std::errc{}) return "?";
  std::string text(buffer.data(), end);
  if (text.starts_with('-') && text.find_first_of("123456789") == std::string::npos)
    text.erase(0, 1);
  return text;
}

/// Decimals that show `digits` significant digits of `value`.
inline int decimals_for(double value, int digits) {
  if (!(std::abs(value) > 0.0) || !std::isfinite(value)) return 0;
  const int decimals = digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
  return std::clamp(decimals, 0, 9);
}

/// A number with so many significant digits, never fewer than its whole part needs.
inline std::string write_significant(double value, int digits) {
  return write_decimal(value, decimals_for(value, digits));
}

/// Decimals that show a step and all its multiples: 2 for 0.25, 0 for 5.
inline int decimals_of_step(double step) {
  for (int decimals = 0; decimals < 6; ++decimals, step *= 10.0)
    if (std::abs(step - std::round(step)) < 1e-6 * step) return decimals;
  return 6;
}

namespace detail {
inline std::string with_unit(std::string number, std::string_view unit) {
  return std::move(number) + " " + std::string(unit);
}
inline std::string trimmed_zeros(std::string number) {
  if (number.find('.') == std::string::npos) return number;
  number.erase(number.find_last_not_of('0') + 1);
  if (number.ends_with('.')) number.pop_back();
  return number;
}
} // namespace detail

/// A share as a percentage, "17 %", "27.6 %".
template <class FractionKind> std::string write_percent(Fraction<FractionKind> share, int digits) {
  return write_significant(share.value * 100.0, digits) + " %";
}

/// The step of a kitchen scale: what masses are rounded to.
struct ScaleStep {
  Mass metric = gram;
  Mass customary = 0.1 * ounce;
};

/// A mass as the scale shows it: to the nearest of its steps.
inline Mass on_scale(Mass mass, UnitSystem units, ScaleStep step = {}) {
  const Mass one = units == UnitSystem::metric ? step.metric : step.customary;
  return std::round(count(mass, one)) * one;
}

/// "42 g", "12.50 kg" from 5 kg up; "3.1 oz", "2 lb 4.5 oz". Rounded to the scale's step; kilograms
/// to 10 g where the step is finer.
inline std::string write_mass(Mass mass, UnitSystem units, ScaleStep step = {}) {
  const Mass shown = on_scale(mass, units, step);
  if (units == UnitSystem::metric) {
    const double grams = count(shown, gram);
    if (std::abs(grams) >= 5000.0) return write_decimal(grams / 1000.0, 2) + " kg";
    return write_decimal(grams, decimals_of_step(count(step.metric, gram))) + " g";
  }
  const double ounces = count(shown, ounce);
  const int decimals = decimals_of_step(count(step.customary, ounce));
  const double pounds = std::floor(ounces / 16.0 + 1e-9);
  if (pounds < 1.0) return write_decimal(ounces, decimals) + " oz";
  const std::string rest = write_decimal(std::max(0.0, ounces - 16.0 * pounds), decimals);
  std::string whole = write_decimal(pounds, 0) + " lb";
  if (rest.find_first_of("123456789") == std::string::npos) return whole;
  return whole + " " + rest + " oz";
}

/// "850 mL", "12.4 L"; "3.5 qt", "6.2 US gal"; "2.1 imp pt". Three digits unless told otherwise.
inline std::string write_volume(Volume volume, UnitSystem units, int digits = 3) {
  const auto write = [&](Volume unit, std::string_view name) {
    return detail::with_unit(write_significant(count(volume, unit), digits), name);
  };
  switch (units) {
  case UnitSystem::metric:
    if (volume < litre) return detail::with_unit(write_decimal(count(volume, millilitre), 0), "mL");
    return write(litre, "L");
  case UnitSystem::us:
    if (volume < us_fluid_ounce) return write(us_teaspoon, "tsp");
    if (volume < 0.25 * us_gallon) return write(us_cup, "cup");
    if (volume < 4.0 * us_gallon) return write(0.25 * us_gallon, "US qt");
    return write(us_gallon, "US gal");
  case UnitSystem::imperial:
    if (volume < imperial_pint) return write(imperial_fluid_ounce, "imp fl oz");
    if (volume < 2.0 * imperial_gallon) return write(imperial_pint, "imp pt");
    return write(imperial_gallon, "imp gal");
  }
  return {};
}

inline std::string write_length(Length length, UnitSystem units) {
  if (units == UnitSystem::metric) {
    if (length < centimetre) return write_significant(count(length, millimetre), 2) + " mm";
    return write_significant(count(length, centimetre), 3) + " cm";
  }
  // Shop fractions, where the nearest sixteenth is near enough; else millimetres beside it.
  if (length < inch) {
    const int sixteenths = static_cast<int>(std::lround(count(length, inch) * 16.0));
    const double off = sixteenths / 16.0 / count(length, inch) - 1.0;
    if (sixteenths > 0 && sixteenths < 16 && std::abs(off) < 0.03) {
      int above = sixteenths;
      int below = 16;
      while (above % 2 == 0) {
        above /= 2;
        below /= 2;
      }
      return std::to_string(above) + "/" + std::to_string(below) + " in";
    }
    return write_significant(count(length, inch), 2) + " in (" +
           write_significant(count(length, millimetre), 2) + " mm)";
  }
  return write_significant(count(length, inch), 3) + " in";
}

inline std::string write_area(Area area, UnitSystem units, int digits = 2) {
  if (units == UnitSystem::metric)
    return write_significant(count(area, square_metre), digits) + " m\u00b2";
  return write_significant(count(area, square_foot), digits) + " sq ft";
}

namespace detail {
/// Value and spread rounded alike: the spread to one digit, two where the first is a one.
inline std::string write_spread(double value, double sd, std::string_view unit) {
  if (!(sd > 0.0)) return write_significant(value, 3) + " " + std::string(unit);
  const double leading = sd / std::pow(10.0, std::floor(std::log10(sd)));
  const int decimals = decimals_for(sd, leading < 1.95 ? 2 : 1);
  return write_decimal(value, decimals) + " \u00b1 " + write_decimal(sd, decimals) + " " +
         std::string(unit);
}
} // namespace detail

/// "9.7 ± 1.0 %", value and one standard deviation, both in percent of the whole.
template <class FractionKind>
std::string write_percent_spread(Fraction<FractionKind> share, double sd) {
  return detail::write_spread(share.value * 100.0, sd * 100.0, "%");
}

/// "0.45 ± 0.07 m²": plus or minus one standard deviation, rounded to what the spread allows.
inline std::string write_estimate(const Estimate<Area> &area, UnitSystem units) {
  const Area unit = units == UnitSystem::metric ? square_metre : square_foot;
  return detail::write_spread(count(area.value, unit), count(area.sd(), unit),
                              units == UnitSystem::metric ? "m\u00b2" : "sq ft");
}

inline std::string write_temperature(Temperature temperature, UnitSystem units) {
  const double celsius = celsius_value(temperature);
  if (units == UnitSystem::us) return write_decimal(celsius * 1.8 + 32.0, 0) + " \u00b0F";
  return write_decimal(celsius, 0) + " \u00b0C";
}

inline std::string write_money(Money money, std::string_view currency) {
  return write_decimal(count(money, tender), 2) + " " + std::string(currency);
}

inline std::string write_duration(Duration duration) {
  const double number = count(duration, days);
  const std::string figure = detail::trimmed_zeros(write_significant(number, 2));
  return figure + (figure == "1" ? " day" : " days");
}

} // namespace whittaw

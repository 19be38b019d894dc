// Figures in a unit that a person names.
#pragma once

#include <whittaw/quantity/read.hpp>
#include <whittaw/quantity/write.hpp>

#include <string>
#include <string_view>

namespace whittaw {

/// A unit's row by its name, of the wanted kind.
inline Result<const UnitRow *> read_unit(std::string_view text, Kind wanted) {
  std::string_view rest = text;
  const UnitRow *row = detail::take_unit(rest);
  detail::skip_spaces(rest);
  if (row == nullptr || !rest.empty())
    return Problem{detail::quoted(text) + " is not a unit known here",
                   "name a unit of " + std::string(kind_row(wanted).name) + ", as in " +
                       std::string(kind_row(wanted).example)};
  if (row->kind != wanted) return detail::wrong_kind(text, wanted, kind_row(row->kind).name);
  return row;
}

/// The kind of a quantity by its first unit; nothing if it has none that is known.
inline Result<Kind> kind_of(std::string_view text) {
  std::string_view rest = text;
  auto number = take_number(rest);
  if (!number) return number.problem();
  const UnitRow *row = detail::take_unit(rest);
  if (row == nullptr)
    return Problem{detail::quoted(text) + " has no unit known here",
                   "write a mass or a volume, as 850 g or 2 1/2 cup"};
  return row->kind;
}

/// A unit as it is printed: litres with a capital L, the rest as in the table.
inline std::string printed_name(const UnitRow &unit) {
  std::string name(unit.name);
  if (name == "l" || name == "dl" || name == "cl" || name == "ml") name.back() = 'L';
  if (name.starts_with("us ")) name.replace(0, 2, "US");
  return name;
}

/// "739 ± 12 g", value and standard deviation in the named unit.
template <class Q>
std::string write_in_unit(const Estimate<Q> &figure, Q si_unit, const UnitRow &unit) {
  return detail::write_spread(count(figure.value, si_unit) / unit.size,
                              count(figure.sd(), si_unit) / unit.size, printed_name(unit));
}

} // namespace whittaw

#include "work_out_day.hpp"

#include "../readers/day_reader.hpp"

#include <whittaw/quantity/read.hpp>

namespace whittaw::app {

namespace {
Result<Chance> read_chance(std::string_view text) {
  return read_fraction<ChanceKind>(text, {0.5}, {0.999});
}
} // namespace

Outcome<DayResults> work_out_day(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto chance = option_quantity(arguments, chance_option.name, &read_chance);
  if (!chance) return chance.problem();
  auto file = read_day(arguments.operands.front(), arguments.value(workshop_option.name));
  if (!file) return file.problem();
  if (*chance) file.value().day.chance = **chance;
  auto results = work_out(std::move(file.value().day), std::move(file.value().workshop), *units);
  if (!results)
    return Fault{
        Status::bad_data,        arguments.operands.front(), results.problem().found, "", 0,
        results.problem().remedy};
  return std::move(results.value());
}

} // namespace whittaw::app

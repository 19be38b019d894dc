#include "work_out_day.hpp"

#include "../files/files.hpp"
#include "../readers/day_reader.hpp"

namespace whittaw::app {

Outcome<DayResults> work_out_day(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto chance = option_quantity(arguments, chance_option.name, &read_any_chance);
  if (!chance) return chance.problem();
  auto file = read_day(arguments.operands.front(), arguments.value(workshop_option.name));
  if (!file) return file.problem();
  if (auto fault = refuse_overwriting(arguments.value("--output"), file->inputs)) return *fault;
  if (*chance) file.value().day.chance = **chance;
  auto results = work_out(std::move(file.value().day), std::move(file.value().workshop), *units);
  if (!results)
    return Fault{
        Status::bad_data,        arguments.operands.front(), results.problem().found, "", 0,
        results.problem().remedy};
  return std::move(results.value());
}

} // namespace whittaw::app

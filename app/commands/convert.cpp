#include "commands.hpp"

#include "../files/files.hpp"
#include "../readers/workshop_reader.hpp"
#include "../writers/json.hpp"

#include <whittaw/quantity/in_unit.hpp>

#include <fmt/format.h>

namespace whittaw::app {

namespace {

constexpr OptionRecord to_option{"--to", "UNIT", "unit of the answer, as g, cup, tbsp"};

Fault operand_fault(const Problem &problem) {
  return {Status::bad_data, "", problem.found, "", 0, problem.remedy};
}

Outcome<const BulkRow *> ingredient_of(const std::string &name) {
  if (const BulkRow *row = find_bulk(name)) return row;
  std::vector<std::string_view> names;
  std::string all;
  for (const auto &row : bulk_table) {
    names.push_back(row.name);
    all += (all.empty() ? "" : ", ") + std::string(row.name);
    for (const auto other : row.also_called)
      if (!other.empty()) names.push_back(other);
  }
  return Fault{Status::bad_data,
               "",
               fmt::format("ingredient '{}' is not known", name),
               "",
               0,
               did_you_mean(name, names) + "known: " + all};
}

std::string_view usual_unit(bool mass, UnitSystem units) {
  if (mass) return units == UnitSystem::metric ? "g" : "oz";
  if (units == UnitSystem::metric) return "mL";
  return units == UnitSystem::us ? "cup" : "imp fl oz";
}

std::string convert_text(const ConvertReport &report, const std::string &from,
                         const UnitRow &unit) {
  const std::string answer = report.from_mass ? write_in_unit(report.volume, cubic_metre, unit)
                                              : write_in_unit(report.mass, kilogram, unit);
  const auto &density = report.density.density;
  return fmt::format("{} of {} = {}\nBulk density {}, one standard deviation.{}\nSource: {}\n",
                     from, report.ingredient, answer,
                     detail::write_spread(count(density.value, gram_per_millilitre),
                                          count(density.sd(), gram_per_millilitre), "g/mL"),
                     report.ingredient == "water"
                         ? ""
                         : " A grind can move a cup by a third: weigh a level cup of yours once.",
                     write_source(report.density.source));
}

Outcome<Status> run(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const std::string &from = arguments.operands[0];
  const auto row = ingredient_of(arguments.operands[1]);
  if (!row) return row.problem();
  const auto kind = kind_of(from);
  if (!kind) return operand_fault(kind.problem());
  const auto workshop = find_workshop(arguments.value(workshop_option.name), "");
  if (!workshop) return workshop.problem();
  const auto density = bulk_density(**row, *workshop);
  if (!density)
    return operand_fault({fmt::format("no published weight of a cup of {} was found", (*row)->name),
                          "weigh a level cup of yours, write it in workshop.toml under "
                          "[[weighing]], and try again"});

  ConvertReport report;
  report.ingredient = (*row)->name;
  report.density = *density;
  report.from_mass = *kind == Kind::mass;
  if (report.from_mass) {
    const auto mass = read_mass(from);
    if (!mass) return operand_fault(mass.problem());
    report.mass = {*mass, 0.0 * kilogram, {}};
    report.volume = volume_of(*mass, density->density);
  } else {
    const auto volume = read_volume(from);
    if (!volume)
      return operand_fault({volume.problem().found, "write a mass or a volume, as 850 g or 2 cup"});
    report.volume = {*volume, 0.0 * litre, {}};
    report.mass = mass_of(*volume, density->density);
  }
  const auto unit = read_unit(
      arguments.value(to_option.name).value_or(std::string(usual_unit(!report.from_mass, *units))),
      report.from_mass ? Kind::volume : Kind::mass);
  if (!unit)
    return Fault{Status::bad_data, "--to", unit.problem().found, "", 0, unit.problem().remedy};
  const std::string text =
      arguments.has("--json") ? convert_json(report) : convert_text(report, from, **unit);
  if (auto fault = write_output(arguments.value("--output"), text)) return *fault;
  return Status::done;
}

} // namespace

CommandRecord convert_command() {
  return {"convert",
          "AMOUNT INGREDIENT",
          2,
          2,
          "between weight and volume of a named ingredient",
          {to_option, units_option, workshop_here_option, json_option, output_option},
          "whittaw convert \"2 1/2 cup\" \"table salt\"",
          &run};
}

} // namespace whittaw::app

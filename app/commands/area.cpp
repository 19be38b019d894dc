#include "commands.hpp"

#include "../files/files.hpp"
#include "../readers/day_reader.hpp"
#include "../readers/fields.hpp"
#include "../readers/workshop_reader.hpp"
#include "../writers/json.hpp"

#include <whittaw/paste/checks.hpp>

#include <fmt/format.h>

namespace whittaw::app {

namespace {

constexpr OptionRecord species_option{"--species", "NAME", "goat, sheep, cattle, rabbit, pig, ..."};
constexpr OptionRecord live_option{"--live-weight", "MASS", "from the live animal's weight"};
constexpr OptionRecord green_option{"--green-weight", "MASS", "from the fresh skin's weight"};
constexpr OptionRecord own_option{"--mass-by-area", "KG/M2", "your own figure for --green-weight"};
constexpr OptionRecord length_option{"--length", "LENGTH", "by tape, along the backbone"};
constexpr OptionRecord widths_option{"--widths", "W,W,...", "neck end to tail end; or one width"};
constexpr OptionRecord at_option{"--at", "L,L,...", "where the widths were read (even)"};
constexpr OptionRecord known_option{"--area", "AREA", "as known"};
constexpr OptionRecord trim_option{"--trim", "whole|square|ellipse", "what is cut off (whole)"};

Fault option_fault(std::string_view option, const Problem &problem,
                   Status status = Status::bad_data) {
  return {status, std::string(option), problem.found, "", 0, problem.remedy};
}

/// "40 cm, 55 cm" as lengths.
Outcome<std::vector<Length>> lengths_of(const Arguments &arguments, const OptionRecord &option) {
  std::vector<Length> lengths;
  const auto text = arguments.value(option.name);
  if (!text) return lengths;
  std::string_view rest = *text;
  while (true) {
    const std::size_t comma = rest.find(',');
    const auto length = read_length(rest.substr(0, comma), Zero::allowed);
    if (!length) {
      Problem problem = length.problem();
      if (text->find(',') != std::string::npos)
        problem.remedy += "; a comma stands between lengths, decimals have a point";
      return option_fault(option.name, problem);
    }
    lengths.push_back(*length);
    if (comma == std::string_view::npos) return lengths;
    rest.remove_prefix(comma + 1);
  }
}

Outcome<Tape> tape_of(const Arguments &arguments) {
  Tape tape;
  const auto length = option_quantity(arguments, length_option.name, &read_some_length);
  if (!length) return length.problem();
  if (!*length)
    return option_fault(widths_option.name, {"widths without --length", "add --length \"110 cm\""},
                        Status::usage);
  tape.length = **length;
  auto widths = lengths_of(arguments, widths_option);
  if (!widths) return widths.problem();
  auto at = lengths_of(arguments, at_option);
  if (!at) return at.problem();
  tape.widths = *widths;
  tape.at = *at;
  auto checked = check_tape(tape);
  if (!checked) return option_fault(length_option.name, checked.problem());
  return *checked;
}

Outcome<AreaMeasure> measure_of(const Arguments &arguments) {
  const std::array<std::string_view, 4> sources{live_option.name, green_option.name,
                                                length_option.name, known_option.name};
  std::vector<std::string_view> given;
  for (const auto name : sources)
    if (arguments.has(name)) given.push_back(name);
  if (given.empty() && arguments.has(widths_option.name)) given.push_back(length_option.name);
  if (given.size() != 1) {
    const std::string found = given.empty()
                                  ? "no size of the hide is given"
                                  : fmt::format("both {} and {} are given", given[0], given[1]);
    return Fault{Status::usage,
                 "",
                 found,
                 "",
                 0,
                 "give one of --live-weight, --green-weight, --length with --widths, or --area"};
  }
  const auto only_with = [&](const OptionRecord &option,
                             const OptionRecord &wanted) -> std::optional<Fault> {
    if (!arguments.has(option.name) || given[0] == wanted.name) return std::nullopt;
    return Fault{Status::usage,
                 std::string(option.name),
                 fmt::format("goes with {} only", wanted.name),
                 "",
                 0,
                 "leave it out"};
  };
  for (const auto &fault :
       {only_with(widths_option, length_option), only_with(at_option, length_option),
        only_with(own_option, green_option)})
    if (fault) return *fault;
  if (given[0] == live_option.name) {
    const auto mass = option_quantity(arguments, live_option.name, &read_mass);
    if (!mass) return mass.problem();
    return AreaMeasure(LiveWeight{**mass});
  }
  if (given[0] == green_option.name) {
    const auto mass = option_quantity(arguments, green_option.name, &read_mass);
    if (!mass) return mass.problem();
    return AreaMeasure(GreenWeight{**mass});
  }
  if (given[0] == known_option.name) {
    const auto area = option_quantity(arguments, known_option.name, &read_area);
    if (!area) return area.problem();
    return AreaMeasure(KnownArea{**area});
  }
  auto tape = tape_of(arguments);
  if (!tape) return tape.problem();
  return AreaMeasure(*tape);
}

std::string area_text(const AreaReport &report, UnitSystem units) {
  const auto &area = report.area;
  std::string text = fmt::format("{} ({}, {})\n", write_estimate(area.trimmed, units),
                                 report.hide.species->name, area.method);
  text += "Flayed skin laid slack, head and shanks off; \u00b1 is one standard deviation.\n";
  if (const std::string odd = detail::odd_size(report.hide, area); !odd.empty())
    text += fmt::format("Warn: {}. Check the figure.\n", odd);
  if (report.hide.trim != Trim::whole && area.trim_source.text.empty())
    text += "A known area is taken as the hide lies: no trim is cut off it.\n";
  else if (report.hide.trim != Trim::whole)
    text += fmt::format("Trimmed {}: {} cut off ({}).\n", trim_row(report.hide.trim).name,
                        write_area(area.flayed.value - area.trimmed.value, units),
                        trim_row(report.hide.trim).cut_off);
  return text + "Source: " + write_source(area.source) + "\n";
}

Outcome<Status> run(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto name = arguments.value(species_option.name);
  if (!name)
    return option_fault(species_option.name, {"the species is wanted", "add --species goat"},
                        Status::usage);
  const auto species = named_species(*name);
  if (!species) return option_fault(species_option.name, species.problem());
  AreaReport report;
  report.hide.species = *species;
  if (const auto trim = arguments.value(trim_option.name)) {
    const auto found = find_trim(*trim);
    if (!found)
      return option_fault(trim_option.name,
                          {"'" + *trim + "' is not known", "known: whole, square, ellipse"},
                          Status::usage);
    report.hide.trim = *found;
  }
  auto measure = measure_of(arguments);
  if (!measure) return measure.problem();
  report.hide.measure = *measure;
  const auto workshop = find_workshop(arguments.value(workshop_option.name), "");
  if (!workshop) return workshop.problem();
  const auto own = option_quantity(arguments, own_option.name, &read_areal_mass);
  if (!own) return own.problem();
  report.hide.own_areal_mass = *own ? *own : own_areal_mass(*workshop, *species);
  auto area = hide_area(report.hide);
  if (!area) return option_fault("", area.problem());
  report.area = *area;
  const std::string text = arguments.has("--json") ? area_json(report) : area_text(report, *units);
  if (auto fault = write_output(arguments.value("--output"), text)) return *fault;
  return Status::done;
}

} // namespace

CommandRecord area_command() {
  return {"area",
          "",
          0,
          0,
          "one hide's area, by weight, tape or as known",
          {species_option, live_option, green_option, own_option, length_option, widths_option,
           at_option, known_option, trim_option, units_option, workshop_here_option, json_option,
           output_option},
          "whittaw area --species goat --live-weight \"31 kg\"",
          &run};
}

} // namespace whittaw::app

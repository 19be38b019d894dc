#include "commands.hpp"

#include "../files/files.hpp"
#include "../readers/day_reader.hpp"
#include "../readers/recipe_reader.hpp"
#include "../writers/json.hpp"
#include "../writers/writers.hpp"

#include <whittaw/quantity/read.hpp>

#include <fmt/format.h>

namespace whittaw::app {

namespace {

constexpr OptionRecord water_option{"--water", "TEMPERATURE", "water of the check (20 C)"};
constexpr Temperature usual_check_temperature = degrees_celsius(20.0);

Outcome<Status> list(const Arguments &arguments) {
  std::vector<Recipe> recipes;
  std::string text;
  for (const auto &each : built_in_recipes()) {
    auto recipe = find_recipe(std::string(each.name), "");
    if (!recipe) return recipe.problem();
    text += fmt::format("{}\n    {}\n    {}\n", recipe->name, recipe->title, recipe->source);
    recipes.push_back(std::move(recipe.value()));
  }
  if (arguments.has("--json")) text = recipe_list_json(recipes);
  if (auto fault = write_output(arguments.value("--output"), text)) return *fault;
  return Status::done;
}

std::string lines_of(const RecipeReport &report, UnitSystem units) {
  const Recipe &recipe = report.recipe;
  std::string text = fmt::format("{}\n{}\nSource: {} ({})\n\n", recipe.name, recipe.title,
                                 recipe.source, mark_name(recipe.mark));
  const auto add = [&](std::string_view what, std::string_view name, Mass mass) {
    text += fmt::format("  {:<6} {:<36} {}\n", what, name, write_mass(mass, units));
  };
  const auto water = [&](std::string_view name, Volume volume) {
    if (volume > 0.0 * litre)
      text += fmt::format("  {:<6} {:<36} {}\n", "water", name, write_volume(volume, units));
  };
  water("for the alum", recipe.water_for_alum);
  water("for salt and soda", recipe.water_for_salt_and_soda);
  add("alum", recipe.alum.form.name, recipe.alum.mass);
  add("salt", "non-iodized", recipe.salt.mass);
  if (recipe.soda) add("soda", recipe.soda->form.name, recipe.soda->mass);
  if (recipe.meal) add("meal", recipe.meal->kind->name, recipe.meal->mass);
  for (const auto &extra : recipe.extras) add("extra", printable(extra.name), extra.mass);
  text += fmt::format("\n  coat {}, {} of them, {} on the hide\n  makes about {} of paste\n"
                      "  basicity {}\n",
                      write_length(recipe.coat, units), recipe.coats,
                      write_duration(recipe.time_on_hide), write_volume(report.yield.value, units),
                      write_percent(report.basicity, 3));
  if (recipe.offer)
    text += fmt::format("  alum offer {} to {} of fleshed weight\n",
                        write_percent(recipe.offer->low, 2), write_percent(recipe.offer->high, 2));
  if (!recipe.notes.empty()) text += "\n";
  for (const auto &note : recipe.notes) text += "  - " + printable(note) + "\n";
  return text;
}

std::string check_lines(const RecipeReport &report) {
  Sheet sheet;
  sheet.title = report.recipe.name;
  sheet.subtitle = report.recipe.title;
  for (const auto &check : report.checks) sheet.findings.push_back({check.level, check.text});
  return write_text(sheet);
}

Outcome<Status> show_or_check(const Arguments &arguments, bool check) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto water = option_quantity(arguments, water_option.name, &read_water_temperature);
  if (!water) return water.problem();
  auto recipe = find_recipe(arguments.operands[1], "");
  if (!recipe) return recipe.problem();
  if (auto fault = refuse_overwriting(arguments.value("--output"), {arguments.operands[1]}))
    return *fault;
  const auto temperature = (*water).value_or(usual_check_temperature);
  const RecipeReport report{*recipe, paste_yield(*recipe), recipe_basicity(*recipe),
                            check_recipe(*recipe, temperature, *units)};
  std::string text;
  if (arguments.has("--json"))
    text = recipe_json(report, check ? "recipe-check" : "recipe-show");
  else
    text = check ? check_lines(report) : lines_of(report, *units);
  if (auto fault = write_output(arguments.value("--output"), text)) return *fault;
  return check && says_stop(report.checks) ? Status::check_says_stop : Status::done;
}

Outcome<Status> run(const Arguments &arguments) {
  const std::string &verb = arguments.operands[0];
  const auto wants = [&](std::size_t operands) -> std::optional<Fault> {
    if (arguments.operands.size() == operands) return std::nullopt;
    return Fault{Status::usage,
                 "recipe " + verb,
                 operands == 1 ? "takes no name" : "wants the name of a recipe or a file",
                 "",
                 0,
                 "as: whittaw recipe list, whittaw recipe show bulletin-1334"};
  };
  if (verb == "list") {
    if (auto fault = wants(1)) return *fault;
    return list(arguments);
  }
  if (verb == "show" || verb == "check") {
    if (auto fault = wants(2)) return *fault;
    return show_or_check(arguments, verb == "check");
  }
  constexpr std::array<std::string_view, 3> verbs{"list", "show", "check"};
  return Fault{Status::usage,
               "recipe",
               fmt::format("'{}' is not known", verb),
               "",
               0,
               did_you_mean(verb, verbs) + "known: list, show NAME, check NAME"};
}

} // namespace

CommandRecord recipe_command() {
  return {"recipe",
          "list|show NAME|check NAME",
          1,
          2,
          "list, show and check recipes (NAME: built in, or FILE.toml)",
          {water_option, units_option, json_option, output_option},
          "whittaw recipe check bulletin-1334",
          &run};
}

} // namespace whittaw::app

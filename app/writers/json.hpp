// JSON reports: keys bear their unit, figures in full precision.
#pragma once

#include "../sheet/make_sheet.hpp"

#include <whittaw/paste/recipe_checks.hpp>

#include <string>

namespace whittaw::app {

struct AreaReport {
  Hide hide;
  HideArea area;
};

struct ConvertReport {
  std::string ingredient;
  bool from_mass = false;
  Estimate<Mass> mass;
  Estimate<Volume> volume;
  BulkDensity density;
};

struct RecipeReport {
  Recipe recipe;
  Estimate<Volume> yield;
  Basicity basicity;
  std::vector<Check> checks;
};

std::string batch_json(const DayResults &results);
std::string area_json(const AreaReport &report);
std::string convert_json(const ConvertReport &report);
std::string recipe_list_json(const std::vector<Recipe> &recipes);
std::string recipe_json(const RecipeReport &report, std::string_view command);

} // namespace whittaw::app

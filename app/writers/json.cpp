#include "json.hpp"

#include <nlohmann/json.hpp>

namespace whittaw::app {

namespace {

using Json = nlohmann::ordered_json;

// Other than ASCII is escaped, so that no control character of a tag reaches a terminal; what is
// not UTF-8 is replaced rather than thrown over.
std::string dump(const Json &json) {
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

Json checks_json(const std::vector<Check> &checks) {
  Json rows = Json::array();
  for (const auto &check : checks)
    rows.push_back({{"id", check.id}, {"level", level_name(check.level)}, {"text", check.text}});
  return rows;
}

Json hide_json(const Hide &hide, const BatchHide &sized) {
  return {{"tag", hide.tag},
          {"species", hide.species->name},
          {"method", sized.area.method},
          {"area_m2", count(sized.area.trimmed.value, square_metre)},
          {"area_sd_m2", count(sized.area.trimmed.sd(), square_metre)},
          {"trim", trim_row(hide.trim).name},
          {"cut_off_m2", count(sized.area.flayed.value - sized.area.trimmed.value, square_metre)},
          {"fleshed_g", count(sized.fleshed_weight.value, gram)},
          {"fleshed_sd_g", count(sized.fleshed_weight.sd(), gram)},
          {"one_coat_ml", count(sized.one_coat, millilitre)},
          {"offer", sized.offer.value},
          {"offer_sd", sized.offer.value * sized.offer_spread.value}};
}

Json ingredients_json(const DayResults &results) {
  Json rows = Json::array();
  for (std::size_t i = 0; i < results.batch.ingredients.size(); ++i) {
    const auto &ingredient = results.batch.ingredients[i];
    const auto &portion = results.portions.each[i];
    Json row{{"role", role_name(ingredient.role)},
             {"substance", ingredient.name},
             {"mass_g", count(ingredient.mass, gram)}};
    row["volume_ml"] =
        portion.volume ? Json(count(portion.volume->value, millilitre)) : Json(nullptr);
    row["volume_sd_ml"] =
        portion.volume ? Json(count(portion.volume->sd(), millilitre)) : Json(nullptr);
    row["measure"] = portion.scoops.empty() ? Json(nullptr) : Json(portion.scoops);
    row["cost"] = ingredient.cost ? Json(count(*ingredient.cost, tender)) : Json(nullptr);
    rows.push_back(std::move(row));
  }
  return rows;
}

Json liquor_json(const BatchLiquor &liquor) {
  Json json{{"basicity", liquor.basicity.value},
            {"co2_l", count(liquor.carbon_dioxide, litre)},
            {"temperature_c", celsius_value(liquor.temperature)}};
  json["ph"] = liquor.acidity ? Json(liquor.acidity->ph) : Json(nullptr);
  json["ph_sd"] = liquor.acidity ? Json(liquor.acidity->ph_sd) : Json(nullptr);
  json["undissolved_g"] = Json::object();
  for (const auto &salt : liquor.mixed)
    json["undissolved_g"][std::string(solubility_row(salt.solute).name)] =
        count(salt.undissolved, gram);
  return json;
}

} // namespace

std::string batch_json(const DayResults &results) {
  const Batch &batch = results.batch;
  Json json{{"schema", "whittaw/batch/1"},
            {"date", results.day.date},
            {"recipe", results.day.recipe.name}};
  json["hides"] = Json::array();
  for (std::size_t i = 0; i < batch.hides.size(); ++i)
    json["hides"].push_back(hide_json(results.day.hides[i], batch.hides[i]));
  json["area_m2"] = count(batch.area.value, square_metre);
  json["area_sd_m2"] = count(batch.area.sd(), square_metre);
  json["area_enough_m2"] = count(batch.area_enough, square_metre);
  json["chance_enough"] = results.day.chance.value;
  json["coat_mm"] = count(batch.coat, millimetre);
  json["coats"] = batch.coats;
  json["working_loss"] = results.day.working_loss.value;
  json["paste_ml"] = count(batch.paste, millilitre);
  json["paste_on_hides_ml"] = count(batch.paste_on_hides, millilitre);
  json["ingredients"] = ingredients_json(results);
  json["alum_water_ml"] = count(batch.alum_water, millilitre);
  json["soda_water_ml"] = count(batch.soda_water, millilitre);
  json["exchanges"] = Json::array();
  for (const auto &exchange : batch.exchanges)
    json["exchanges"].push_back({{"role", role_name(exchange.role)},
                                 {"recipe_substance", exchange.recipe_form.name},
                                 {"recipe_mass_g", count(exchange.recipe_mass, gram)},
                                 {"substance", exchange.form.name},
                                 {"mass_g", count(exchange.mass, gram)},
                                 {"times_as_strong", exchange.times_as_strong}});
  json["scoops"] = Json(nullptr);
  if (results.portions.by_scoops)
    json["scoops"] = {{"ratio_error", results.portions.ratio_error},
                      {"least_over", results.portions.least_over},
                      {"most_over", results.portions.most_over},
                      {"basicity", results.portions.basicity.value},
                      {"basicity_sd", results.portions.basicity_sd}};
  json["liquor"] = liquor_json(batch.liquor);
  json["bucket_ml"] = count(batch.bucket, millilitre);
  json["lots"] = batch.lots;
  json["offer"] = batch.offer.value;
  json["offer_sd"] = batch.offer.value * batch.offer_spread.value;
  json["cost"] = results.day.currency.empty() ? Json(nullptr) : Json(count(batch.cost, tender));
  json["cost_complete"] = batch.cost_complete;
  json["currency"] = results.day.currency.empty() ? Json(nullptr) : Json(results.day.currency);
  json["checks"] = checks_json(results.checks);
  json["cautions"] = Json::array();
  for (const auto &caution : results.cautions) json["cautions"].push_back(caution.text);
  json["sources"] = results.sources;
  return dump(json);
}

std::string area_json(const AreaReport &report) {
  const auto &area = report.area;
  return dump({{"schema", "whittaw/area/1"},
               {"area_m2", count(area.trimmed.value, square_metre)},
               {"area_sd_m2", count(area.trimmed.sd(), square_metre)},
               {"method", area.method},
               {"source", write_source(area.source)},
               {"species", report.hide.species->name},
               {"trim", trim_row(report.hide.trim).name},
               {"cut_off_m2", count(area.flayed.value - area.trimmed.value, square_metre)}});
}

std::string convert_json(const ConvertReport &report) {
  const Json mass{{"mass_g", count(report.mass.value, gram)},
                  {"mass_sd_g", count(report.mass.sd(), gram)}};
  const Json volume{{"volume_ml", count(report.volume.value, millilitre)},
                    {"volume_sd_ml", count(report.volume.sd(), millilitre)}};
  const auto &density = report.density.density;
  return dump({{"schema", "whittaw/convert/1"},
               {"ingredient", report.ingredient},
               {"from", report.from_mass ? mass : volume},
               {"to", report.from_mass ? volume : mass},
               {"density_g_per_ml", count(density.value, gram_per_millilitre)},
               {"density_sd_g_per_ml", count(density.sd(), gram_per_millilitre)},
               {"source", write_source(report.density.source)}});
}

std::string recipe_list_json(const std::vector<Recipe> &recipes) {
  Json json{{"schema", "whittaw/recipe-list/1"}, {"recipes", Json::array()}};
  for (const auto &recipe : recipes)
    json["recipes"].push_back(
        {{"name", recipe.name}, {"title", recipe.title}, {"source", recipe.source}});
  return dump(json);
}

std::string recipe_json(const RecipeReport &report, std::string_view command) {
  const Recipe &recipe = report.recipe;
  Json parts = Json::array();
  const auto add = [&](Role role, std::string_view substance, Mass mass) {
    parts.push_back(
        {{"role", role_name(role)}, {"substance", substance}, {"mass_g", count(mass, gram)}});
  };
  add(Role::water, "water", water_mass(recipe));
  add(Role::salt, recipe.salt.form.name, recipe.salt.mass);
  add(Role::alum, recipe.alum.form.name, recipe.alum.mass);
  if (recipe.soda) add(Role::soda, recipe.soda->form.name, recipe.soda->mass);
  if (recipe.meal) add(Role::meal, recipe.meal->kind->name, recipe.meal->mass);
  for (const auto &extra : recipe.extras) add(Role::extra, extra.name, extra.mass);
  return dump({{"schema", "whittaw/" + std::string(command) + "/1"},
               {"name", recipe.name},
               {"title", recipe.title},
               {"source", recipe.source},
               {"mark", mark_name(recipe.mark)},
               {"notes", recipe.notes},
               {"ingredients", parts},
               {"paste_ml", count(report.yield.value, millilitre)},
               {"paste_sd_ml", count(report.yield.sd(), millilitre)},
               {"coat_mm", count(recipe.coat, millimetre)},
               {"coats", recipe.coats},
               {"time_on_hide_d", count(recipe.time_on_hide, days)},
               {"basicity", report.basicity.value},
               {"checks", checks_json(report.checks)}});
}

} // namespace whittaw::app

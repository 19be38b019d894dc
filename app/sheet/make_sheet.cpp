#include "make_sheet.hpp"

#include <fmt/format.h>

#include <cmath>

namespace whittaw::app {

namespace {

std::string coats_in_words(int coats) {
  return coats == 1 ? "1 coat" : fmt::format("{} coats", coats);
}

/// The measure beside a weight: scoops where the batch can be scooped, else the volume.
std::string measure_of(const DayResults &results, std::size_t i, UnitSystem units) {
  const auto &portion = results.portions.each[i];
  if (!portion.scoops.empty()) return portion.scoops;
  if (!portion.volume) return "";
  if (results.batch.ingredients[i].role == Role::water)
    return write_volume(portion.volume->value, units);
  return fmt::format("about {} (\u00b1 {})", write_volume(portion.volume->value, units),
                     write_percent(portion.volume->spread(), 1));
}

SheetAmount amount_of(const DayResults &results, std::size_t i, UnitSystem units) {
  const auto &ingredient = results.batch.ingredients[i];
  std::string name = ingredient.name;
  if (ingredient.bag && !results.day.shelf[*ingredient.bag].label.empty())
    name += fmt::format(" ({})", results.day.shelf[*ingredient.bag].label);
  SheetAmount amount{name, write_mass(ingredient.mass, units, results.workshop.scale),
                     measure_of(results, i, units)};
  for (const auto &exchange : results.batch.exchanges)
    if (exchange.ingredient == i)
      amount.note = write_exchange(exchange, units, results.workshop.scale);
  return amount;
}

SheetAmount water_amount(Volume water, std::string name, const DayResults &results,
                         UnitSystem units) {
  return {std::move(name), write_mass(water * water_density, units, results.workshop.scale),
          write_volume(water, units)};
}

std::vector<SheetAmount> amounts_of(const DayResults &results, Role role, UnitSystem units) {
  std::vector<SheetAmount> amounts;
  for (std::size_t i = 0; i < results.batch.ingredients.size(); ++i)
    if (results.batch.ingredients[i].role == role) amounts.push_back(amount_of(results, i, units));
  return amounts;
}

void append(std::vector<SheetAmount> &to, std::vector<SheetAmount> more) {
  to.insert(to.end(), more.begin(), more.end());
}

/// "at least 23 °C", or "at 15 °C" where all dissolves at the stated temperature.
std::string water_warmth(const std::vector<Saturation> &salts, Temperature stated,
                         UnitSystem units) {
  double needs = -1.0;
  for (const auto &salt : salts)
    if (salt.overfull() && salt.needs)
      needs = std::max(needs, std::ceil(celsius_value(*salt.needs) + 1.0));
  if (needs > celsius_value(stated))
    return "warmed to at least " + write_temperature(degrees_celsius(needs), units);
  return "at " + write_temperature(stated, units) + " or warmer";
}

void add_mixing_steps(Sheet &sheet, const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  const bool two_waters = batch.soda_water > 0.0 * litre;
  SheetStep first{
      fmt::format("Alum water. Water {} into the bucket; stir in the alum until clear.",
                  water_warmth(batch.liquor.alum_water, batch.liquor.temperature, units)),
      {water_amount(batch.alum_water, "water", results, units)}};
  append(first.amounts, amounts_of(results, Role::alum, units));
  auto salt_and_soda = amounts_of(results, Role::salt, units);
  const auto soda = amounts_of(results, Role::soda, units);
  append(salt_and_soda, soda);
  const std::string both = soda.empty() ? "salt" : "salt and soda";
  if (two_waters) {
    sheet.steps.push_back(std::move(first));
    SheetStep second{
        fmt::format("{} water. In a second vessel stir the {} into water {} until clear.",
                    soda.empty() ? "Salt" : "Soda", both,
                    water_warmth(batch.liquor.soda_water, batch.liquor.temperature, units)),
        {water_amount(batch.soda_water, "water", results, units)}};
    append(second.amounts, salt_and_soda);
    sheet.steps.push_back(std::move(second));
  } else if (soda.empty()) {
    first.text =
        fmt::format("Liquor. Water {} into the bucket; stir in the alum and the salt until clear.",
                    water_warmth(batch.liquor.mixed, batch.liquor.temperature, units));
    append(first.amounts, salt_and_soda);
    sheet.steps.push_back(std::move(first));
  } else {
    first.text += " Then stir in the salt.";
    append(first.amounts, amounts_of(results, Role::salt, units));
    sheet.steps.push_back(std::move(first));
    sheet.steps.push_back(
        {"Soda, dissolved in as little warm water as it needs, kept back from the water above.",
         soda});
  }
  if (!soda.empty())
    sheet.steps.push_back(
        {fmt::format("Pour the soda water into the alum water SLOWLY: {} portions or more, "
                     "stirring. Wait each time until the foam is down. If it climbs: stop pouring, "
                     "keep stirring. About {} of gas comes off.",
                     pouring_portions, write_volume(batch.liquor.carbon_dioxide, units)),
         {}});
  if (auto meal = amounts_of(results, Role::meal, units); !meal.empty())
    sheet.steps.push_back(
        {"Meal, by handfuls, beaten in until the paste clings to the hide and does not run.",
         std::move(meal)});
  if (auto extras = amounts_of(results, Role::extra, units); !extras.empty())
    sheet.steps.push_back({"Beat in.", std::move(extras)});
}

SheetTable hide_table(const DayResults &results, UnitSystem units, std::size_t most) {
  const bool owners = std::any_of(results.day.hides.begin(), results.day.hides.end(),
                                  [](const Hide &hide) { return !hide.owner.empty(); });
  SheetTable table;
  table.title = "Hides";
  table.columns = {"hide", "species", "trim", "area", "one coat"};
  if (owners) table.columns.insert(table.columns.begin() + 1, "owner");
  const std::size_t shown = std::min(most, results.batch.hides.size());
  for (std::size_t i = 0; i < shown; ++i) {
    const Hide &hide = results.day.hides[i];
    const BatchHide &sized = results.batch.hides[i];
    std::vector<std::string> row{
        hide.tag, std::string(hide.species->name), std::string(trim_row(hide.trim).name),
        write_estimate(sized.area.trimmed, units), write_volume(sized.one_coat, units)};
    if (owners) row.insert(row.begin() + 1, hide.owner);
    table.rows.push_back(std::move(row));
  }
  if (shown < results.batch.hides.size())
    table.note = fmt::format("and {} more hides: the batch report lists them all.",
                             results.batch.hides.size() - shown);
  return table;
}

std::string area_meant(const DayResults &results) {
  std::string text = "Area is the flayed skin laid slack, head and shanks off";
  for (const Trim trim : {Trim::square, Trim::ellipse}) {
    if (std::any_of(results.day.hides.begin(), results.day.hides.end(),
                    [&](const Hide &hide) { return hide.trim == trim; }))
      text += fmt::format("; trimmed {}: cut off {}", trim_row(trim).name, trim_row(trim).cut_off);
  }
  return text + ". \u00b1 is one standard deviation.";
}

std::string acidity_line(const Batch &batch) {
  if (!batch.liquor.acidity) return "";
  const auto &acidity = *batch.liquor.acidity;
  return fmt::format("A pH strip in the clear liquor should show {:.1f} to {:.1f}.",
                     acidity.ph - acidity.ph_sd, acidity.ph + acidity.ph_sd);
}

std::string sizing_line(const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  return fmt::format("{} of paste, sized to be enough with {} chance; {} of it is working loss; "
                     "about {} goes on the hides.",
                     write_volume(batch.paste, units), write_percent(results.day.chance, 2),
                     write_percent(results.day.working_loss, 2),
                     write_volume(batch.paste_on_hides, units));
}

std::string cost_line(const DayResults &results) {
  const Batch &batch = results.batch;
  if (results.day.currency.empty()) return "";
  std::string text = "Cost of what is priced: " + write_money(batch.cost, results.day.currency);
  if (batch.cost_complete) return text + ".";
  text += "; without a price:";
  std::string names;
  for (const auto &ingredient : batch.ingredients)
    if (!ingredient.cost && ingredient.role != Role::water)
      names += (names.empty() ? " " : ", ") + ingredient.name;
  return text + names + ".";
}

void add_common(Sheet &sheet, const DayResults &results, Level from) {
  for (const auto &check : results.checks)
    if (check.level >= from) sheet.findings.push_back({check.level, check.text});
  for (const auto &caution : results.cautions) sheet.cautions.emplace_back(caution.text);
  for (auto &&line : {area_meant(results), acidity_line(results.batch), cost_line(results)})
    if (!line.empty()) sheet.remarks.push_back(line);
  sheet.sources = results.sources;
}

} // namespace

Result<DayResults> work_out(Day day, Workshop workshop, UnitSystem units) {
  auto batch = make_batch(day);
  if (!batch) return batch.problem();
  DayResults results{std::move(day), std::move(workshop), std::move(batch.value()), {}, {}, {}, {}};
  results.portions = measure_batch(results.batch, results.workshop);
  results.checks =
      check_batch(results.day, results.batch, results.workshop, results.portions, units);
  results.cautions = cautions_for(results.day, results.batch);
  results.sources = sources_of(results.day, results.batch, results.portions, results.cautions);
  return results;
}

Sheet make_card(const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  const Recipe &recipe = results.day.recipe;
  Sheet sheet;
  sheet.title = "Mixing card " + results.day.date;
  sheet.subtitle = fmt::format("{} \u00b7 {} hides \u00b7 {}", recipe.title, batch.hides.size(),
                               sizing_line(results, units));
  add_common(sheet, results, Level::note);
  sheet.steps.push_back(
      {fmt::format("Goggles, gloves, dust mask. A bucket that is not metal, of at least {}.",
                   write_volume(batch.bucket, units)),
       {}});
  add_mixing_steps(sheet, results, units);
  sheet.steps.push_back(
      {fmt::format("Spread {} on the flesh side of each hide, edges too{}.",
                   write_length(batch.coat, units),
                   batch.coats == 1 ? std::string()
                                    : fmt::format("; {} in all, a day apart, the old one scraped "
                                                  "off first. Keep the rest covered, not sealed",
                                                  coats_in_words(batch.coats))),
       {}});
  sheet.steps.push_back(
      {fmt::format("Leave it on {}, cool. After 2 to 3 days fold along the backbone and turn, so "
                   "that each wool side airs. Look for loosening wool every day.",
                   write_duration(recipe.time_on_hide)),
       {}});
  constexpr std::size_t most_hides = 12;
  sheet.tables.push_back(hide_table(results, units, most_hides));
  sheet.tables.back().compact = true;
  return sheet;
}

Sheet make_report(const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  Sheet sheet;
  sheet.title = "Batch " + results.day.date;
  sheet.subtitle = fmt::format("{} \u00b7 {} hides \u00b7 {}", results.day.recipe.title,
                               batch.hides.size(), write_estimate(batch.area, units));
  add_common(sheet, results, Level::ok);

  SheetTable hides = hide_table(results, units, batch.hides.size());
  hides.columns.insert(hides.columns.end(), {"by", "offer"});
  for (std::size_t i = 0; i < batch.hides.size(); ++i) {
    hides.rows[i].emplace_back(batch.hides[i].area.method);
    hides.rows[i].push_back(write_percent(Offer{batch.hides[i].offer.value}, 2));
  }
  hides.note = "The total is of the full values, not of the printed rows.";
  sheet.tables.push_back(std::move(hides));

  SheetTable ingredients;
  ingredients.title = "Ingredients";
  ingredients.columns = {"part", "what", "weight", "measure", "cost"};
  for (std::size_t i = 0; i < batch.ingredients.size(); ++i) {
    const auto amount = amount_of(results, i, units);
    const auto &cost = batch.ingredients[i].cost;
    ingredients.rows.push_back({std::string(role_name(batch.ingredients[i].role)), amount.name,
                                amount.weight, amount.measure,
                                cost ? write_money(*cost, results.day.currency) : ""});
  }
  sheet.tables.push_back(std::move(ingredients));

  SheetTable figures;
  figures.title = "Figures";
  figures.columns = {"figure", "value"};
  const auto add = [&](std::string name, std::string value) {
    figures.rows.push_back({std::move(name), std::move(value)});
  };
  add("area to paste", write_estimate(batch.area, units));
  add(fmt::format("area, {} sure", write_percent(results.day.chance, 2)),
      write_area(batch.area_enough, units, 3));
  add("coat", fmt::format("{}, {}", write_length(batch.coat, units), coats_in_words(batch.coats)));
  add("paste to mix", write_volume(batch.paste, units));
  add("working loss", write_percent(results.day.working_loss, 2));
  add("paste on the hides, expected", write_volume(batch.paste_on_hides, units));
  add("bucket, at least", write_volume(batch.bucket, units));
  add("basicity", write_percent(batch.liquor.basicity, 3));
  add("carbon dioxide at 20 \u00b0C", write_volume(batch.liquor.carbon_dioxide, units));
  add("alum offer on fleshed weight", write_percent(batch.offer, 2));
  sheet.tables.push_back(std::move(figures));
  for (const auto &exchange : batch.exchanges)
    sheet.remarks.push_back(write_exchange(exchange, units, results.workshop.scale));
  sheet.remarks.insert(sheet.remarks.begin(), sizing_line(results, units));
  return sheet;
}

} // namespace whittaw::app

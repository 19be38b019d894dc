#include "make_sheet.hpp"

#include <fmt/format.h>

#include <cmath>

namespace whittaw::app {

namespace {

std::string coats_in_words(int coats) {
  return coats == 1 ? "1 coat" : fmt::format("{} coats", coats);
}

std::string hides_in_words(std::size_t hides) {
  return hides == 1 ? "1 hide" : fmt::format("{} hides", hides);
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

/// Water is poured from a jug: its volume comes first.
SheetAmount water_amount(Volume water, const DayResults &results, UnitSystem units) {
  return {"water", write_volume(water, units),
          write_mass(mass_of_water(water), units, results.workshop.scale)};
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

std::string water_warmth(const std::vector<Saturation> &salts, Temperature stated,
                         UnitSystem units) {
  const auto warmer = warmer_to_dissolve(salts, stated);
  const Temperature at = warmer.value_or(stated);
  if (at > warmest_paste)
    return fmt::format("of {} (then let it cool to {} before meal and hides)",
                       write_temperature(at, units), write_temperature(warmest_paste, units));
  return fmt::format("of {} to {}", write_temperature(at, units),
                     write_temperature(warmest_paste, units));
}

void add_pouring(Sheet &sheet, const Batch &batch, UnitSystem units) {
  std::string text = fmt::format(
      "Pour the soda water into the alum water SLOWLY: {} portions or more, stirring. Wait each "
      "time until the foam is down. If it climbs: stop pouring, keep stirring. About {} of gas "
      "comes off.",
      pouring_portions, write_volume(batch.liquor.carbon_dioxide, units, 2));
  if (batch.liquor.acidity) {
    const auto &acidity = *batch.liquor.acidity;
    text += fmt::format(" A pH strip now should show about {:.0f} ({:.0f} to {:.0f}); if it shows "
                        "more, there is too much soda: stop and look for the mistake.",
                        acidity.ph, lowest_ph(acidity), highest_ph(acidity));
  }
  sheet.steps.push_back({std::move(text), {}});
}

void add_mixing_steps(Sheet &sheet, const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  const bool two_waters = batch.soda_water > 0.0 * litre;
  const auto salt = amounts_of(results, Role::salt, units);
  const auto soda = amounts_of(results, Role::soda, units);
  SheetStep first{
      fmt::format("Alum water. Water {} into the bucket; stir in the alum until clear.",
                  water_warmth(batch.liquor.alum_water, batch.liquor.temperature, units)),
      {water_amount(batch.alum_water, results, units)}};
  append(first.amounts, amounts_of(results, Role::alum, units));
  if (two_waters) {
    sheet.steps.push_back(std::move(first));
    SheetStep second{
        fmt::format("{} water. In the second vessel stir the {} into water {} until clear.",
                    soda.empty() ? "Salt" : "Soda", soda.empty() ? "salt" : "salt and soda",
                    water_warmth(batch.liquor.soda_water, batch.liquor.temperature, units)),
        {water_amount(batch.soda_water, results, units)}};
    append(second.amounts, salt);
    append(second.amounts, soda);
    sheet.steps.push_back(std::move(second));
  } else {
    first.text =
        fmt::format("Liquor. Water {} into the bucket; stir in alum and salt until clear{}.",
                    water_warmth(batch.liquor.mixed, batch.liquor.temperature, units),
                    soda.empty() ? "" : "; keep back enough of the water to dissolve the soda");
    append(first.amounts, salt);
    sheet.steps.push_back(std::move(first));
    if (!soda.empty())
      sheet.steps.push_back(
          {"Soda water. Stir the soda into the water kept back until clear.", soda});
  }
  if (!soda.empty()) add_pouring(sheet, batch, units);
  if (auto meal = amounts_of(results, Role::meal, units); !meal.empty())
    sheet.steps.push_back({"Meal, by handfuls, beaten in until the paste clings to the hide and "
                           "does not run. The weight is a guide: the feel decides.",
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

std::string sizing_line(const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  return fmt::format("{} of paste, sized to be enough with {} chance; {} of it is working loss; "
                     "about {} goes on the hides, the rest is reserve.",
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
  for (auto &&line : {area_meant(results), cost_line(results)})
    if (!line.empty()) sheet.remarks.push_back(line);
  sheet.sources = results.sources;
}

/// Steps after mixing: spread, wait, turn.
void add_hide_steps(Sheet &sheet, const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  const Duration time = results.day.recipe.time_on_hide;
  std::string spread =
      fmt::format("Spread {} on the flesh side of each hide, edges too: {} for all",
                  write_length(batch.coat, units), write_volume(batch.one_coat, units));
  if (batch.coats > 1)
    spread +=
        fmt::format(". {} in all, a day apart: scrape the old one off first, and not back into "
                    "the bucket. Keep the rest covered, not sealed; stir before use",
                    coats_in_words(batch.coats));
  sheet.steps.push_back({spread + ".", {}});
  std::string leave = fmt::format("Leave it on {}{}, cool.", write_duration(time),
                                  batch.coats > 1 ? ", counted from the first coat" : "");
  if (time >= turned_from)
    leave += " After 2 to 3 days fold along the backbone, flesh to flesh, and turn, so that each "
             "wool side airs.";
  sheet.steps.push_back({leave + " Look for loosening wool every day.", {}});
}

/// What is mixed in one go, where the bucket does not hold it all.
DayResults one_lot_of(const DayResults &results) {
  DayResults lot = results;
  lot.batch = one_lot(results.batch);
  lot.portions = measure_batch(lot.batch, lot.workshop);
  return lot;
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
  const int lots = results.batch.lots;
  const DayResults lot = lots > 1 ? one_lot_of(results) : results;
  Sheet sheet;
  sheet.title = "Mixing card " + results.day.date;
  sheet.subtitle =
      fmt::format("{} \u00b7 {} \u00b7 {}", results.day.recipe.title,
                  hides_in_words(results.batch.hides.size()), sizing_line(results, units));
  add_common(sheet, results, Level::note);
  if (says_stop(results.checks))
    sheet.steps.push_back({"DO NOT MIX until each STOP above is put right.", {}});
  std::string ready =
      fmt::format("Goggles, gloves, dust mask; water at hand to rinse eyes. A bucket, "
                  "not metal, of at least {}",
                  write_volume(lot.batch.bucket, units));
  if (lot.batch.second_vessel > 0.0 * litre)
    ready +=
        fmt::format(", and a second vessel of {}", write_volume(lot.batch.second_vessel, units));
  ready += ".";
  if (lots > 1)
    ready += fmt::format(" The amounts below are ONE LOT OF {0}: mix it {0} times.", lots);
  sheet.steps.push_back({ready, {}});
  add_mixing_steps(sheet, lot, units);
  add_hide_steps(sheet, results, units);
  constexpr std::size_t most_hides = 12;
  sheet.tables.push_back(hide_table(results, units, most_hides));
  sheet.tables.back().compact = true;
  return sheet;
}

Sheet make_report(const DayResults &results, UnitSystem units) {
  const Batch &batch = results.batch;
  Sheet sheet;
  sheet.title = "Batch " + results.day.date;
  sheet.subtitle =
      fmt::format("{} \u00b7 {} \u00b7 {}", results.day.recipe.title,
                  hides_in_words(batch.hides.size()), write_estimate(batch.area, units));
  add_common(sheet, results, Level::ok);

  SheetTable hides = hide_table(results, units, batch.hides.size());
  hides.columns.insert(hides.columns.end(), {"by", "offer"});
  for (std::size_t i = 0; i < batch.hides.size(); ++i) {
    hides.rows[i].emplace_back(batch.hides[i].area.method);
    hides.rows[i].push_back(write_percent_spread(
        batch.hides[i].offer, batch.hides[i].offer.value * batch.hides[i].offer_spread.value));
  }
  hides.rows.push_back({"all", "", "", write_estimate(batch.area, units),
                        write_volume(batch.one_coat, units), "", write_percent(batch.offer, 2)});
  if (hides.columns.size() > hides.rows.back().size())
    hides.rows.back().insert(hides.rows.back().begin() + 1, "");
  hides.note = "The sums are of the full values, not of the printed rows; spreads add by their "
               "squares, a formula's own spread by itself.";
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
  if (batch.liquor.acidity)
    add("pH, by a line between two figures",
        fmt::format("{:.1f} \u00b1 {:.1f}", batch.liquor.acidity->ph, batch.liquor.acidity->ph_sd));
  add("alum offer on fleshed weight",
      write_percent_spread(batch.offer, batch.offer.value * batch.offer_spread.value));
  sheet.tables.push_back(std::move(figures));
  for (const auto &exchange : batch.exchanges)
    sheet.remarks.push_back(write_exchange(exchange, units, results.workshop.scale));
  sheet.remarks.insert(sheet.remarks.begin(), sizing_line(results, units));
  for (const auto &note : results.day.recipe.notes) sheet.remarks.push_back("Recipe: " + note);
  return sheet;
}

} // namespace whittaw::app

// Sentences about a batch, and the sources behind it.
#pragma once

#include <whittaw/paste/cautions.hpp>
#include <whittaw/paste/workshop.hpp>
#include <whittaw/quantity/write.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace whittaw {

/// "washing soda: the recipe means crystals; your anhydrous powder is 2.70 times as strong, so 42
/// g, not 113 g."
inline std::string write_exchange(const Exchange &exchange, UnitSystem units, ScaleStep step) {
  const auto name = [](const Form &form) {
    return form.role == Role::alum ? form_name(form) : std::string(form.short_name);
  };
  const double times = exchange.times_as_strong;
  const bool stronger = times >= 1.0;
  return std::string(exchange.role == Role::soda ? "washing soda" : role_name(exchange.role)) +
         ": the recipe means " + name(exchange.recipe_form) + "; your " + name(exchange.form) +
         " is " + write_decimal(stronger ? times : 1.0 / times, 2) + " times as " +
         (stronger ? "strong" : "weak") + ", so " + write_mass(exchange.mass, units, step) +
         ", not " + write_mass(exchange.recipe_mass, units, step) + ".";
}

/// A source as it is printed: its text and how well it is known.
inline std::string write_source(const Source &source) {
  if (source.text.empty()) return std::string(mark_name(source.mark));
  return std::string(source.text) + " (" + std::string(mark_name(source.mark)) + ")";
}

/// The sources of every figure of a batch, each once.
inline std::vector<std::string> sources_of(const Day &day, const Batch &batch,
                                           const Portions &portions,
                                           const std::vector<Caution> &cautions) {
  std::vector<std::string> sources;
  const auto add = [&](std::string text) {
    if (std::find(sources.begin(), sources.end(), text) == sources.end())
      sources.push_back(std::move(text));
  };
  add("Recipe: " + day.recipe.source + " (" + std::string(mark_name(day.recipe.mark)) + ")");
  const Source *last = nullptr; // hides in a row mostly share theirs
  for (const auto &hide : batch.hides) {
    if (last == nullptr || last->text != hide.area.source.text)
      add("Area: " + write_source(hide.area.source));
    last = &hide.area.source;
  }
  for (const auto &hide : batch.hides)
    if (!hide.area.trim_source.text.empty()) add("Trim: " + write_source(hide.area.trim_source));
  add("Basicity: " + write_source(basicity_band(batch.liquor.basicity).source));
  if (batch.liquor.acidity) add("pH: " + write_source(acidity_source));
  for (const auto &salt : batch.liquor.mixed)
    add("Solubility: " + write_source(solubility_row(salt.solute).source));
  add("Offer: " + (day.recipe.offer ? "range of the recipe" : write_source(usual_offer_source)));
  for (std::size_t i = 0; i < portions.each.size(); ++i) {
    const auto &ingredient = batch.ingredients[i];
    if (portions.each[i].density && ingredient.role != Role::water)
      add("A cup of " + std::string(ingredient.grain->name) + ": " +
          write_source(portions.each[i].density->source));
  }
  add("Bucket: " + write_source(bucket_source));
  add("Coat and paste yield: spreads of 10 % and 4 % (assumption)");
  add("Warmth: " + write_source(warmest_paste_source));
  for (const auto &caution : cautions)
    if (!caution.source.text.empty()) add("Caution: " + write_source(caution.source));
  return sources;
}

} // namespace whittaw

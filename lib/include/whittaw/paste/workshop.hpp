// What the workshop owns and knows of itself: scoops, scale, and its own weighings.
#pragma once

#include <whittaw/paste/batch.hpp>
#include <whittaw/paste/measures.hpp>
#include <whittaw/quantity/write.hpp>
#include <whittaw/substance/bulk_density.hpp>

#include <optional>
#include <string>
#include <vector>

namespace whittaw {

struct IngredientWeighings {
  const BulkRow *ingredient = nullptr;
  std::vector<Weighing> weighings;
};

struct OwnGreenLaw {
  const Species *species = nullptr;
  ArealMass areal_mass = 0.0 * kilogram_per_square_metre;
};

/// How far the ratio alum : salt : soda may be off when measured by scoops.
inline constexpr Spread usual_ratio_tolerance{0.05};

struct Workshop {
  std::vector<Scoop> scoops = {};
  ScaleStep scale = {};
  Spread ratio_tolerance = usual_ratio_tolerance;
  std::vector<IngredientWeighings> weighings = {};
  std::vector<OwnGreenLaw> green = {};
};

/// The workshop's own mass by area of a species, if it has one.
inline std::optional<ArealMass> own_areal_mass(const Workshop &workshop, const Species *species) {
  for (const auto &row : workshop.green)
    if (row.species == species) return row.areal_mass;
  return std::nullopt;
}

/// A scale that shows such steps; in ounces a scale of grams shows whole tenths.
inline ScaleStep scale_of_step(Mass step) {
  const Mass tenth = ScaleStep().customary;
  return {step, std::max(1.0, std::ceil(count(step, tenth) - 1e-9)) * tenth};
}

/// The density to reckon with: the workshop's own weighings where there are any, else the published
/// range. Nothing where neither is known.
inline std::optional<BulkDensity> bulk_density(const BulkRow &row, const Workshop &workshop) {
  for (const auto &own : workshop.weighings)
    if (own.ingredient == &row && !own.weighings.empty()) return own_density(own.weighings);
  return published_density(row);
}

/// One line of the card: an ingredient by weight, by volume, and by scoops where it can be.
struct Portion {
  std::optional<BulkDensity> density;
  std::optional<Estimate<Volume>> volume;
  std::string scoops; ///< empty: weigh it
};

struct Portions {
  std::vector<Portion> each; ///< in the order of the batch's ingredients
  std::string no_density;    ///< the first of alum, salt and soda whose cup is not known
  bool by_scoops = false;    ///< alum, salt and soda can all be scooped
  double ratio_error = 0.0;  ///< of the scoops against the exact ratio
  double least_over = 0.0;   ///< of the scooped ingredients
  double most_over = 0.0;
  /// Basicity when scooped: at the scoops' own rounding, and one standard deviation of it from the
  /// bulk densities.
  Basicity basicity;
  double basicity_sd = 0.0;
};

/// Measures of a batch in this workshop. Alum, salt and soda are scooped only if all of them can
/// be, for a mixture of scooped and weighed parts keeps no ratio; meal follows on its own.
inline Portions measure_batch(const Batch &batch, const Workshop &workshop) {
  Portions portions;
  std::vector<std::size_t> together;
  std::vector<Volume> exact;
  bool all_known = true;
  for (std::size_t i = 0; i < batch.ingredients.size(); ++i) {
    const auto &ingredient = batch.ingredients[i];
    Portion portion;
    if (ingredient.grain != nullptr) portion.density = bulk_density(*ingredient.grain, workshop);
    if (portion.density) portion.volume = volume_of(ingredient.mass, portion.density->density);
    const bool in_ratio = ingredient.role == Role::alum || ingredient.role == Role::salt ||
                          ingredient.role == Role::soda;
    if (in_ratio && ingredient.mass > 0.0 * kilogram) {
      if (!portion.volume && all_known) portions.no_density = ingredient.name;
      all_known = all_known && portion.volume.has_value();
      if (portion.volume) {
        together.push_back(i);
        exact.push_back(portion.volume->value);
      }
    }
    portions.each.push_back(std::move(portion));
  }
  if (!all_known) return portions;
  const auto rounding = round_to_scoops(exact, workshop.scoops, workshop.ratio_tolerance);
  if (!rounding) return portions;

  portions.by_scoops = true;
  portions.ratio_error = rounding->ratio_error;
  portions.least_over = rounding->measures.front().over;
  portions.most_over = portions.least_over;
  LiquorAmounts scooped;
  double aluminium_variance = 0.0;
  double hydroxide_variance = 0.0;
  for (std::size_t k = 0; k < together.size(); ++k) {
    const auto &measure = rounding->measures[k];
    auto &portion = portions.each[together[k]];
    portion.scoops = write_measure(measure, workshop.scoops);
    portions.least_over = std::min(portions.least_over, measure.over);
    portions.most_over = std::max(portions.most_over, measure.over);
    const auto &ingredient = batch.ingredients[together[k]];
    const Mass mass = (1.0 + measure.over) * ingredient.mass;
    add_to(scooped, ingredient.form, mass);
    const double relative = portion.density->density.spread().value;
    const double aluminium = relative * count(ingredient.form.aluminium * mass, mole);
    const double hydroxide = relative * count(ingredient.form.hydroxide * mass, mole);
    aluminium_variance += aluminium * aluminium;
    hydroxide_variance += hydroxide * hydroxide;
  }
  portions.basicity = basicity(scooped);
  if (scooped.hydroxide > 0.0 * mole)
    portions.basicity_sd =
        portions.basicity.value *
        std::hypot(std::sqrt(aluminium_variance) / count(scooped.aluminium, mole),
                   std::sqrt(hydroxide_variance) / count(scooped.hydroxide, mole));
  // Meal only thickens: it may be a tenth over or under with no harm.
  for (std::size_t i = 0; i < batch.ingredients.size(); ++i) {
    auto &portion = portions.each[i];
    if (batch.ingredients[i].role != Role::meal || !portion.volume) continue;
    const double middle = 1.0 + 0.5 * (portions.least_over + portions.most_over);
    const auto meal = round_to_scoops({middle * portion.volume->value}, workshop.scoops, {0.0});
    if (meal) portion.scoops = write_measure(meal->measures.front(), workshop.scoops);
  }
  return portions;
}

} // namespace whittaw

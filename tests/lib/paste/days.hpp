// Days that the tests of the paste start from.
#pragma once

#include "bulletin.hpp"

#include <whittaw/paste/checks.hpp>

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

namespace whittaw_test {

using namespace whittaw;

/// A recipe in round figures for working by hand.
inline Recipe round_recipe() {
  Recipe recipe;
  recipe.name = "round";
  recipe.alum = {forms::potassium_alum, 500.0 * gram};
  recipe.salt = {forms::salt, 250.0 * gram};
  recipe.soda = RecipePart{forms::soda_crystals, 120.0 * gram};
  recipe.meal = RecipeMeal{find_bulk("corn meal"), 1450.0 * gram};
  recipe.water_for_alum = 4.0 * litre;
  recipe.water_for_salt_and_soda = 2.0 * litre;
  recipe.coat = 4.0 * millimetre;
  recipe.coats = 2;
  return recipe;
}

inline Hide hide(std::string tag, std::string_view species, AreaMeasure measure) {
  return {std::move(tag), find_species(species), std::move(measure)};
}

/// Two goats and a calf by live weight, with the round recipe.
inline Day three_hides() {
  Day day;
  day.date = "2024-11-02";
  day.recipe = round_recipe();
  day.hides = {hide("a", "goat", LiveWeight{27.0 * kilogram}),
               hide("b", "goat", LiveWeight{8.0 * kilogram}),
               hide("c", "calf", LiveWeight{64.0 * kilogram})};
  return day;
}

inline Batch batch_of(const Day &day) {
  auto batch = make_batch(day);
  REQUIRE_MESSAGE(batch.ok(), batch.problem().found);
  return batch.value();
}

inline Mass mass_of_role(const Batch &batch, Role role) {
  Mass sum = 0.0 * kilogram;
  for (const auto &ingredient : batch.ingredients)
    if (ingredient.role == role) sum += ingredient.mass;
  return sum;
}

inline Bag bag(const Form &form) { return {form}; }
inline Bag bag(const Form &form, Mass amount) { return {form, nullptr, amount}; }
inline Bag priced(const Form &form, double a_kilogram) {
  return {form, nullptr, std::nullopt, a_kilogram * tender / kilogram};
}
inline Bag priced(const Form &form, double a_kilogram, Mass amount) {
  return {form, nullptr, amount, a_kilogram * tender / kilogram};
}

} // namespace whittaw_test

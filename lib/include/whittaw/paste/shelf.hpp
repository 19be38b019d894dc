// What stands on the shelf, and what is drawn from it.
#pragma once

#include <whittaw/quantity/money.hpp>
#include <whittaw/substance/bulk_density.hpp>
#include <whittaw/substance/form.hpp>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace whittaw {

/// One bag, box or jar.
struct Bag {
  Form form;                                 ///< of alum, salt or soda; of meal: role only
  const BulkRow *grain = nullptr;            ///< for measuring by scoop; null if not known
  std::optional<Mass> amount = std::nullopt; ///< plenty when not stated
  std::optional<PricePerMass> price = std::nullopt;
  bool iodized = false;
  std::string label = {}; ///< the user's own name for it
};

/// A mass drawn from a bag; no bag means it is still to be bought, in the recipe's own form.
struct Draw {
  std::optional<std::size_t> bag = std::nullopt;
  Form form;
  Mass mass = 0.0 * kilogram;
};

struct Drawn {
  std::vector<Draw> draws;
  /// What the shelf lacks, as a mass of the recipe's own form; zero when there is enough.
  Mass missing = 0.0 * kilogram;
};

/// A rest of a part smaller than this is not worth opening another bag for: an assumption.
inline constexpr Share negligible_share{0.005};

/// Draws `wanted` of the recipe's form from the bags of its role, each by what it brings of the
/// active part (see times_as_strong): cheapest first where every such bag is priced, otherwise the
/// recipe's own form first, then as listed; iodized salt after all other. Taking the cheapest first
/// costs least, for each bag costs in proportion to what it brings. With no bag of the role the
/// recipe's form is taken as bought for the day.
inline Drawn draw(const Form &recipe_form, Mass wanted, const std::vector<Bag> &shelf) {
  std::vector<std::size_t> bags;
  bool all_priced = true;
  for (std::size_t i = 0; i < shelf.size(); ++i) {
    if (shelf[i].form.role != recipe_form.role) continue;
    bags.push_back(i);
    all_priced = all_priced && shelf[i].price.has_value();
  }
  if (bags.empty()) return {{{std::nullopt, recipe_form, wanted}}, 0.0 * kilogram};

  // Lower is drawn sooner: the price of what stands for 1 kg of the recipe's form.
  const auto order = [&](std::size_t i) {
    const Bag &bag = shelf[i];
    const double bag_mass = times_as_strong(recipe_form, bag.form);
    if (all_priced) return count(cost_of(*bag.price, bag_mass * kilogram), tender);
    return bag.form.name == recipe_form.name ? 0.0 : 1.0;
  };
  std::stable_sort(bags.begin(), bags.end(), [&](std::size_t a, std::size_t b) {
    if (shelf[a].iodized != shelf[b].iodized) return shelf[b].iodized;
    return order(a) < order(b);
  });

  Drawn drawn;
  Mass left = wanted;
  for (const std::size_t i : bags) {
    if (left <= negligible_share.value * wanted) {
      left = 0.0 * kilogram;
      break;
    }
    const Bag &bag = shelf[i];
    const double strength = times_as_strong(recipe_form, bag.form);
    Mass mass = strength * left;
    if (bag.amount && mass > *bag.amount) {
      mass = *bag.amount;
      left -= mass / strength;
    } else {
      left = 0.0 * kilogram;
    }
    drawn.draws.push_back({i, bag.form, mass});
  }
  if (left > negligible_share.value * wanted) drawn.missing = left;
  return drawn;
}

} // namespace whittaw

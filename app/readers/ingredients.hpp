// Reads what a bag or a recipe line says of its chemical.
#pragma once

#include "fields.hpp"

#include <whittaw/paste/recipe.hpp>
#include <whittaw/paste/shelf.hpp>

namespace whittaw::app {

/// The names a person gives to alum, soda and the rest, whose forms further keys tell.
enum class ChemicalKind {
  potassium_alum,
  ammonium_alum,
  aluminium_sulfate,
  washing_soda,
  sodium_bicarbonate,
  salt,
};

struct ChemicalRow {
  std::string_view name;
  ChemicalKind kind;
};

inline constexpr std::array<ChemicalRow, 6> chemical_table{{
    {"potassium alum", ChemicalKind::potassium_alum},
    {"ammonium alum", ChemicalKind::ammonium_alum},
    {"aluminium sulfate", ChemicalKind::aluminium_sulfate},
    {"washing soda", ChemicalKind::washing_soda},
    {"sodium bicarbonate", ChemicalKind::sodium_bicarbonate},
    {"salt", ChemicalKind::salt},
}};

/// The form of a chemical from its table: `hydrate` or `alumina` for aluminium sulfate, `form` for
/// washing soda. There is no default: the mistake costs a batch.
std::optional<Form> take_form(Fields &fields, ChemicalKind kind);

/// What to say of a word that several rows fit, as "alum" or "soda"; empty for any other.
std::string ambiguous_chemical(std::string_view word);

struct RecipeAmount {
  Mass mass = 0.0 * kilogram;
  Spread spread; ///< where it was given by the cup
};

/// An amount by mass, or by volume of a `grain` whose bulk density is published.
std::optional<RecipeAmount> take_amount(Fields &fields, std::string_view key, const BulkRow *grain);

/// The row of bulk_table named by `key`, by any of its names.
const BulkRow *take_grain(Fields &fields, std::string_view key, std::optional<Role> role);

} // namespace whittaw::app

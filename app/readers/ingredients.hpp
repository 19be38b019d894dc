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

/// An amount by mass, or by volume of a `grain` whose bulk density is published.
std::optional<Mass> take_amount(Fields &fields, std::string_view key, const BulkRow *grain);

/// The row of bulk_table named by `key`, by any of its names.
const BulkRow *take_grain(Fields &fields, std::string_view key, std::optional<Role> role);

} // namespace whittaw::app

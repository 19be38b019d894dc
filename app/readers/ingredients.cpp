#include "ingredients.hpp"

#include <fmt/format.h>

namespace whittaw::app {

namespace {

Result<MassFraction> read_alumina(std::string_view text) {
  return read_fraction<MassFractionKind>(text, {0.05}, alumina_of_anhydrous_sulfate);
}

std::optional<Form> take_sulfate(Fields &fields) {
  const Node *hydrate = fields.find("hydrate");
  const Node *alumina = fields.find("alumina");
  constexpr std::string_view remedy =
      "say which it is, from the label: hydrate = 14, 16 or 18, or alumina = \"17 %\" (mass of "
      "Al2O3)";
  if (hydrate != nullptr && alumina != nullptr) {
    fields.reading.refuse(alumina->place, "both hydrate and alumina are given", "give one of them");
    return std::nullopt;
  }
  if (alumina != nullptr) {
    const auto fraction = take(fields, "alumina", &read_alumina);
    if (!fraction) return std::nullopt;
    return aluminium_sulfate_of_alumina(*fraction);
  }
  if (hydrate == nullptr) {
    missing(fields, "the form of the aluminium sulfate", remedy);
    return std::nullopt;
  }
  switch (hydrate->type == Node::Type::integer ? hydrate->integer : 0) {
  case 14: return forms::aluminium_sulfate_14;
  case 16: return forms::aluminium_sulfate_16;
  case 18: return forms::aluminium_sulfate_18;
  default:
    fields.reading.refuse(hydrate->place, "hydrate: not a form of aluminium sulfate known here",
                          std::string(remedy));
    return std::nullopt;
  }
}

struct SodaRow {
  std::string_view name;
  Form form;
};
constexpr std::array<SodaRow, 3> soda_table{{
    {"decahydrate", forms::soda_crystals},
    {"monohydrate", forms::soda_monohydrate},
    {"anhydrous", forms::soda_anhydrous},
}};

} // namespace

std::optional<Form> take_form(Fields &fields, ChemicalKind kind) {
  const auto only_for = [&](std::string_view key, ChemicalKind wanted, std::string_view name) {
    if (const Node *node = fields.find(key); node != nullptr && kind != wanted)
      fields.reading.refuse(node->place, fmt::format("{} is said of {} only", key, name),
                            "leave it out, or check the kind");
  };
  only_for("hydrate", ChemicalKind::aluminium_sulfate, "aluminium sulfate");
  only_for("alumina", ChemicalKind::aluminium_sulfate, "aluminium sulfate");
  only_for("form", ChemicalKind::washing_soda, "washing soda");
  only_for("iodized", ChemicalKind::salt, "salt");
  if (fields.reading.fault) return std::nullopt;
  switch (kind) {
  case ChemicalKind::potassium_alum: return forms::potassium_alum;
  case ChemicalKind::ammonium_alum: return forms::ammonium_alum;
  case ChemicalKind::sodium_bicarbonate: return forms::sodium_bicarbonate;
  case ChemicalKind::salt: return forms::salt;
  case ChemicalKind::aluminium_sulfate: return take_sulfate(fields);
  case ChemicalKind::washing_soda: break;
  }
  if (fields.find("form") == nullptr) {
    missing(fields, "the form of the washing soda",
            "say which it is, from the label: form = \"decahydrate\" (crystals), \"monohydrate\" "
            "or \"anhydrous\" (powder, 2.7 times as strong as crystals)");
    return std::nullopt;
  }
  const auto *row =
      take_named(fields, "form", soda_table, [](const SodaRow &each) { return each.name; });
  if (row == nullptr) return std::nullopt;
  return row->form;
}

std::string ambiguous_chemical(std::string_view word) {
  if (word == "alum")
    return "read the label: potassium alum, ammonium alum and aluminium sulfate are three salts of "
           "different strength";
  if (word == "soda")
    return "read the label: washing soda (and its form) or sodium bicarbonate, which is no washing "
           "soda";
  return "";
}

const BulkRow *take_grain(Fields &fields, std::string_view key, std::optional<Role> role) {
  const auto text = take_text(fields, key);
  if (!text) return nullptr;
  const BulkRow *row = find_bulk(*text);
  if (row != nullptr && (!role || row->role == *role)) return row;
  std::vector<std::string_view> names;
  std::string all;
  for (const auto &each : bulk_table) {
    if (role && each.role != *role) continue;
    names.push_back(each.name);
    all += (all.empty() ? "" : ", ") + std::string(each.name);
  }
  fields.reading.refuse(fields.find(key)->place, fmt::format("{}: '{}' is not known", key, *text),
                        did_you_mean(*text, names) + "known: " + all);
  return nullptr;
}

std::optional<RecipeAmount> take_amount(Fields &fields, std::string_view key,
                                        const BulkRow *grain) {
  const Node *node = fields.find(key);
  if (node == nullptr) return std::nullopt;
  if (node->type == Node::Type::text) {
    if (const auto volume = read_volume(node->text)) {
      const auto density = grain != nullptr ? published_density(*grain) : std::nullopt;
      if (density)
        return RecipeAmount{mass_of(*volume, density->density).value, density->density.spread()};
      fields.reading.refuse(
          node->place, fmt::format("{}: a volume, and the weight of a cup of it is not known", key),
          "write a mass, as 850 g, or name its grain, as grain = \"table salt\"");
      return std::nullopt;
    }
  }
  const auto mass = take(fields, key, &read_mass);
  if (!mass) return std::nullopt;
  return RecipeAmount{*mass, {0.0}};
}

} // namespace whittaw::app

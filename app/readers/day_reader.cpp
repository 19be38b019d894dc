#include "day_reader.hpp"

#include "../files/files.hpp"
#include "dates.hpp"
#include "ingredients.hpp"
#include "recipe_reader.hpp"
#include "workshop_reader.hpp"

#include <whittaw/quantity/read_money.hpp>

#include <fmt/format.h>

#include <unordered_map>

namespace whittaw::app {

namespace {

Result<Share> read_loss(std::string_view text) {
  return read_fraction<ShareKind>(text, {0.0}, {0.5});
}
Result<Price> read_any_price(std::string_view text) { return read_price(text); }

void read_date(Fields &fields, Day &day) {
  const Node *node = fields.find("date");
  if (node == nullptr) {
    missing(fields, "date", "write date = 2026-11-07");
    return;
  }
  if ((node->type != Node::Type::date && node->type != Node::Type::text) || !is_date(node->text))
    fields.reading.refuse(node->place, "date: not a date", "write date = 2026-11-07");
  day.date = node->text;
}

std::optional<Tape> read_tape(Reading &reading, const Node &node) {
  Fields fields = open_table(reading, node, "tape", {"length", "widths", "width", "at"});
  Tape tape;
  if (fields.find("length") == nullptr)
    missing(fields, "the tape's length", "write tape = { length = \"110 cm\", widths = [...] }");
  tape.length = take(fields, "length", &read_some_length).value_or(metre);
  const auto list = [&](std::string_view key, std::vector<Length> &to) {
    const Node *lengths = fields.find(key);
    if (lengths == nullptr) return;
    if (lengths->type == Node::Type::text) {
      if (const auto one = take_node(reading, *lengths, key, &read_some_length)) to.push_back(*one);
      return;
    }
    if (lengths->type != Node::Type::array || lengths->items.size() > 1000) {
      reading.refuse(lengths->place, fmt::format("{}: a list of lengths is wanted", key),
                     fmt::format("write {} = [\"40 cm\", \"55 cm\"]", key));
      return;
    }
    for (const Node &item : lengths->items)
      if (const auto one = take_node(reading, item, key, &read_any_length)) to.push_back(*one);
  };
  if (fields.find("width") != nullptr && fields.find("widths") != nullptr)
    reading.refuse(fields.find("width")->place, "both width and widths are given",
                   "give one of them");
  list("width", tape.widths);
  list("widths", tape.widths);
  list("at", tape.at);
  if (reading.fault) return std::nullopt;
  auto checked = check_tape(tape);
  if (!checked) {
    reading.refuse(node.place, "tape: " + checked.problem().found, checked.problem().remedy);
    return std::nullopt;
  }
  return *checked;
}

std::optional<AreaMeasure> read_measure(Fields &fields) {
  constexpr std::array<std::string_view, 4> sources{"live_weight", "green_weight", "tape", "area"};
  std::vector<std::string_view> given;
  for (const auto key : sources)
    if (fields.find(key) != nullptr) given.push_back(key);
  if (given.empty()) {
    missing(fields, "the hide's size",
            "give one of live_weight, green_weight, tape = { length, widths } or area");
    return std::nullopt;
  }
  if (given.size() > 1) {
    fields.reading.refuse(fields.find(given[1])->place,
                          fmt::format("both {} and {} are given", given[0], given[1]),
                          "keep the better one: area, then tape, then a weight");
    return std::nullopt;
  }
  if (given[0] == "live_weight") {
    const auto mass = take(fields, "live_weight", &read_mass);
    if (mass) return LiveWeight{*mass};
  } else if (given[0] == "green_weight") {
    const auto mass = take(fields, "green_weight", &read_mass);
    if (mass) return GreenWeight{*mass};
  } else if (given[0] == "tape") {
    if (auto tape = read_tape(fields.reading, *fields.find("tape"))) return *tape;
  } else if (const auto area = take(fields, "area", &read_area)) {
    return KnownArea{*area};
  }
  return std::nullopt;
}

Hide read_hide(Reading &reading, const Node &node, const Workshop &workshop) {
  Fields fields = open_table(reading, node, "hide",
                             {"tag", "species", "live_weight", "green_weight", "mass_by_area",
                              "tape", "area", "fleshed_weight", "trim", "owner"});
  Hide hide;
  if (fields.find("tag") == nullptr) missing(fields, "the hide's tag", "write tag = \"G1\"");
  hide.tag = take_text(fields, "tag").value_or("");
  if (fields.find("tag") != nullptr && (hide.tag.empty() || hide.tag.size() > 200))
    reading.refuse(fields.find("tag")->place, "tag: empty or longer than 200 bytes",
                   "write a short tag, as tag = \"G1\"");
  const auto species = take_text(fields, "species");
  if (!species) {
    missing(fields, "the hide's species", "write species = \"goat\"");
    return hide;
  }
  const auto row = named_species(*species);
  if (!row) {
    reading.refuse(fields.find("species")->place, "species: " + row.problem().found,
                   row.problem().remedy);
    return hide;
  }
  hide.species = *row;
  const auto measure = read_measure(fields);
  if (!measure) return hide;
  hide.measure = *measure;
  hide.own_areal_mass = take(fields, "mass_by_area", &read_areal_mass);
  if (!hide.own_areal_mass) hide.own_areal_mass = own_areal_mass(workshop, hide.species);
  hide.fleshed_weight = take(fields, "fleshed_weight", &read_mass);
  hide.owner = take_text(fields, "owner").value_or("");
  if (const auto *trim =
          take_named(fields, "trim", trim_table, [](const TrimRow &each) { return each.name; }))
    hide.trim = trim->trim;
  // Asked here, where the place is known, rather than by the batch later.
  if (const auto area = hide_area(hide); !area)
    reading.refuse(node.place, fmt::format("hide '{}': {}", hide.tag, area.problem().found),
                   area.problem().remedy);
  return hide;
}

Bag read_bag(Reading &reading, const Node &node, std::string &currency) {
  Fields fields = open_table(
      reading, node, "shelf",
      {"kind", "hydrate", "alumina", "form", "iodized", "grain", "amount", "price", "label"});
  Bag bag;
  const auto kind = take_text(fields, "kind");
  if (!kind) {
    missing(fields, "the kind of ingredient", "write kind = \"potassium alum\"");
    return bag;
  }
  if (const std::string hint = ambiguous_chemical(*kind); !hint.empty()) {
    reading.refuse(fields.find("kind")->place,
                   fmt::format("kind: '{}' could be several salts", *kind), hint);
    return bag;
  }
  std::vector<std::string_view> names;
  const ChemicalRow *chemical = nullptr;
  for (const auto &row : chemical_table) {
    names.push_back(row.name);
    if (row.name == *kind) chemical = &row;
  }
  if (chemical != nullptr) {
    const auto form = take_form(fields, chemical->kind);
    if (!form) return bag;
    bag.form = *form;
  } else {
    const BulkRow *meal = find_bulk(*kind);
    if (meal == nullptr || meal->role != Role::meal) {
      for (const auto &row : bulk_table)
        if (row.role == Role::meal) names.push_back(row.name);
      std::string all;
      for (const auto name : names) all += (all.empty() ? "" : ", ") + std::string(name);
      reading.refuse(fields.find("kind")->place, fmt::format("kind: '{}' is not known", *kind),
                     did_you_mean(*kind, names) + "known: " + all);
      return bag;
    }
    bag.form = detail::meal_form(*meal);
    bag.grain = meal;
    for (const std::string_view key : {"hydrate", "alumina", "form", "iodized", "grain"})
      if (const Node *extra = fields.find(key))
        reading.refuse(extra->place, fmt::format("{} is not said of a meal", key), "leave it out");
  }
  if (const BulkRow *grain = take_grain(fields, "grain", bag.form.role)) bag.grain = grain;
  if (bag.form.role == Role::salt) {
    const auto iodized = take_flag(fields, "iodized");
    if (!iodized)
      missing(fields, "whether the salt is iodized",
              "write iodized = false, or iodized = true, from the label");
    bag.iodized = iodized.value_or(false);
  }
  bag.amount = take(fields, "amount", &read_mass);
  bag.label = take_text(fields, "label").value_or("");
  if (const auto price = take(fields, "price", &read_any_price)) {
    bag.price = price->per_mass;
    if (currency.empty()) currency = price->currency;
    if (currency != price->currency)
      reading.refuse(fields.find("price")->place,
                     fmt::format("price: {} after prices in {}", price->currency, currency),
                     "write all prices of a day in one currency");
  }
  return bag;
}

void read_bucket(Reading &reading, const Node &node, Day &day) {
  Fields fields = open_table(reading, node, "bucket", {"material", "volume"});
  if (const auto *row = take_named(fields, "material", vessel_table,
                                   [](const VesselRow &each) { return each.name; }))
    day.bucket.material = row;
  day.bucket.volume = take(fields, "volume", &read_some_volume);
}

void read_hides(Fields &fields, Day &day, const Workshop &workshop) {
  const auto hides = take_tables(fields, "hide");
  if (hides.empty()) {
    fields.reading.refuse({}, "the day has no hides",
                          "add [[hide]] with tag, species and a measure");
    return;
  }
  std::unordered_map<std::string, Place> seen;
  day.hides.reserve(hides.size());
  for (const Node &node : hides) {
    Hide hide = read_hide(fields.reading, node, workshop);
    if (fields.reading.fault) return;
    if (!seen.emplace(hide.tag, node.place).second) {
      fields.reading.refuse(
          node.place, fmt::format("tag '{}' is on two hides", hide.tag),
          fmt::format("give each hide its own tag; the first is in line {}", seen[hide.tag].line));
      return;
    }
    day.hides.push_back(std::move(hide));
  }
}

Day read_day_table(Reading &reading, Fields &fields, const Workshop &workshop) {
  Day day;
  read_date(fields, day);
  day.water_temperature = take(fields, "water_temperature", &read_water_temperature);
  day.coat = take(fields, "coat", &read_some_length);
  if (const auto coats = take_integer(fields, "coats", 1, 20)) day.coats = static_cast<int>(*coats);
  day.working_loss = take(fields, "working_loss", &read_loss).value_or(usual_working_loss);
  day.chance = take(fields, "chance", &read_any_chance).value_or(usual_chance);
  if (const Node *bucket = fields.find("bucket")) read_bucket(reading, *bucket, day);
  for (const Node &node : take_tables(fields, "shelf")) {
    day.shelf.push_back(read_bag(reading, node, day.currency));
    if (reading.fault) return day;
  }
  read_hides(fields, day, workshop);
  return day;
}

} // namespace

Result<Chance> read_any_chance(std::string_view text) {
  return read_fraction<ChanceKind>(text, {0.5}, {0.999});
}

Result<Temperature> read_water_temperature(std::string_view text) {
  auto temperature = read_temperature(text);
  if (temperature && (*temperature < solubility_from || *temperature > solubility_to))
    return Problem{"outside 0 to 60 \u00b0C, where the solubility tables end",
                   "give a temperature between, as \"15 C\""};
  return temperature;
}

Result<const Species *> named_species(std::string_view name) {
  if (const Species *species = find_species(name)) return species;
  std::vector<std::string_view> names;
  std::string all;
  for (const auto &species : species_table) {
    if (species.only_when_asked) continue;
    names.push_back(species.name);
    all += (all.empty() ? "" : ", ") + std::string(species.name);
    for (const auto other : species.also_called)
      if (!other.empty()) names.push_back(other);
  }
  return Problem{fmt::format("'{}' is not known", name),
                 did_you_mean(name, names) + "known: " + all +
                     "; for another animal, 'mammal' makes a rough guess"};
}

Outcome<DayFile> read_day(const std::string &path,
                          const std::optional<std::string> &workshop_path) {
  auto text = read_file(path);
  if (!text) return text.problem();
  const SourceText source{path == "-" ? "standard input" : path, *text};
  const std::string folder = folder_of(path);
  auto root = read_toml(source);
  if (!root) return root.problem();
  Reading reading{source};
  Fields fields = open_table(reading, *root, "the day",
                             {"date", "recipe", "workshop", "water_temperature", "coat", "coats",
                              "working_loss", "chance", "bucket", "shelf", "hide"});
  if (reading.fault) return *reading.fault;

  auto named = take_text(fields, "workshop");
  if (named && !named->starts_with('/') && !folder.empty()) named = folder + "/" + *named;
  if (reading.fault) return *reading.fault;
  if (path == "-" && workshop_path == std::optional<std::string>("-"))
    return Fault{Status::usage, "--workshop", "standard input is the day already", "", 0,
                 "name a file"};
  auto workshop = find_workshop(workshop_path ? workshop_path : named, folder);
  if (!workshop) return workshop.problem();

  const auto recipe_name = take_text(fields, "recipe");
  if (!recipe_name && !reading.fault)
    missing(fields, "recipe", "write recipe = \"bulletin-1334\", or a file of your own");
  if (reading.fault) return *reading.fault;
  auto recipe = find_recipe(*recipe_name, folder);
  if (!recipe) {
    Fault fault = recipe.problem();
    if (fault.place.empty())
      fault = fault_at(source, fields.find("recipe")->place, fault.found, fault.remedy);
    return fault;
  }
  DayFile file{read_day_table(reading, fields, *workshop), *workshop, {path}};
  if (workshop_path) file.inputs.push_back(*workshop_path);
  if (named) file.inputs.push_back(*named);
  file.inputs.push_back((folder.empty() ? "" : folder + "/") + "workshop.toml");
  file.inputs.push_back((folder.empty() || recipe_name->starts_with('/') ? "" : folder + "/") +
                        *recipe_name);
  if (reading.fault) return *reading.fault;
  file.day.recipe = *recipe;
  return file;
}

} // namespace whittaw::app

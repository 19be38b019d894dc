#include "recipe_reader.hpp"

#include "../files/files.hpp"
#include "ingredients.hpp"

#include <fmt/format.h>

namespace whittaw::app {

namespace {

Result<Offer> read_offer(std::string_view text) {
  return read_fraction<OfferKind>(text, {0.001}, {2.0});
}

struct MarkRow {
  std::string_view name;
  Mark mark;
};
constexpr std::array<MarkRow, 4> mark_table{{
    {"seen", Mark::seen},
    {"memory", Mark::memory},
    {"practice", Mark::practice},
    {"own", Mark::own},
}};

std::optional<RecipeAmount> require_amount(Fields &fields, const BulkRow *grain) {
  if (fields.find("amount") == nullptr)
    missing(fields, "amount", "write the amount, as amount = \"1 lb\"");
  return take_amount(fields, "amount", grain);
}

void read_alum(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields =
      open_table(reading, node, "alum", {"kind", "hydrate", "alumina", "amount", "grain"});
  if (fields.find("kind") == nullptr)
    missing(fields, "the kind of alum",
            "write kind = \"potassium alum\", \"ammonium alum\" or \"aluminium sulfate\"");
  if (const auto word = take_text(fields, "kind"); word && !ambiguous_chemical(*word).empty())
    reading.refuse(fields.find("kind")->place, "kind: '" + *word + "' could be several salts",
                   ambiguous_chemical(*word));
  const auto *row = take_named(fields, "kind", std::span(chemical_table).first(3),
                               [](const ChemicalRow &each) { return each.name; });
  const BulkRow *grain = take_grain(fields, "grain", Role::alum);
  const auto form = row != nullptr ? take_form(fields, row->kind) : std::nullopt;
  const auto mass = require_amount(fields, grain);
  if (form && mass) recipe.alum = {*form, mass->mass, mass->spread};
}

void read_salt(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields = open_table(reading, node, "salt", {"kind", "amount", "grain"});
  constexpr std::array<std::string_view, 1> kinds{"non-iodized"};
  take_named(fields, "kind", kinds, [](std::string_view each) { return each; });
  const BulkRow *grain = take_grain(fields, "grain", Role::salt);
  if (const auto mass = require_amount(fields, grain))
    recipe.salt = {forms::salt, mass->mass, mass->spread};
}

void read_soda(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields = open_table(reading, node, "soda", {"kind", "form", "amount", "grain"});
  ChemicalKind kind = ChemicalKind::washing_soda;
  if (const auto *row = take_named(fields, "kind", std::span(chemical_table).subspan(3, 2),
                                   [](const ChemicalRow &each) { return each.name; }))
    kind = row->kind;
  const BulkRow *grain = take_grain(fields, "grain", Role::soda);
  const auto form = take_form(fields, kind);
  const auto mass = require_amount(fields, grain);
  if (form && mass) recipe.soda = RecipePart{*form, mass->mass, mass->spread};
}

void read_meal(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields = open_table(reading, node, "meal", {"kind", "amount"});
  if (fields.find("kind") == nullptr)
    missing(fields, "the kind of meal", "write kind = \"wheat flour\"");
  const BulkRow *kind = take_grain(fields, "kind", Role::meal);
  const auto mass = require_amount(fields, kind);
  if (kind != nullptr && mass) recipe.meal = RecipeMeal{kind, mass->mass};
}

void read_water(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields = open_table(reading, node, "water", {"for_alum", "for_salt_and_soda"});
  recipe.water_for_alum = take(fields, "for_alum", &read_some_volume).value_or(0.0 * litre);
  recipe.water_for_salt_and_soda =
      take(fields, "for_salt_and_soda", &read_some_volume).value_or(0.0 * litre);
  if (!(recipe.water_for_alum > 0.0 * litre))
    missing(fields, "the water that the alum is dissolved in",
            "write for_alum = \"1 US gal\", and for_salt_and_soda if they have their own");
}

void read_paste(Reading &reading, const Node &node, Recipe &recipe) {
  Fields fields = open_table(reading, node, "paste", {"coat", "coats", "time_on_hide", "offer"});
  if (fields.find("coat") == nullptr)
    missing(fields, "the thickness of a coat", "write coat = \"3 mm\"");
  recipe.coat = take(fields, "coat", &read_some_length).value_or(metre);
  recipe.coats = static_cast<int>(take_integer(fields, "coats", 1, 20).value_or(1));
  if (fields.find("time_on_hide") == nullptr)
    missing(fields, "the time on the hide", "write time_on_hide = \"7 days\"");
  recipe.time_on_hide = take(fields, "time_on_hide", &read_duration).value_or(days);
  const Node *offer = fields.find("offer");
  if (offer == nullptr) return;
  if (offer->type != Node::Type::array || offer->items.size() != 2) {
    reading.refuse(offer->place, "offer: two shares are wanted, low and high",
                   "write offer = [\"8 %\", \"12 %\"]");
    return;
  }
  const auto low = take_node(reading, offer->items[0], "offer", &read_offer);
  const auto high = take_node(reading, offer->items[1], "offer", &read_offer);
  if (!low || !high) return;
  if (*high < *low)
    reading.refuse(offer->place, "offer: the low share is above the high one",
                   "write the low one first");
  recipe.offer = OfferRange{*low, *high};
}

Recipe read_recipe(Reading &reading, const Node &root) {
  Recipe recipe;
  Fields fields = open_table(reading, root, "a recipe",
                             {"name", "title", "source", "mark", "notes", "alum", "salt", "soda",
                              "meal", "water", "paste", "extra"});
  const auto require = [&](std::string_view key, std::string_view remedy) {
    const Node *node = fields.find(key);
    if (node == nullptr) missing(fields, key, remedy);
    if (node != nullptr && node->type == Node::Type::text && node->text.empty())
      reading.refuse(node->place, std::string(key) + ": empty", std::string(remedy));
    return node;
  };
  require("name", "write name = \"my-paste\"");
  require("source", "name where the recipe is from: source = \"...\"");
  recipe.name = take_text(fields, "name").value_or("");
  recipe.title = take_text(fields, "title").value_or(recipe.name);
  recipe.source = take_text(fields, "source").value_or("");
  if (const auto *mark =
          take_named(fields, "mark", mark_table, [](const MarkRow &each) { return each.name; }))
    recipe.mark = mark->mark;
  recipe.notes = take_texts(fields, "notes");
  if (const Node *node = require("alum", "add [alum] with kind and amount"))
    read_alum(reading, *node, recipe);
  if (const Node *node = require("salt", "add [salt] with amount"))
    read_salt(reading, *node, recipe);
  if (const Node *node = fields.find("soda")) read_soda(reading, *node, recipe);
  if (const Node *node = fields.find("meal")) read_meal(reading, *node, recipe);
  if (const Node *node = require("water", "add [water] with for_alum"))
    read_water(reading, *node, recipe);
  if (const Node *node = require("paste", "add [paste] with coat and time_on_hide"))
    read_paste(reading, *node, recipe);
  for (const Node &node : take_tables(fields, "extra")) {
    Fields extra = open_table(reading, node, "extra", {"name", "amount"});
    if (extra.find("name") == nullptr) missing(extra, "name", "write name = \"egg yolk\"");
    const auto mass = require_amount(extra, nullptr);
    if (mass) recipe.extras.push_back({take_text(extra, "name").value_or(""), mass->mass});
  }
  return recipe;
}

} // namespace

Outcome<Recipe> parse_recipe(const SourceText &source) {
  auto root = read_toml(source);
  if (!root) return root.problem();
  Reading reading{source};
  Recipe recipe = read_recipe(reading, *root);
  if (reading.fault) return *reading.fault;
  return recipe;
}

Outcome<Recipe> find_recipe(const std::string &name, const std::string &folder) {
  if (name == "-" || name.find('/') != std::string::npos || name.ends_with(".toml")) {
    const bool as_is = name == "-" || name.starts_with('/') || folder.empty();
    const std::string path = as_is ? name : folder + "/" + name;
    auto text = read_file(path);
    if (!text) return text.problem();
    return parse_recipe({path, *text});
  }
  std::vector<std::string_view> names;
  std::string all;
  for (const auto &recipe : built_in_recipes()) {
    if (recipe.name == name)
      return parse_recipe({fmt::format("recipe {}", name), std::string(recipe.text)});
    names.push_back(recipe.name);
    all += (all.empty() ? "" : ", ") + std::string(recipe.name);
  }
  return Fault{Status::bad_data,
               "",
               fmt::format("no recipe is called '{}'", name),
               "",
               0,
               did_you_mean(name, names) + "known: " + all + "; a file of your own ends in .toml"};
}

} // namespace whittaw::app

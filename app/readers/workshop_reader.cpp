#include "workshop_reader.hpp"

#include "../files/files.hpp"
#include "day_reader.hpp"
#include "ingredients.hpp"

#include <fmt/format.h>

#include <unistd.h>

namespace whittaw::app {

namespace {

Result<Spread> read_tolerance(std::string_view text) {
  return read_fraction<SpreadKind>(text, {0.001}, {0.5});
}

void read_scoops(Fields &fields, Workshop &workshop) {
  const Node *node = fields.find("scoops");
  for (const auto &text : take_texts(fields, "scoops")) {
    const auto volume = read_volume(text);
    if (!volume) {
      fields.reading.refuse(node->place, "scoops: " + volume.problem().found,
                            volume.problem().remedy);
      return;
    }
    workshop.scoops.push_back({*volume, text});
  }
  if (workshop.scoops.size() > 20)
    fields.reading.refuse(node->place, "scoops: more than 20", "list those that are used");
}

void read_scale(Fields &fields, Workshop &workshop) {
  const auto step = take(fields, "scale", &read_mass);
  if (!step) return;
  if (*step > 0.1 * kilogram)
    fields.reading.refuse(fields.find("scale")->place, "scale: steps of more than 100 g",
                          "write the smallest step that the scale shows, as scale = \"1 g\"");
  workshop.scale = scale_of_step(*step);
}

void read_weighings(Fields &fields, Workshop &workshop) {
  for (const Node &node : take_tables(fields, "weighing")) {
    Fields weighing =
        open_table(fields.reading, node, "weighing", {"ingredient", "measure", "mass"});
    if (weighing.find("ingredient") == nullptr || weighing.find("measure") == nullptr ||
        weighing.find("mass") == nullptr)
      missing(weighing, "ingredient, measure or mass",
              "write ingredient = \"table salt\", measure = \"1 cup\", mass = \"292 g\"");
    const BulkRow *row = take_grain(weighing, "ingredient", std::nullopt);
    const auto volume = take(weighing, "measure", &read_some_volume);
    const auto mass = take(weighing, "mass", &read_mass);
    if (row == nullptr || !volume || !mass) return;
    const Density density = *mass / *volume;
    if (density < lightest_powder || density > heaviest_powder)
      weighing.reading.refuse(
          weighing.find("mass")->place,
          fmt::format("{} comes to {} g/mL, which no powder does", row->name,
                      write_significant(count(density, gram_per_millilitre), 3)),
          "check the mass and the measure");
    auto own = workshop.weighings.begin();
    while (own != workshop.weighings.end() && own->ingredient != row) ++own;
    if (own == workshop.weighings.end()) own = workshop.weighings.insert(own, {row, {}});
    own->weighings.push_back({*mass, *volume});
  }
}

void read_green(Fields &fields, Workshop &workshop) {
  for (const Node &node : take_tables(fields, "green")) {
    Fields green = open_table(fields.reading, node, "green", {"species", "mass_by_area"});
    if (green.find("species") == nullptr || green.find("mass_by_area") == nullptr)
      missing(green, "species or mass_by_area",
              "write species = \"goat\", mass_by_area = \"2.6 kg/m2\"");
    const auto name = take_text(green, "species");
    const auto figure = take(green, "mass_by_area", &read_areal_mass);
    if (!name || !figure) return;
    const auto species = named_species(*name);
    if (!species) {
      green.reading.refuse(green.find("species")->place, "species: " + species.problem().found,
                           species.problem().remedy);
      return;
    }
    workshop.green.push_back({*species, *figure});
  }
}

} // namespace

Outcome<Workshop> parse_workshop(const SourceText &source) {
  auto root = read_toml(source);
  if (!root) return root.problem();
  Reading reading{source};
  Workshop workshop;
  Fields fields = open_table(reading, *root, "the workshop",
                             {"scoops", "scale", "ratio_tolerance", "weighing", "green"});
  read_scoops(fields, workshop);
  read_scale(fields, workshop);
  workshop.ratio_tolerance =
      take(fields, "ratio_tolerance", &read_tolerance).value_or(usual_ratio_tolerance);
  read_weighings(fields, workshop);
  read_green(fields, workshop);
  if (reading.fault) return *reading.fault;
  return workshop;
}

std::string folder_of(const std::string &path) {
  const std::size_t slash = path.rfind('/');
  if (slash == std::string::npos) return "";
  return slash == 0 ? "/" : path.substr(0, slash);
}

Outcome<Workshop> find_workshop(const std::optional<std::string> &path, const std::string &folder) {
  std::string file = path.value_or((folder.empty() ? "" : folder + "/") + "workshop.toml");
  if (!path && ::access(file.c_str(), F_OK) != 0) return Workshop{};
  auto text = read_file(file);
  if (!text) return text.problem();
  return parse_workshop({file, *text});
}

} // namespace whittaw::app

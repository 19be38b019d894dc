// Prints a table of the library as Markdown, for the pages that show it.
#include <whittaw/whittaw.hpp>

#include <cstdio>
#include <cstring>
#include <string>

namespace {

using namespace whittaw;

void row(std::initializer_list<std::string> cells) {
  std::string line = "|";
  for (const auto &cell : cells) line += " " + cell + " |";
  std::puts(line.c_str());
}

void species() {
  row({"species", "also", "area from live weight W kg", "spread", "green kg/m\u00b2", "spread",
       "source of the area law"});
  row({"---", "---", "---", "---", "---", "---", "---"});
  for (const auto &each : species_table) {
    std::string others;
    for (const auto other : each.also_called)
      if (!other.empty()) others += (others.empty() ? "" : ", ") + std::string(other);
    std::string law = "none: tape it";
    std::string spread;
    std::string source = "no published equation found";
    if (each.weight_law) {
      law = write_significant(count(each.weight_law->coefficient, square_metre), 3) + " W^" +
            write_decimal(each.weight_law->exponent, 2);
      spread = write_percent(each.weight_law->spread, 2);
      source = write_source(each.weight_law->source);
    }
    row({std::string(each.name), others, law, spread,
         write_significant(count(each.green.areal_mass, kilogram_per_square_metre), 2),
         write_percent(each.green.spread, 2), source});
  }
}

void trims() {
  row({"trim", "kept", "spread", "cut off", "source"});
  row({"---", "---", "---", "---", "---"});
  for (const auto &each : trim_table)
    row({std::string(each.name), write_percent(each.kept, 2), write_percent(each.spread, 1),
         std::string(each.cut_off), write_source(each.source)});
}

void bulk() {
  row({"ingredient", "g in a level US cup", "source"});
  row({"---", "---", "---"});
  for (const auto &each : bulk_table) {
    const std::string range = each.high_grams_per_cup > 0.0
                                  ? write_significant(each.low_grams_per_cup, 3) + " to " +
                                        write_significant(each.high_grams_per_cup, 3)
                                  : "not found: weigh yours";
    row({std::string(each.name), range,
         each.high_grams_per_cup > 0.0 ? write_source(each.source) : ""});
  }
}

void solubilities() {
  std::string head = "| salt |";
  std::string rule = "|---|";
  for (const double celsius : solubility_columns) {
    head += " " + write_decimal(celsius, 0) + " \u00b0C |";
    rule += "---|";
  }
  std::puts((head + " source |").c_str());
  std::puts((rule + "---|").c_str());
  for (const auto &each : solubility_table) {
    std::string line = "| " + std::string(each.name) + " |";
    for (const double grams : each.grams_per_100_g)
      line += " " + write_significant(grams, 3) + " |";
    std::puts((line + " " + write_source(each.source) + " |").c_str());
  }
}

void forms_table() {
  row({"form", "g/mol", "mol Al/kg", "mol OH/kg", "water", "density g/mL"});
  row({"---", "---", "---", "---", "---", "---"});
  const auto per_kilogram = [](AmountPerMass amount) {
    return write_decimal(count(amount * kilogram, mole), 3);
  };
  for (const auto &each : forms::fixed) {
    const auto composition = read_formula(each.formula);
    row({std::string(each.name), write_decimal(count(molar_mass(*composition), gram_per_mole), 2),
         per_kilogram(each.aluminium), per_kilogram(each.hydroxide), write_percent(each.water, 3),
         write_decimal(count(each.crystal_density, gram_per_millilitre), 2)});
  }
}

void bands() {
  row({"band", "basicity up to", "meaning", "source"});
  row({"---", "---", "---", "---"});
  for (const auto &each : basicity_bands)
    row({std::string(each.name), each.up_to.value > 10.0 ? "above" : write_percent(each.up_to, 2),
         std::string(each.meaning), write_source(each.source)});
}

void uptake() {
  row({"part", "kept by the skin", "spread", "source"});
  row({"---", "---", "---", "---"});
  for (const auto &each : uptake_table)
    row({std::string(part_table[static_cast<std::size_t>(each.part)].name),
         write_percent(each.kept, 2), write_percent(each.sd, 2), write_source(each.source)});
}

void cautions() {
  row({"caution", "source"});
  row({"---", "---"});
  for (const auto &each : caution_table) row({std::string(each.text), write_source(each.source)});
}

} // namespace

int main(int count, char **words) {
  struct Table {
    const char *name;
    void (*print)();
  };
  const Table tables[] = {
      {"species", species},   {"trims", trims}, {"bulk", bulk},     {"solubilities", solubilities},
      {"forms", forms_table}, {"bands", bands}, {"uptake", uptake}, {"cautions", cautions}};
  for (const auto &table : tables) {
    if (count == 2 && std::strcmp(words[1], table.name) == 0) {
      table.print();
      return 0;
    }
  }
  return 64;
}

#include "entry_text.hpp"

#include "../readers/dates.hpp"

#include <whittaw/quantity/read.hpp>

#include <fmt/format.h>

#include <charconv>

namespace whittaw::app {

namespace {

/// A TOML basic string: quotes, backslashes and control characters escaped.
std::string quoted_text(std::string_view text) {
  std::string result = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      result += std::string("\\") + c;
    else if (byte < 0x20 || byte == 0x7F)
      result += fmt::format("\\u{:04X}", byte);
    else
      result += c;
  }
  return result + "\"";
}

bool by_mass(Part part) { return part == Part::meal || part == Part::other; }

/// Micromoles as "0.956195 mol", micrograms as "12.5 g", to the last count.
std::string write_count(Part part, std::int64_t micro) {
  const std::int64_t whole = micro / 1'000'000;
  const std::int64_t rest = micro % 1'000'000;
  return fmt::format("{}.{:06} {}", whole, rest, by_mass(part) ? "g" : "mol");
}

Result<std::int64_t> read_count(Part part, std::string_view text) {
  const auto wrong = [&] {
    return Problem{std::string(part_table[static_cast<std::size_t>(part)].name) + ": '" +
                       std::string(text) + "' is not an amount",
                   by_mass(part) ? "write it as \"12.500000 g\"" : "write it as \"0.956195 mol\""};
  };
  const std::string_view unit = by_mass(part) ? " g" : " mol";
  if (!text.ends_with(unit)) return wrong();
  const std::string_view number = text.substr(0, text.size() - unit.size());
  double value = 0.0;
  const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
  if (error != std::errc{} || end != number.data() + number.size() || !(value >= 0.0) ||
      value > 1e9)
    return wrong();
  return static_cast<std::int64_t>(std::llround(value * 1e6));
}

/// Takes a basic string of the plain kind off a line; false for any other.
bool plain_text(std::string_view value, std::string &text) {
  if (value.size() < 2 || value.front() != '"' || value.back() != '"') return false;
  value = value.substr(1, value.size() - 2);
  // What TOML forbids in a plain string, the parser is to refuse.
  for (const char c : value) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\' || byte < 0x20 || byte == 0x7F) return false;
  }
  if (!is_utf8(value)) return false;
  text = value;
  return true;
}

/// Reads `key = value` lines as the program writes them into nodes; false if a line is any other.
bool read_lines(std::string_view block, std::uint32_t line, Node &table) {
  table.type = Node::Type::table;
  table.place = {line, 1};
  block = block.substr(std::min(block.size(), block.find('\n') + 1));
  while (!block.empty()) {
    ++line;
    const std::size_t end = block.find('\n');
    const std::string_view text = block.substr(0, end);
    block = end == std::string_view::npos ? std::string_view() : block.substr(end + 1);
    if (text.empty()) continue;
    const std::size_t equals = text.find(" = ");
    if (equals == std::string_view::npos || equals == 0) return false;
    const std::string_view key = text.substr(0, equals);
    if (key.find_first_not_of("abcdefghijklmnopqrstuvwxyz_") != std::string_view::npos)
      return false;
    for (const auto &entry : table.entries)
      if (entry.key == key) return false; // the parser words it
    const std::string_view value = text.substr(equals + 3);
    Node node;
    node.place = {line, static_cast<std::uint32_t>(equals + 4)};
    if (value == "true" || value == "false") {
      node.type = Node::Type::boolean;
      node.integer = value == "true" ? 1 : 0;
    } else if (key == "at") {
      node.type = Node::Type::date;
      node.text = value;
    } else if (!plain_text(value, node.text)) {
      node.type = Node::Type::integer;
      const auto [stop, error] =
          std::from_chars(value.data(), value.data() + value.size(), node.integer);
      if (error != std::errc{} || stop != value.data() + value.size()) return false;
    }
    table.entries.push_back({std::string(key), std::move(node), {line, 1}});
  }
  return true;
}

Result<MassFraction> read_moisture(std::string_view text) {
  return read_fraction<MassFractionKind>(text, {0.0}, {0.9});
}

/// Fills an entry from nodes; the first thing wrong is told.
Result<PowderEntry> from_nodes(const Node &table) {
  PowderEntry entry;
  std::optional<std::int64_t> end;
  bool deed = false;
  std::optional<Problem> wrong;
  const auto refuse = [&](std::string_view key, std::string found, std::string remedy) {
    if (!wrong) wrong = Problem{std::string(key) + ": " + found, std::move(remedy)};
  };
  for (const auto &field : table.entries) {
    const std::string &key = field.key;
    const Node &node = field.value;
    const auto text = [&](std::string &to) {
      if (node.type != Node::Type::text) refuse(key, "text is wanted", "write it in quotes");
      to = node.text;
    };
    const auto whole = [&](std::int64_t &to) {
      if (node.type != Node::Type::integer || node.integer < 0)
        refuse(key, "a whole number is wanted", "write it without quotes");
      to = node.integer;
    };
    const auto flag = [&](bool &to) {
      if (node.type != Node::Type::boolean) refuse(key, "true or false is wanted", "write true");
      to = node.integer != 0;
    };
    const PartRow *part = nullptr;
    for (const auto &row : part_table)
      if (row.name == key) part = &row;
    if (part != nullptr) {
      const auto counted = read_count(part->part, node.text);
      if (counted)
        entry.contents[part->part] = *counted;
      else
        refuse(key, counted.problem().found, counted.problem().remedy);
    } else if (key == "number") {
      whole(entry.number);
    } else if (key == "end") {
      end.emplace();
      whole(*end);
    } else if (key == "undoes") {
      whole(entry.undoes);
    } else if (key == "rounds") {
      std::int64_t rounds = 0;
      whole(rounds);
      entry.rounds = static_cast<int>(std::min<std::int64_t>(rounds, 1000));
    } else if (key == "at") {
      entry.at = node.text;
      if (!is_time(entry.at)) refuse(key, "not a time", "write at = 2026-11-20T18:04:00Z");
    } else if (key == "deed") {
      deed = true;
      const DeedRow *found = nullptr;
      for (const auto &row : deed_table)
        if (row.name == node.text) found = &row;
      if (found != nullptr)
        entry.deed = found->deed;
      else
        refuse(key, "'" + node.text + "' is not known", "write \"saved\", \"used\", ...");
    } else if (key == "mass") {
      const auto mass = read_mass(node.text);
      if (mass)
        entry.mass = *mass;
      else
        refuse(key, mass.problem().found, mass.problem().remedy);
    } else if (key == "moisture") {
      const auto moisture = read_moisture(node.text);
      if (moisture)
        entry.moisture = *moisture;
      else
        refuse(key, moisture.problem().found, moisture.problem().remedy);
    } else if (key == "jar") {
      text(entry.jar);
    } else if (key == "batch") {
      text(entry.batch);
    } else if (key == "hides") {
      text(entry.hides);
    } else if (key == "note") {
      text(entry.note);
    } else if (key == "slipped") {
      flag(entry.slipped);
    } else if (key == "suspect") {
      flag(entry.suspect);
    } else {
      refuse(key, "is not a key of an entry", "mend or remove the line");
    }
  }
  if (!wrong && (entry.number < 1 || entry.number > 1'000'000'000'000 || entry.at.empty()))
    wrong = Problem{"number or at is missing or absurd", "mend the entry"};
  if (!wrong && !deed) wrong = Problem{"deed is missing", "mend the entry"};
  const bool wants_mass = entry.deed == Deed::saved || entry.deed == Deed::used ||
                          entry.deed == Deed::topped_up || entry.deed == Deed::sieved ||
                          entry.deed == Deed::weighed;
  if (!wrong && wants_mass && !(entry.mass > 0.0 * kilogram))
    wrong = Problem{"mass is missing", "mend the entry"};
  if (!wrong && (!end || *end != entry.number))
    wrong = Problem{"the closing line 'end' is missing or has another number",
                    "write end = with the entry's number as its last line"};
  if (wrong) return *wrong;
  return entry;
}

} // namespace

std::string write_entry(const PowderEntry &entry) {
  std::string text = fmt::format("[[entry]]\nnumber = {}\nat = {}\ndeed = \"{}\"\n", entry.number,
                                 entry.at, deed_name(entry.deed));
  const auto add = [&](std::string_view key, const std::string &value) {
    if (!value.empty()) text += fmt::format("{} = {}\n", key, quoted_text(value));
  };
  add("jar", entry.jar);
  if (entry.mass > 0.0 * kilogram)
    text += fmt::format("mass = \"{} g\"\n", write_decimal(count(entry.mass, gram), 3));
  if (entry.moisture)
    text += fmt::format("moisture = \"{} %\"\n", write_decimal(entry.moisture->value * 100.0, 2));
  add("batch", entry.batch);
  add("hides", entry.hides);
  if (entry.deed == Deed::saved) text += fmt::format("rounds = {}\n", entry.rounds);
  if (entry.slipped) text += "slipped = true\n";
  if (entry.suspect) text += "suspect = true\n";
  for (const auto &row : part_table)
    if (entry.contents[row.part] != 0)
      text +=
          fmt::format("{} = \"{}\"\n", row.name, write_count(row.part, entry.contents[row.part]));
  if (entry.deed == Deed::undone) text += fmt::format("undoes = {}\n", entry.undoes);
  add("note", entry.note);
  return text + fmt::format("end = {}\n\n", entry.number);
}

Result<PowderEntry> read_entry(std::string_view block, std::uint32_t line,
                               const std::string &file_name) {
  Node table;
  if (read_lines(block, line, table)) return from_nodes(table);
  const auto root = read_toml({file_name, std::string(block)});
  if (!root) return Problem{root.problem().found, root.problem().remedy};
  if (root->entries.size() != 1 || root->entries[0].key != "entry" ||
      root->entries[0].value.items.size() != 1)
    return Problem{"not one [[entry]]", "write each entry under its own [[entry]]"};
  return from_nodes(root->entries[0].value.items[0]);
}

} // namespace whittaw::app

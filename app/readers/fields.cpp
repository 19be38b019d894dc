#include "fields.hpp"

#include <fmt/format.h>

namespace whittaw::app {

const Node *Fields::find(std::string_view key) const {
  for (const auto &entry : table.entries)
    if (entry.key == key) return &entry.value;
  return nullptr;
}

Fields open_table(Reading &reading, const Node &node, std::string_view what,
                  std::initializer_list<std::string_view> known) {
  if (node.type != Node::Type::table)
    reading.refuse(node.place,
                   fmt::format("{} is {}, and a table is wanted", what, type_name(node.type)),
                   fmt::format("write it as [{}] with its keys below", what));
  for (const auto &entry : node.entries) {
    bool found = false;
    std::string all;
    for (const auto key : known) {
      found = found || key == entry.key;
      all += (all.empty() ? "" : ", ") + std::string(key);
    }
    if (!found)
      reading.refuse(entry.place, fmt::format("unknown key '{}' in {}", entry.key, what),
                     did_you_mean(entry.key, known) + "known here: " + all);
  }
  return {reading, node};
}

void missing(Fields &fields, std::string_view key, std::string_view remedy) {
  fields.reading.refuse(fields.table.place, fmt::format("{} is missing", key), std::string(remedy));
}

std::optional<std::string> take_text(Fields &fields, std::string_view key) {
  const Node *node = fields.find(key);
  if (node == nullptr) return std::nullopt;
  if (node->type != Node::Type::text) {
    fields.reading.refuse(node->place,
                          fmt::format("{}: {}, and text is wanted", key, type_name(node->type)),
                          fmt::format("write it in quotes, as {} = \"...\"", key));
    return std::nullopt;
  }
  return node->text;
}

std::optional<bool> take_flag(Fields &fields, std::string_view key) {
  const Node *node = fields.find(key);
  if (node == nullptr) return std::nullopt;
  if (node->type != Node::Type::boolean) {
    fields.reading.refuse(
        node->place, fmt::format("{}: {}, and true or false is wanted", key, type_name(node->type)),
        fmt::format("write {} = true or {} = false", key, key));
    return std::nullopt;
  }
  return node->integer != 0;
}

std::optional<std::int64_t> take_integer(Fields &fields, std::string_view key, std::int64_t low,
                                         std::int64_t high) {
  const Node *node = fields.find(key);
  if (node == nullptr) return std::nullopt;
  if (node->type != Node::Type::integer || node->integer < low || node->integer > high) {
    const std::string found = node->type == Node::Type::integer
                                  ? std::to_string(node->integer)
                                  : std::string(type_name(node->type));
    fields.reading.refuse(
        node->place, fmt::format("{}: {}, and a whole number is wanted", key, found),
        fmt::format("write a whole number from {} to {}, as {} = {}", low, high, key, low));
    return std::nullopt;
  }
  return node->integer;
}

std::span<const Node> take_tables(Fields &fields, std::string_view key) {
  const Node *node = fields.find(key);
  if (node == nullptr) return {};
  if (node->type == Node::Type::table) return {node, 1};
  if (node->type != Node::Type::array) {
    fields.reading.refuse(node->place,
                          fmt::format("{}: {}, and tables are wanted", key, type_name(node->type)),
                          fmt::format("write [[{}]] with its keys below, once for each", key));
    return {};
  }
  return node->items;
}

std::vector<std::string> take_texts(Fields &fields, std::string_view key) {
  const Node *node = fields.find(key);
  std::vector<std::string> texts;
  if (node == nullptr) return texts;
  bool good = node->type == Node::Type::array;
  for (const auto &item : node->items) {
    good = good && item.type == Node::Type::text;
    texts.push_back(item.text);
  }
  if (!good)
    fields.reading.refuse(node->place, fmt::format("{}: a list of texts is wanted", key),
                          fmt::format("write {} = [\"...\", \"...\"]", key));
  return texts;
}

} // namespace whittaw::app

// Takes the fields of a table one by one, and keeps the first fault.
#pragma once

#include "node.hpp"

#include <whittaw/quantity/read.hpp>

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw::app {

/// One file being read. Only the first fault is kept: the rest may follow from it.
struct Reading {
  const SourceText &source;
  std::optional<Fault> fault = std::nullopt;

  void refuse(Place place, std::string found, std::string remedy) {
    if (!fault) fault = fault_at(source, place, std::move(found), std::move(remedy));
  }
};

/// A table whose keys are all known; see open_table.
struct Fields {
  Reading &reading;
  const Node &table;

  [[nodiscard]] const Node *find(std::string_view key) const;
};

/// Opens a table: refuses a node that is none, and a key that is not among `known`.
Fields open_table(Reading &reading, const Node &node, std::string_view what,
                  std::initializer_list<std::string_view> known);

/// Refuses the table for want of a key.
void missing(Fields &fields, std::string_view key, std::string_view remedy);

/// The text of a key; empty and no fault if the key is absent.
std::optional<std::string> take_text(Fields &fields, std::string_view key);
std::optional<bool> take_flag(Fields &fields, std::string_view key);
std::optional<std::int64_t> take_integer(Fields &fields, std::string_view key, std::int64_t low,
                                         std::int64_t high);
/// A list of tables under a key; empty if absent.
std::span<const Node> take_tables(Fields &fields, std::string_view key);
std::vector<std::string> take_texts(Fields &fields, std::string_view key);

/// ", as coat = "3 mm"": what the reader itself asks for when it is given nothing.
template <class T>
std::string example_of(Result<T> (*read)(std::string_view), std::string_view key) {
  const auto nothing = read("");
  if (nothing) return "";
  const std::string &remedy = nothing.problem().remedy;
  const std::size_t as = remedy.find(", as ");
  if (as == std::string::npos) return "";
  std::string example = remedy.substr(as + 5, remedy.find(',', as + 5) - as - 5);
  if (const std::size_t other = example.find(" or "); other != std::string::npos)
    example.resize(other);
  return ", as " + std::string(key) + " = \"" + example + "\"";
}

/// A node that is a quantity written as text with its unit, by a reader of the library.
template <class T>
std::optional<T> take_node(Reading &reading, const Node &node, std::string_view key,
                           Result<T> (*read)(std::string_view)) {
  if (node.type != Node::Type::text) {
    reading.refuse(node.place,
                   std::string(key) + ": " + std::string(type_name(node.type)) +
                       ", and a quantity with its unit is wanted",
                   "write it in quotes with its unit" + example_of(read, key));
    return std::nullopt;
  }
  auto value = read(node.text);
  if (!value) {
    reading.refuse(node.place, std::string(key) + ": " + value.problem().found,
                   value.problem().remedy);
    return std::nullopt;
  }
  return *value;
}

/// The same under a key; nothing and no fault if the key is absent.
template <class T>
std::optional<T> take(Fields &fields, std::string_view key, Result<T> (*read)(std::string_view)) {
  const Node *node = fields.find(key);
  if (node == nullptr) return std::nullopt;
  return take_node(fields.reading, *node, key, read);
}

inline Result<Length> read_some_length(std::string_view text) { return read_length(text); }
inline Result<Length> read_any_length(std::string_view text) {
  return read_length(text, Zero::allowed);
}
inline Result<Volume> read_some_volume(std::string_view text) { return read_volume(text); }

/// The value of a word of a table of names; a fault with the nearest name otherwise.
template <class Rows, class NameOf>
auto take_named(Fields &fields, std::string_view key, const Rows &rows, NameOf name_of)
    -> decltype(&*std::begin(rows)) {
  const auto text = take_text(fields, key);
  if (!text) return nullptr;
  std::vector<std::string_view> names;
  std::string all;
  for (const auto &row : rows) {
    if (name_of(row) == *text) return &row;
    names.push_back(name_of(row));
    all += (all.empty() ? "" : ", ") + std::string(name_of(row));
  }
  fields.reading.refuse(fields.find(key)->place,
                        std::string(key) + ": '" + *text + "' is not known",
                        did_you_mean(*text, names) + "known: " + all);
  return nullptr;
}

} // namespace whittaw::app

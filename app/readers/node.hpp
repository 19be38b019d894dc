// A TOML document as plain nodes with their places; no parser's types leave the reader.
#pragma once

#include "../fault.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw::app {

struct Place {
  std::uint32_t line = 0;
  std::uint32_t column = 0;
};

struct Entry;

struct Node {
  enum class Type { text, integer, number, boolean, date, array, table };
  Type type = Type::text;
  std::string text;           ///< of text and date
  std::int64_t integer = 0;   ///< of integer and, as 0 or 1, boolean
  double number = 0.0;        ///< of number
  std::vector<Node> items;    ///< of array
  std::vector<Entry> entries; ///< of table
  Place place;
};

struct Entry {
  std::string key;
  Node value;
  Place place; ///< of the key
};

constexpr std::string_view type_name(Node::Type type) {
  switch (type) {
  case Node::Type::text: return "text";
  case Node::Type::integer:
  case Node::Type::number: return "a bare number";
  case Node::Type::boolean: return "true or false";
  case Node::Type::date: return "a date";
  case Node::Type::array: return "a list";
  case Node::Type::table: return "a table";
  }
  return "";
}

/// A file's text and name, kept to show the line of an error.
struct SourceText {
  std::string name;
  std::string text;
};

/// Whether a text is UTF-8 by RFC 3629.
bool is_utf8(std::string_view text);

/// Reads a file and parses it as TOML 1.0, a table at the top.
Outcome<Node> read_toml(const SourceText &source);

/// A fault at a place of the source, with the line it stands in.
Fault fault_at(const SourceText &source, Place place, std::string found, std::string remedy);

} // namespace whittaw::app

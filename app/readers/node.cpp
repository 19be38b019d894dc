#include "node.hpp"

// The packaged library is built with exceptions; the headers alone do without.
#define TOML_HEADER_ONLY 1
#define TOML_EXCEPTIONS 0
// For letters beyond ASCII outside quotes this version's tables end in "unreachable", which is
// undefined and not true; no letter is the answer that is meant.
#include <toml++/impl/forward_declarations.h>
#undef TOML_UNREACHABLE
#define TOML_UNREACHABLE return false
#include <toml++/impl/unicode.h>
#undef TOML_UNREACHABLE
#define TOML_UNREACHABLE __builtin_unreachable()
#include <toml++/toml.h>

#include <fmt/format.h>

#include <algorithm>

namespace whittaw::app {

namespace {

Place place_of(const toml::source_region &region) {
  return {region.begin.line, region.begin.column};
}

/// Deeper than any file of ours; dotted keys nest without a limit of the parser's.
constexpr std::size_t most_dots = 64;

/// Line, from 1, with more dots outside quotes than a key of ours can have, or 0.
std::uint32_t line_too_deep(std::string_view text) {
  std::uint32_t line = 1;
  std::size_t dots = 0;
  for (const char c : text) {
    if (c == '\n') {
      ++line;
      dots = 0;
    } else if (c == '"' || c == '\'' || c == '=' || c == '#') {
      // A key ends at "=": what follows is a value, or text that the parser looks at.
      dots = 0;
    } else if (c == '.' && ++dots > most_dots) {
      return line;
    }
  }
  return 0;
}

Node convert(const toml::node &from) {
  Node node;
  node.place = place_of(from.source());
  if (const auto *table = from.as_table()) {
    node.type = Node::Type::table;
    node.entries.reserve(table->size());
    for (const auto &[key, value] : *table)
      node.entries.push_back({std::string(key.str()), convert(value), place_of(key.source())});
  } else if (const auto *array = from.as_array()) {
    node.type = Node::Type::array;
    node.items.reserve(array->size());
    for (const auto &item : *array) node.items.push_back(convert(item));
  } else if (const auto *text = from.as_string()) {
    node.text = text->get();
  } else if (const auto *integer = from.as_integer()) {
    node.type = Node::Type::integer;
    node.integer = integer->get();
    node.number = static_cast<double>(integer->get());
  } else if (const auto *number = from.as_floating_point()) {
    node.type = Node::Type::number;
    node.number = number->get();
  } else if (const auto *flag = from.as_boolean()) {
    node.type = Node::Type::boolean;
    node.integer = flag->get() ? 1 : 0;
  } else {
    node.type = Node::Type::date;
    if (const auto *date = from.as_date())
      node.text =
          fmt::format("{:04}-{:02}-{:02}", date->get().year, date->get().month, date->get().day);
    if (const auto *time = from.as_date_time();
        time != nullptr && time->get().offset && time->get().offset->minutes == 0) {
      const auto &at = time->get();
      node.text = fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", at.date.year, at.date.month,
                              at.date.day, at.time.hour, at.time.minute, at.time.second);
    }
  }
  return node;
}

/// Byte of the first sequence that is not UTF-8 (RFC 3629), or npos.
std::size_t first_not_utf8(std::string_view text) {
  const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
  for (std::size_t i = 0; i < text.size();) {
    const unsigned char lead = byte(i);
    const std::size_t length = lead < 0x80                   ? 1
                               : lead >= 0xC2 && lead < 0xE0 ? 2
                               : lead >= 0xE0 && lead < 0xF0 ? 3
                               : lead >= 0xF0 && lead < 0xF5 ? 4
                                                             : 0;
    if (length == 0 || i + length > text.size()) return i;
    for (std::size_t k = 1; k < length; ++k)
      if ((byte(i + k) & 0xC0U) != 0x80U) return i;
    if (length > 2) {
      const unsigned char second = byte(i + 1);
      if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second >= 0xA0) ||
          (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second >= 0x90))
        return i;
    }
    i += length;
  }
  return std::string_view::npos;
}

} // namespace

Fault fault_at(const SourceText &source, Place place, std::string found, std::string remedy) {
  Fault fault{Status::bad_data, source.name, std::move(found), "", 0, std::move(remedy)};
  if (place.line == 0) return fault;
  fault.place = fmt::format("{}:{}:{}", source.name, place.line, place.column);
  std::size_t start = 0;
  for (std::uint32_t line = 1; line < place.line; ++line) {
    const std::size_t end = source.text.find('\n', start);
    if (end == std::string::npos) return fault;
    start = end + 1;
  }
  fault.excerpt = source.text.substr(
      start, std::min(source.text.find_first_of("\r\n", start), start + 4096) - start);
  fault.column = place.column;
  return fault;
}

bool is_utf8(std::string_view text) { return first_not_utf8(text) == std::string_view::npos; }

Outcome<Node> read_toml(const SourceText &source) {
  if (const std::size_t at = first_not_utf8(source.text); at != std::string_view::npos) {
    const auto line = 1 + std::count(source.text.begin(),
                                     source.text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
    return Fault{Status::bad_data,
                 fmt::format("{}:{}", source.name, line),
                 fmt::format("byte {} of the file is not UTF-8 text", at + 1),
                 "",
                 0,
                 "save the file as UTF-8 text; a spreadsheet or a picture will not do"};
  }
  if (const std::uint32_t line = line_too_deep(source.text); line > 0)
    return Fault{Status::bad_data,
                 fmt::format("{}:{}", source.name, line),
                 "more dots in a row than any key of ours has",
                 "",
                 0,
                 "write keys as name = \"value\""};
  auto parsed = toml::parse(source.text, std::string_view(source.name));
  if (!parsed) {
    const auto &error = parsed.error();
    std::string why(error.description());
    const bool date = why.find("date") != std::string::npos;
    // "Error while parsing key: ..." says twice what the place says.
    if (const std::size_t colon = why.find(": "); why.starts_with("Error while") && colon < 60)
      why.erase(0, colon + 2);
    return fault_at(source, place_of(error.source()), "not TOML: " + why,
                    date ? "write a date that the calendar has, as 2026-11-07"
                         : "write keys as name = \"value\", text in double quotes closed on its "
                           "line");
  }
  Node root = convert(parsed.table());
  root.place = {}; // the whole file: no one line of it
  return root;
}

} // namespace whittaw::app

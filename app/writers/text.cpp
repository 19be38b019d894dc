#include "writers.hpp"

#include "../fault.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace whittaw::app {

namespace {

constexpr std::size_t width = 78;

/// Characters, not bytes.
std::size_t length_of(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

/// Breaks at spaces, with the first line led by `lead` and the rest indented below it.
std::string wrapped(std::string_view lead, std::string_view text) {
  const std::size_t indent = length_of(lead);
  std::string result(lead);
  std::size_t column = indent;
  bool first = true;
  const std::string clean = printable(text);
  std::string_view rest = clean;
  while (!rest.empty()) {
    const std::size_t space = rest.find(' ');
    const std::string_view word = rest.substr(0, space);
    rest = space == std::string_view::npos ? std::string_view() : rest.substr(space + 1);
    if (word.empty()) continue;
    if (!first && column + 1 + length_of(word) > width) {
      result += "\n" + std::string(indent, ' ');
      column = indent;
      first = true;
    }
    if (!first) {
      result += ' ';
      ++column;
    }
    result += word;
    column += length_of(word);
    first = false;
  }
  return result + "\n";
}

std::string padded(std::string_view text, std::size_t to) {
  const std::string clean = printable(text);
  const std::size_t have = length_of(clean);
  return clean + std::string(have < to ? to - have : 0, ' ');
}

void heading(std::string &out, std::string_view title) {
  out += "\n" + printable(title) + "\n" + std::string(length_of(title), '-') + "\n";
}

void write_amounts(std::string &out, const std::vector<SheetAmount> &amounts) {
  std::size_t name = 0;
  for (const auto &amount : amounts) name = std::max(name, length_of(amount.name));
  name = std::min<std::size_t>(name, 44);
  std::size_t weight = 8;
  for (const auto &amount : amounts) weight = std::max(weight, length_of(amount.weight));
  const std::size_t indent = 13 + weight + 2;
  for (const auto &amount : amounts) {
    std::string line =
        "         [ ] " + padded(amount.weight, weight + 2) + padded(amount.name, name);
    line.erase(line.find_last_not_of(' ') + 1);
    const std::string measure = printable(amount.measure);
    if (measure.empty()) {
      out += line + "\n";
    } else if (name + indent + 3 + length_of(measure) <= width) {
      out += padded(line, name + indent) + "   " + measure + "\n";
    } else {
      out += line + "\n";
      out.append(indent, ' ');
      out += measure + "\n";
    }
    if (!amount.note.empty()) out += wrapped(std::string(indent, ' '), amount.note);
  }
}

void write_table(std::string &out, const SheetTable &table) {
  heading(out, table.title);
  std::vector<std::size_t> widths;
  for (const auto &column : table.columns) widths.push_back(length_of(column));
  for (const auto &row : table.rows)
    for (std::size_t i = 0; i < row.size(); ++i)
      widths[i] = std::max(widths[i], length_of(printable(row[i])));
  const auto write_row = [&](const std::vector<std::string> &row) {
    std::string line = "  ";
    for (std::size_t i = 0; i < row.size(); ++i)
      line += i + 1 < row.size() ? padded(row[i], widths[i] + 2) : printable(row[i]);
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + "\n";
  };
  write_row(table.columns);
  for (const auto &row : table.rows) write_row(row);
  if (!table.note.empty()) out += wrapped("  ", table.note);
}

} // namespace

std::string write_text(const Sheet &sheet) {
  std::string out = printable(sheet.title) + "\n" + std::string(length_of(sheet.title), '=') + "\n";
  if (!sheet.subtitle.empty()) out += wrapped("", sheet.subtitle);
  if (!sheet.findings.empty()) {
    heading(out, "Checks");
    for (const auto &finding : sheet.findings) {
      std::string level(level_name(finding.level));
      if (finding.level >= Level::warn)
        for (char &c : level) c = static_cast<char>(c - 'a' + 'A');
      out += wrapped(padded("  " + level, 8), finding.text);
    }
  }
  if (!sheet.cautions.empty()) {
    heading(out, "Take care");
    for (const auto &caution : sheet.cautions) out += wrapped("  ! ", caution);
  }
  if (!sheet.steps.empty()) {
    heading(out, "Steps");
    std::size_t number = 0;
    for (const auto &step : sheet.steps) {
      out += wrapped(fmt::format("[ ] {:2}. ", ++number), step.text);
      write_amounts(out, step.amounts);
    }
  }
  for (const auto &table : sheet.tables) write_table(out, table);
  if (!sheet.remarks.empty()) {
    heading(out, "To know");
    for (const auto &remark : sheet.remarks) out += wrapped("  - ", remark);
  }
  if (!sheet.sources.empty()) {
    heading(out, "Sources");
    for (const auto &source : sheet.sources) out += wrapped("  - ", source);
  }
  return out;
}

} // namespace whittaw::app

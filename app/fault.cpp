#include "fault.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace whittaw::app {

std::string printable(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    // C1 controls are the two bytes C2 80 to C2 9F in UTF-8.
    const bool c1 =
        byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0;
    // Letters that turn the direction of text: E2 80 AA to AE, E2 81 A6 to A9.
    const auto next = [&](std::size_t ahead) {
      return i + ahead < text.size() ? static_cast<unsigned char>(text[i + ahead]) : 0U;
    };
    const bool turns = byte == 0xE2 && ((next(1) == 0x80 && next(2) >= 0xAA && next(2) <= 0xAE) ||
                                        (next(1) == 0x81 && next(2) >= 0xA6 && next(2) <= 0xA9));
    if (turns) {
      result += '?';
      i += 2;
    } else if (byte < 0x20 || byte == 0x7F) {
      result += byte == '\t' ? ' ' : '?';
    } else if (c1) {
      result += '?';
      ++i;
    } else {
      result += text[i];
    }
  }
  return result;
}

std::size_t edits_between(std::string_view from, std::string_view to) {
  constexpr std::size_t longest = 64;
  from = from.substr(0, longest);
  to = to.substr(0, longest);
  std::vector<std::vector<std::size_t>> cost(from.size() + 1,
                                             std::vector<std::size_t>(to.size() + 1));
  for (std::size_t i = 0; i <= from.size(); ++i) cost[i][0] = i;
  for (std::size_t j = 0; j <= to.size(); ++j) cost[0][j] = j;
  for (std::size_t i = 1; i <= from.size(); ++i) {
    for (std::size_t j = 1; j <= to.size(); ++j) {
      const std::size_t change = from[i - 1] == to[j - 1] ? 0 : 1;
      cost[i][j] = std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, cost[i - 1][j - 1] + change});
      if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
        cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
    }
  }
  return cost[from.size()][to.size()];
}

namespace {

bool starts_letter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }

/// The line, or the part of a long one around `column` (in letters, from 1), with a mark below.
std::string excerpt_lines(const std::string &line, std::size_t column) {
  constexpr std::size_t widest = 100;
  std::vector<std::size_t> letters; // where each begins
  for (std::size_t i = 0; i < line.size(); ++i)
    if (starts_letter(line[i])) letters.push_back(i);
  std::size_t first = 0;
  if (letters.size() > widest && column > widest / 2)
    first = std::min(column - widest / 2, letters.size() - widest);
  const std::size_t last = std::min(first + widest, letters.size());
  const auto byte_of = [&](std::size_t letter) {
    return letter < letters.size() ? letters[letter] : line.size();
  };
  std::string text = "    " + line.substr(byte_of(first), byte_of(last) - byte_of(first)) + "\n";
  if (column > first && column <= last + 1)
    text += fmt::format("    {:>{}}\n", '^', column - first);
  return text;
}

} // namespace

std::string write_fault(const Fault &fault) {
  std::string text = "whittaw: ";
  if (!fault.place.empty()) text += printable(fault.place) + ": ";
  text += printable(fault.found) + "\n";
  if (!fault.excerpt.empty()) text += excerpt_lines(printable(fault.excerpt), fault.column);
  if (!fault.remedy.empty()) text += "  " + printable(fault.remedy) + "\n";
  return text;
}

} // namespace whittaw::app

// Chemical formulae, read at compile time where they are literals.
#pragma once

#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/units.hpp>

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace whittaw {

struct Element {
  std::string_view symbol;
  MolarMass molar_mass;
};

/// source: IUPAC/CIAAW abridged standard atomic weights (2021).
inline constexpr std::array<Element, 9> elements{{
    {"H", 1.008 * gram_per_mole},
    {"C", 12.011 * gram_per_mole},
    {"N", 14.007 * gram_per_mole},
    {"O", 15.999 * gram_per_mole},
    {"Na", 22.990 * gram_per_mole},
    {"Al", 26.982 * gram_per_mole},
    {"S", 32.06 * gram_per_mole},
    {"Cl", 35.45 * gram_per_mole},
    {"K", 39.098 * gram_per_mole},
}};

/// Atoms of each element in one formula unit.
struct Composition {
  std::array<int, elements.size()> atoms{};
  constexpr bool operator==(const Composition &) const = default;
};

constexpr MolarMass molar_mass(const Composition &composition) {
  MolarMass sum = 0.0 * gram_per_mole;
  for (std::size_t i = 0; i < elements.size(); ++i)
    sum += static_cast<double>(composition.atoms[i]) * elements[i].molar_mass;
  return sum;
}

namespace detail {

/// Reads `KAl(SO4)2.12H2O`. `failed` tells that `at` is where the text is not understood.
struct FormulaReader {
  std::string_view text;
  std::size_t at = 0;
  bool failed = false;

  constexpr bool more() const { return at < text.size() && !failed; }
  constexpr bool digit() const { return more() && text[at] >= '0' && text[at] <= '9'; }

  constexpr int number(int otherwise) {
    if (!digit()) return otherwise;
    int value = 0;
    for (; digit(); ++at) {
      value = value * 10 + (text[at] - '0');
      if (value > 10'000) failed = true;
    }
    if (value == 0) failed = true;
    return value;
  }

  constexpr bool skip(std::string_view mark) {
    if (text.substr(at).substr(0, mark.size()) != mark) return false;
    at += mark.size();
    return true;
  }

  static constexpr void add(Composition &to, const Composition &part, int times) {
    for (std::size_t i = 0; i < elements.size(); ++i) to.atoms[i] += times * part.atoms[i];
  }

  constexpr Composition one_atom() {
    Composition atom;
    // The longest symbol that fits: Na before N.
    for (std::size_t length = 2; length >= 1; --length) {
      for (std::size_t i = 0; i < elements.size(); ++i) {
        if (elements[i].symbol.size() == length && skip(elements[i].symbol)) {
          atom.atoms[i] = 1;
          return atom;
        }
      }
    }
    failed = true;
    return atom;
  }

  constexpr Composition part(int depth) {
    Composition sum;
    while (more() && text[at] != ')') {
      if (text[at] == '.' || text[at] == '*' || text.substr(at).starts_with("\u00b7")) return sum;
      Composition piece;
      if (skip("(")) {
        const std::size_t inside = at;
        if (depth > 8) failed = true;
        piece = part(depth + 1);
        if (at == inside || !skip(")")) failed = true;
      } else {
        piece = one_atom();
      }
      add(sum, piece, number(1));
    }
    return sum;
  }

  constexpr Composition whole() {
    Composition sum;
    do {
      const int times = number(1);
      const std::size_t start = at;
      add(sum, part(0), times);
      if (at == start) failed = true;
    } while (more() && (skip("\u00b7") || skip(".") || skip("*")));
    if (at != text.size()) failed = true;
    return sum;
  }
};

} // namespace detail

/// Reads a formula with brackets and waters of crystallisation, as `Na2CO3\u00b710H2O` or with a
/// full stop for the dot. Knows the elements of the table above only.
inline Result<Composition> read_formula(std::string_view text) {
  detail::FormulaReader reader{text};
  const Composition composition = reader.whole();
  if (reader.failed || text.empty())
    return Problem{"'" + std::string(text) + "' is not a formula known here, from '" +
                       std::string(text.substr(std::min(reader.at, text.size()))) + "'",
                   "write it as KAl(SO4)2.12H2O, of the elements H C N O Na Al S Cl K"};
  return composition;
}

/// The composition of a literal formula; a misspelt one does not compile.
consteval Composition formula(std::string_view text) {
  detail::FormulaReader reader{text};
  const Composition composition = reader.whole();
  if (reader.failed) throw "not a chemical formula";
  return composition;
}

static_assert(formula("H2O") == formula("OH2"));
static_assert(formula("Na2CO3.10H2O").atoms[3] == 13);

} // namespace whittaw

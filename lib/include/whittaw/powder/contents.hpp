// What a paste or a powder is made of, in whole micromoles and micrograms, so that balances are
// exact.
#pragma once

#include <whittaw/paste/batch.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/substance/formula.hpp>

#include <array>
#include <cmath>
#include <cstdint>
#include <string_view>

namespace whittaw {

/// The parts that are kept account of. Water comes and goes and is not one of them.
enum class Part {
  aluminium,
  sulfate,
  hydroxide,
  sodium,
  potassium,
  ammonium,
  chloride,
  meal,
  other
};

struct PartRow {
  Part part;
  std::string_view name;
  /// Zero for what is counted by mass.
  MolarMass molar_mass = 0.0 * gram_per_mole;
};

inline constexpr std::array<PartRow, 9> part_table{{
    {Part::aluminium, "aluminium", molar_mass(formula("Al"))},
    {Part::sulfate, "sulfate", molar_mass(formula("SO4"))},
    {Part::hydroxide, "hydroxide", molar_mass(formula("OH"))},
    {Part::sodium, "sodium", molar_mass(formula("Na"))},
    {Part::potassium, "potassium", molar_mass(formula("K"))},
    {Part::ammonium, "ammonium", molar_mass(formula("NH4"))},
    {Part::chloride, "chloride", molar_mass(formula("Cl"))},
    {Part::meal, "meal"},
    {Part::other, "other"},
}};

/// Counts of each part: micromoles, and micrograms of meal and other. Whole numbers add without a
/// rest, however long a history is.
struct Contents {
  std::array<std::int64_t, part_table.size()> micro{};
  constexpr bool operator==(const Contents &) const = default;
  constexpr std::int64_t &operator[](Part part) { return micro[static_cast<std::size_t>(part)]; }
  constexpr std::int64_t operator[](Part part) const {
    return micro[static_cast<std::size_t>(part)];
  }
};

constexpr Contents &operator+=(Contents &to, const Contents &more) {
  for (std::size_t i = 0; i < to.micro.size(); ++i) to.micro[i] += more.micro[i];
  return to;
}
constexpr Contents &operator-=(Contents &from, const Contents &less) {
  for (std::size_t i = 0; i < from.micro.size(); ++i) from.micro[i] -= less.micro[i];
  return from;
}
constexpr Contents operator+(Contents a, const Contents &b) { return a += b; }
constexpr Contents operator-(Contents a, const Contents &b) { return a -= b; }

constexpr bool is_empty(const Contents &contents) { return contents == Contents{}; }

constexpr Amount aluminium_of(const Contents &contents) {
  return static_cast<double>(contents[Part::aluminium]) * 1e-6 * mole;
}

/// Mass without any water, of crystallisation or other.
constexpr Mass dry_mass(const Contents &contents) {
  Mass sum = 0.0 * kilogram;
  for (const auto &row : part_table) {
    const double count_of = static_cast<double>(contents[row.part]);
    const bool by_mass = row.part == Part::meal || row.part == Part::other;
    sum += by_mass ? count_of * 1e-6 * gram : count_of * 1e-6 * mole * row.molar_mass;
  }
  return sum;
}

/// A share of the contents, each part rounded to its whole count: what is left is the exact rest.
inline Contents share_of(const Contents &contents, Share share) {
  Contents taken;
  for (std::size_t i = 0; i < contents.micro.size(); ++i)
    taken.micro[i] = std::llround(static_cast<double>(contents.micro[i]) * share.value);
  return taken;
}

namespace detail {
inline std::int64_t micromoles(Amount amount) { return std::llround(count(amount, mole) * 1e6); }
} // namespace detail

/// What a mass of an alum, a salt or a soda brings; its carbonate is gone as gas. Sulfate,
/// potassium and ammonium follow from the aluminium, sodium from the carbonate and the chloride.
inline Contents contents_of(const Form &form, Mass mass) {
  Contents contents;
  const std::int64_t aluminium = detail::micromoles(form.aluminium * mass);
  contents[Part::aluminium] = aluminium;
  contents[Part::hydroxide] = detail::micromoles(form.hydroxide * mass);
  if (form.solute == Solute::aluminium_sulfate)
    contents[Part::sulfate] = std::llround(1.5 * static_cast<double>(aluminium));
  if (form.solute == Solute::potassium_alum) {
    contents[Part::sulfate] = 2 * aluminium;
    contents[Part::potassium] = aluminium;
  }
  if (form.solute == Solute::ammonium_alum) {
    contents[Part::sulfate] = 2 * aluminium;
    contents[Part::ammonium] = aluminium;
  }
  // Each hydroxide of a soda comes with one sodium.
  contents[Part::sodium] = contents[Part::hydroxide];
  if (form.solute == Solute::sodium_chloride) {
    constexpr MolarMass salt = molar_mass(formula("NaCl"));
    contents[Part::chloride] = detail::micromoles(mass / salt);
    contents[Part::sodium] = contents[Part::chloride];
  }
  if (form.role == Role::meal) contents[Part::meal] = std::llround(count(mass, gram) * 1e6);
  if (form.role == Role::extra) contents[Part::other] = std::llround(count(mass, gram) * 1e6);
  return contents;
}

/// All that is mixed into a batch.
inline Contents contents_of(const Batch &batch) {
  Contents contents;
  for (const auto &ingredient : batch.ingredients)
    if (ingredient.role != Role::water) contents += contents_of(ingredient.form, ingredient.mass);
  return contents;
}

/// What of a batch goes on one of its hides, all coats together.
inline Contents contents_on_hide(const Batch &batch, std::size_t hide) {
  const Volume used = static_cast<double>(batch.coats) * batch.hides[hide].one_coat;
  return share_of(contents_of(batch), Share{count(used, batch.paste)});
}

} // namespace whittaw

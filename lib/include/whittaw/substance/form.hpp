// The chemicals of a paste, each in the forms in which it is sold.
#pragma once

#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/source.hpp>
#include <whittaw/quantity/write.hpp>
#include <whittaw/substance/formula.hpp>

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace whittaw {

/// What an ingredient does in the paste.
enum class Role { water, salt, alum, soda, meal, extra };

constexpr std::string_view role_name(Role role) {
  constexpr std::array<std::string_view, 6> names{"water", "salt", "alum", "soda", "meal", "extra"};
  return names[static_cast<std::size_t>(role)];
}

/// The dissolved salt whose solubility limits a form.
enum class Solute {
  potassium_alum,
  ammonium_alum,
  aluminium_sulfate,
  sodium_chloride,
  sodium_carbonate,
  sodium_bicarbonate,
};

/// One form of one chemical: what a kilogram of it brings. Hydrates, and alum grades stated by
/// their alumina, differ in little else.
struct Form {
  std::string_view name;       ///< what a sheet calls it
  std::string_view short_name; ///< beside its role: "crystals"
  std::string_view formula;    ///< empty for a commercial grade
  Role role = Role::extra;
  AmountPerMass aluminium = 0.0 * mole / kilogram;
  AmountPerMass hydroxide = 0.0 * mole / kilogram; ///< bound to aluminium, carbonate driven off
  AmountPerMass carbonate = 0.0 * mole / kilogram; ///< becomes carbon dioxide
  MassFraction water = {0.0};                      ///< water of crystallisation
  MassFraction anhydrous = {1.0};                  ///< the dissolved salt without water
  std::optional<Solute> solute = std::nullopt;
  Density crystal_density = 1.5 * gram_per_millilitre;
  Source density_source = {};
};

namespace detail {

constexpr int atoms_of(const Composition &composition, std::string_view symbol) {
  for (std::size_t i = 0; i < elements.size(); ++i)
    if (elements[i].symbol == symbol) return composition.atoms[i];
  return 0;
}

inline constexpr MolarMass water_molar_mass = molar_mass(formula("H2O"));

struct SaltRow {
  std::string_view name;
  std::string_view short_name;
  std::string_view formula_text;
  Composition composition;
  int waters = 0;
  Role role = Role::extra;
  Solute solute = Solute::sodium_chloride;
  int hydroxide = 0; ///< per formula unit
  Density crystal_density = gram_per_millilitre;
  Mark density_mark = Mark::memory;
};

constexpr Form form_of(const SaltRow &row) {
  const MolarMass whole = molar_mass(row.composition);
  Form form;
  form.name = row.name;
  form.short_name = row.short_name;
  form.formula = row.formula_text;
  form.role = row.role;
  form.aluminium = static_cast<double>(atoms_of(row.composition, "Al")) / whole;
  form.carbonate = static_cast<double>(atoms_of(row.composition, "C")) / whole;
  form.hydroxide = static_cast<double>(row.hydroxide) / whole;
  form.water = {static_cast<double>(row.waters) * count(water_molar_mass, whole)};
  form.anhydrous = {1.0 - form.water.value};
  form.solute = row.solute;
  form.crystal_density = row.crystal_density;
  form.density_source = {"crystal density as printed in substance monographs", row.density_mark};
  return form;
}

} // namespace detail

namespace forms {

inline constexpr Form potassium_alum = detail::form_of(
    {"potassium alum", "potash alum", "KAl(SO4)2.12H2O", formula("KAl(SO4)2.12H2O"), 12, Role::alum,
     Solute::potassium_alum, 0, 1.725 * gram_per_millilitre, Mark::seen});
inline constexpr Form ammonium_alum = detail::form_of(
    {"ammonium alum", "ammonium alum", "NH4Al(SO4)2.12H2O", formula("NH4Al(SO4)2.12H2O"), 12,
     Role::alum, Solute::ammonium_alum, 0, 1.64 * gram_per_millilitre, Mark::seen});
inline constexpr Form aluminium_sulfate_14 =
    detail::form_of({"aluminium sulfate, 14 waters", "aluminium sulfate, 14 waters",
                     "Al2(SO4)3.14H2O", formula("Al2(SO4)3.14H2O"), 14, Role::alum,
                     Solute::aluminium_sulfate, 0, 1.65 * gram_per_millilitre});
inline constexpr Form aluminium_sulfate_16 =
    detail::form_of({"aluminium sulfate, 16 waters", "aluminium sulfate, 16 waters",
                     "Al2(SO4)3.16H2O", formula("Al2(SO4)3.16H2O"), 16, Role::alum,
                     Solute::aluminium_sulfate, 0, 1.65 * gram_per_millilitre});
inline constexpr Form aluminium_sulfate_18 =
    detail::form_of({"aluminium sulfate, 18 waters", "aluminium sulfate, 18 waters",
                     "Al2(SO4)3.18H2O", formula("Al2(SO4)3.18H2O"), 18, Role::alum,
                     Solute::aluminium_sulfate, 0, 1.62 * gram_per_millilitre, Mark::seen});
inline constexpr Form salt =
    detail::form_of({"salt", "salt", "NaCl", formula("NaCl"), 0, Role::salt,
                     Solute::sodium_chloride, 0, 2.17 * gram_per_millilitre});
inline constexpr Form soda_crystals = detail::form_of(
    {"washing soda crystals (decahydrate)", "crystals", "Na2CO3.10H2O", formula("Na2CO3.10H2O"), 10,
     Role::soda, Solute::sodium_carbonate, 2, 1.46 * gram_per_millilitre, Mark::seen});
inline constexpr Form soda_monohydrate = detail::form_of(
    {"washing soda, monohydrate", "monohydrate", "Na2CO3.H2O", formula("Na2CO3.H2O"), 1, Role::soda,
     Solute::sodium_carbonate, 2, 2.25 * gram_per_millilitre, Mark::seen});
inline constexpr Form soda_anhydrous = detail::form_of(
    {"washing soda powder (anhydrous)", "anhydrous powder", "Na2CO3", formula("Na2CO3"), 0,
     Role::soda, Solute::sodium_carbonate, 2, 2.54 * gram_per_millilitre, Mark::seen});
inline constexpr Form sodium_bicarbonate =
    detail::form_of({"sodium bicarbonate", "bicarbonate", "NaHCO3", formula("NaHCO3"), 0,
                     Role::soda, Solute::sodium_bicarbonate, 1, 2.20 * gram_per_millilitre});

inline constexpr std::array fixed{
    potassium_alum, ammonium_alum, aluminium_sulfate_14, aluminium_sulfate_16, aluminium_sulfate_18,
    salt,           soda_crystals, soda_monohydrate,     soda_anhydrous,       sodium_bicarbonate,
};

} // namespace forms

/// Aluminium sulfate of a commercial grade stated as mass of Al2O3 per mass (17 % is common); all
/// that is not Al2(SO4)3 counts as water. `alumina` must lie above 0 and at most 29.8 %, which is
/// the anhydrous salt.
constexpr Form aluminium_sulfate_of_alumina(MassFraction alumina) {
  constexpr MolarMass oxide = molar_mass(formula("Al2O3"));
  constexpr MolarMass sulfate = molar_mass(formula("Al2(SO4)3"));
  Form form = forms::aluminium_sulfate_14;
  form.name = "aluminium sulfate, by alumina";
  form.formula = "";
  form.aluminium = 2.0 * alumina.value / oxide;
  form.anhydrous = {alumina.value * count(sulfate, oxide)};
  form.water = {1.0 - form.anhydrous.value};
  return form;
}

/// Alumina of anhydrous aluminium sulfate, the largest that a grade can state.
inline constexpr MassFraction alumina_of_anhydrous_sulfate{
    count(molar_mass(formula("Al2O3")), molar_mass(formula("Al2(SO4)3")))};

/// The name of a form, with the alumina of a grade stated by it: "aluminium sulfate, 17 % Al2O3".
inline std::string form_name(const Form &form) {
  if (form.role != Role::alum || !form.formula.empty()) return std::string(form.name);
  constexpr MolarMass oxide = molar_mass(formula("Al2O3"));
  const MassFraction alumina{0.5 * count(form.aluminium * oxide * kilogram, kilogram)};
  return "aluminium sulfate, " + detail::trimmed_zeros(write_decimal(100.0 * alumina.value, 1)) +
         " % Al2O3";
}

/// How many kilograms of `other` one kilogram of `form` stands for, by moles of aluminium (alums)
/// or of hydroxide (sodas). Only forms of the same role can stand for each other.
constexpr double times_as_strong(const Form &form, const Form &other) {
  if (form.role == Role::alum) return form.aluminium / other.aluminium;
  if (form.role == Role::soda) return form.hydroxide / other.hydroxide;
  return 1.0;
}

} // namespace whittaw

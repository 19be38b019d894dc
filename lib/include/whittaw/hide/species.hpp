// Laws of hide area by species.
#pragma once

#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/source.hpp>

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace whittaw {

/// Area of a flayed skin, head and shanks off and laid slack, from live weight W:
/// `coefficient` x (W / 1 kg) ^ `exponent`.
struct WeightLaw {
  Area coefficient = 0.0 * square_metre;
  double exponent = 0.0;
  Spread spread; ///< of one hide about the law, all causes, one standard deviation
  Source source;
  /// Live weights beyond these are more likely a slip of the pen (common practice).
  Mass lightest = 0.0 * kilogram;
  Mass heaviest = 0.0 * kilogram;
  /// Live weights that the law was fitted on; the same where it is not known.
  Mass fitted_from = lightest;
  Mass fitted_to = heaviest;
};

/// Mass of one square metre of green (fresh, unsalted) skin with hair or wool on.
struct GreenLaw {
  ArealMass areal_mass = 0.0 * kilogram_per_square_metre;
  Spread spread;
  Source source;
};

struct Species {
  std::string_view name;
  std::array<std::string_view, 4> also_called{};
  std::optional<WeightLaw> weight_law = std::nullopt; ///< none where no equation is published
  GreenLaw green;
  /// Names of the errors that all hides of the species share.
  std::string_view weight_law_error;
  std::string_view green_law_error;
  bool only_when_asked = false; ///< a guess for any animal, never chosen for the user
};

/// The share of a law's variance that is the coefficient's own error, and so common to all hides
/// measured by it; the rest is between hides. No publication separates the two: an assumption.
inline constexpr Share shared_variance{0.5};

namespace detail {
inline constexpr std::string_view no_green_source =
    "mass of green skin by area: no table found; weigh and tape a few of your own";
inline constexpr double flayed_of_body = 0.75; ///< flayed skin over body surface
/// Of cows and of calves alike.
inline constexpr WeightLaw cattle_law{flayed_of_body * 0.14 * square_metre,
                                      0.57,
                                      {0.15},
                                      {"Brody 1945 as given by Pares-Casanova 2018, body surface "
                                       "of cattle, times 0.75 for the flayed "
                                       "skin",
                                       Mark::seen},
                                      15.0 * kilogram,
                                      1300.0 * kilogram};
} // namespace detail

inline constexpr std::array<Species, 10> species_table{{
    {"goat",
     {"kid", "buck", "doe"},
     WeightLaw{0.064 * square_metre,
               2.0 / 3.0,
               {0.13},
               {"calculated from McGregor 2016, Small Ruminant Research 145:28-32, 30 Angora kids "
                "of 8.3-23.1 kg",
                Mark::calculated},
               1.5 * kilogram,
               140.0 * kilogram,
               8.3 * kilogram,
               23.1 * kilogram},
     {2.5 * kilogram_per_square_metre,
      {0.20},
      {"Salehi et al. 2014, 200 goat skins: 2.28 kg/m2 (females) and 2.62 (males)", Mark::seen}},
     "goat weight law",
     "goat green weight"},
    {"sheep",
     {"lamb", "ewe", "ram"},
     WeightLaw{
         detail::flayed_of_body * 0.09 * square_metre,
         0.67,
         {0.17},
         {"Mitchell 1928, body surface of sheep (from memory), times 0.75 for the flayed skin",
          Mark::memory},
         1.5 * kilogram,
         180.0 * kilogram},
     {4.5 * kilogram_per_square_metre, {0.30}, {detail::no_green_source, Mark::assumption}},
     "sheep weight law",
     "sheep green weight"},
    {"cattle",
     {"cow", "heifer", "steer", "bull"},
     detail::cattle_law,
     {6.8 * kilogram_per_square_metre,
      {0.20},
      {"SLTC Journal, Criteria for the estimation of yield of leather from cattle hides, 477 "
       "hides, "
       "fleshed 5.15 to 6.55 kg/m2 (abstract), over 0.85 for the fleshings",
       Mark::calculated}},
     "cattle weight law",
     "cattle green weight"},
    {"calf",
     {},
     detail::cattle_law,
     {4.5 * kilogram_per_square_metre, {0.30}, {detail::no_green_source, Mark::assumption}},
     "cattle weight law",
     "calf green weight"},
    {"rabbit",
     {"hare"},
     WeightLaw{0.80 * 0.110 * square_metre,
               2.0 / 3.0,
               {0.08},
               {"Itoh et al. 2018, body surface of rabbits, k = 11.0, times 0.80 for the pelt",
                Mark::seen},
               0.4 * kilogram,
               10.0 * kilogram},
     {1.6 * kilogram_per_square_metre, {0.30}, {detail::no_green_source, Mark::assumption}},
     "rabbit weight law",
     "rabbit green weight"},
    {"pig",
     {"hog", "boar", "sow"},
     WeightLaw{
         detail::flayed_of_body * 0.0798 * square_metre,
         2.0 / 3.0,
         {0.15},
         {"Itoh et al. 2016, body surface of pigs, times 0.75 for the flayed skin", Mark::seen},
         1.0 * kilogram,
         400.0 * kilogram},
     {5.0 * kilogram_per_square_metre, {0.30}, {detail::no_green_source, Mark::assumption}},
     "pig weight law",
     "pig green weight"},
    {"deer",
     {"roe", "hind", "stag"},
     std::nullopt,
     {3.5 * kilogram_per_square_metre, {0.30}, {detail::no_green_source, Mark::assumption}},
     "deer weight law",
     "deer green weight"},
    {"alpaca",
     {"llama"},
     std::nullopt,
     {3.5 * kilogram_per_square_metre, {0.35}, {detail::no_green_source, Mark::assumption}},
     "alpaca weight law",
     "alpaca green weight"},
    {"reindeer",
     {"caribou"},
     std::nullopt,
     {4.0 * kilogram_per_square_metre, {0.35}, {detail::no_green_source, Mark::assumption}},
     "reindeer weight law",
     "reindeer green weight"},
    {"mammal",
     {},
     WeightLaw{
         detail::flayed_of_body * 0.10 * square_metre,
         2.0 / 3.0,
         {0.30},
         {"Meeh's law with k = 10, the middle of published mammals, times 0.75 for the flayed "
          "skin; a guess for an animal without a row of its own",
          Mark::memory},
         0.1 * kilogram,
         1500.0 * kilogram},
     {4.0 * kilogram_per_square_metre, {0.40}, {detail::no_green_source, Mark::assumption}},
     "mammal weight law",
     "mammal green weight",
     true},
}};

/// The row of a species by its name or one of its other names; nothing if unknown.
constexpr const Species *find_species(std::string_view name) {
  for (const auto &species : species_table) {
    if (species.name == name) return &species;
    for (const auto other : species.also_called)
      if (!other.empty() && other == name) return &species;
  }
  return nullptr;
}

} // namespace whittaw

// What can hurt someone, chosen by what is in the batch. No option turns these off.
#pragma once

#include <whittaw/paste/batch.hpp>
#include <whittaw/quantity/source.hpp>

#include <array>
#include <string_view>
#include <vector>

namespace whittaw {

/// When a caution applies.
enum class When {
  always,
  aluminium_sulfate,
  alum,
  ammonium_alum,
  soda,
  gas,
  sheep_or_goat,
  rabbit
};

struct Caution {
  std::string_view id;
  When when = When::always;
  std::string_view text;
  Source source;
};

inline constexpr Source practice{"", Mark::practice};

/// Product sheets differ on the alums: the stricter statement is given, and the label in hand
/// rules.
inline constexpr auto caution_table = std::to_array<Caution>({
    {"label", When::always, "Product labels and safety data sheets rule over this sheet.",
     practice},
    {"foam",
     When::gas,
     "Soda in alum FOAMS high and fast: alum clear first, then pour slowly, in the open air; never "
     "dry soda, never a closed lid.",
     {"reacts with acids, giving carbon dioxide: International Chemical Safety Card 1135",
      Mark::seen}},
    {"first-aid", When::always,
     "In the eye: rinse with water for 15 minutes, doctor. Swallowed: rinse the mouth, poison "
     "line. On skin: wash off.",
     practice},
    {"eyes-aluminium-sulfate",
     When::aluminium_sulfate,
     "Aluminium sulfate can blind: goggles, gloves.",
     {"H318, H290: ECHA registration data for aluminium sulfate", Mark::seen}},
    {"eyes-alum",
     When::alum,
     "Alum irritates eyes, skin and lungs: goggles, gloves, raise no dust.",
     {"H315, H319, H335: the stricter of published data sheets for potash and ammonium alum",
      Mark::seen}},
    {"ammonia", When::ammonium_alum,
     "A sharp smell is ammonia, from too much soda: stop, air the shed.", practice},
    {"eyes-soda",
     When::soda,
     "Washing soda burns eyes and harms skin: goggles, gloves.",
     {"H319: International Chemical Safety Card 1135, sodium carbonate", Mark::seen}},
    {"metal",
     When::always,
     "No metal bucket, bowl or spoon: alum eats metal, and metal stains the skin.",
     {"H290, may be corrosive to metals: ECHA registration data for aluminium sulfate",
      Mark::seen}},
    {"raw-hide", When::always,
     "Raw hide carries disease: gloves, cover cuts, wash hands. No hide of a sick animal. Fever or "
     "a sore: doctor, and say you handle hides.",
     practice},
    {"orf", When::sheep_or_goat, "Sheep and goats: orf, Q fever. Pregnant people keep away.",
     practice},
    {"tularaemia", When::rabbit, "Wild rabbits and hares: tularaemia. Double gloves.", practice},
    {"dust", When::always, "Dust mask to weigh powders and to shake off hides.", practice},
    {"keep-away", When::always,
     "Keep children, dogs and stock from paste, powder and pasted hides: they poison.", practice},
    {"waste", When::always,
     "No paste or wash water to ditch, stream or field: local rules on waste water and animal "
     "by-products decide.",
     practice},
    {"not-food", When::always, "Nothing used here goes back to the kitchen.", practice},
});

namespace detail {
inline bool applies(When when, const Day &day, const Batch &batch) {
  const auto has = [&](auto wanted) {
    for (const auto &ingredient : batch.ingredients)
      if (wanted(ingredient)) return true;
    return false;
  };
  const auto solute = [&](Solute wanted) {
    return has([&](const Ingredient &each) { return each.form.solute == wanted; });
  };
  const auto species = [&](std::string_view name) {
    for (const auto &hide : day.hides)
      if (hide.species->name == name) return true;
    return false;
  };
  switch (when) {
  case When::always: return true;
  case When::aluminium_sulfate: return solute(Solute::aluminium_sulfate);
  case When::alum: return solute(Solute::potassium_alum) || solute(Solute::ammonium_alum);
  case When::ammonium_alum: return solute(Solute::ammonium_alum);
  case When::soda: return solute(Solute::sodium_carbonate);
  case When::gas: return batch.liquor.carbon_dioxide > 0.0 * litre;
  case When::sheep_or_goat: return species("sheep") || species("goat");
  case When::rabbit: return species("rabbit");
  }
  return true;
}
} // namespace detail

inline std::vector<Caution> cautions_for(const Day &day, const Batch &batch) {
  std::vector<Caution> chosen;
  for (const auto &caution : caution_table)
    if (detail::applies(caution.when, day, batch)) chosen.push_back(caution);
  return chosen;
}

} // namespace whittaw

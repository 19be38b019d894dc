// Whether saved powder will do for a fresh hide.
#pragma once

#include <whittaw/powder/book.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw {

/// Powder dusted on a square metre of flesh side: an assumption.
inline constexpr ArealMass dusting_rate = 0.8 * kilogram_per_square_metre;
/// Below this strength a powder is mostly meal; above these rounds too much of a hide is in it.
/// Assumptions.
inline constexpr Strength least_strength{0.35};
inline constexpr int most_rounds = 3;

enum class JarOrder { oldest, strongest, least_left };

/// Why a jar's powder is not to go on another hide; empty if it may.
inline std::string not_reusable(const Jar &jar) {
  if (is_empty(jar.contents)) return "empty";
  if (jar.suspect) return "from an animal under suspicion of disease: throw it out";
  if (jar.slipped) return "from a hide that slipped";
  if (moisture_of(jar) > damp_above) return "damp: dry it first, throw it out if it is caked";
  if (jar.rounds > most_rounds) return "on a hide " + std::to_string(jar.rounds) + " times already";
  if (strength_of(jar) < least_strength)
    return "weak, " + write_percent(strength_of(jar), 2) + " as strong as fresh";
  return "";
}

struct CoverDraw {
  std::string jar;
  Mass mass = 0.0 * kilogram;
  Mass left = 0.0 * kilogram;
};

enum class CoverAnswer { yes, with_alum, no };

struct Cover {
  CoverAnswer answer = CoverAnswer::no;
  std::vector<CoverDraw> draws;
  Mass powder = 0.0 * kilogram;        ///< drawn
  Mass powder_wanted = 0.0 * kilogram; ///< by the dusting rate
  Mass alum_wanted = 0.0 * kilogram;   ///< by the offer, as potash alum
  Mass alum = 0.0 * kilogram;          ///< in the powder drawn, as potash alum
  Chance enough;                       ///< that the powder alone holds the alum wanted
  Mass fresh_alum = 0.0 * kilogram; ///< to stir in so that it is enough with the chance asked for
  Mass fresh_salt = 0.0 * kilogram;
};

struct CoverNeed {
  Area area = 0.0 * square_metre;
  Mass fleshed_weight = 0.0 * kilogram;
  Offer offer = usual_offer.low;
  Chance chance = usual_chance;
};

/// Salt stirred in with fresh alum, by mass of the alum: half, as in the bulletin's paste.
inline constexpr Share salt_with_alum{0.5};

/// Draws powder for a hide by the dusting rate, from the jars that may be used in the order asked
/// for, and holds its alum against the offer. The chance is that of a normal distribution.
inline Cover cover(const PowderBook &book, const CoverNeed &need, JarOrder order) {
  std::vector<const Jar *> jars;
  for (const auto &jar : book.jars)
    if (not_reusable(jar).empty()) jars.push_back(&jar);
  std::stable_sort(jars.begin(), jars.end(), [&](const Jar *a, const Jar *b) {
    switch (order) {
    case JarOrder::oldest: return a->last_at < b->last_at;
    case JarOrder::strongest: return strength_of(*a) > strength_of(*b);
    case JarOrder::least_left: return mass_of(*a) < mass_of(*b);
    }
    return false;
  });

  Cover result;
  result.powder_wanted = need.area * dusting_rate;
  result.alum_wanted = need.offer.value * need.fleshed_weight;
  const AmountPerMass per_alum = forms::potassium_alum.aluminium;
  Mass left = result.powder_wanted;
  double shared = 0.0; // moles of aluminium
  double own = 0.0;
  for (const Jar *jar : jars) {
    if (!(left > 0.0 * kilogram)) break;
    const Mass there = mass_of(*jar);
    const Mass taken = std::min(left, there);
    const double part = count(taken, there);
    left -= taken;
    result.draws.push_back({jar->name, taken, there - taken});
    result.powder += taken;
    result.alum += part * (aluminium_of(jar->contents) / per_alum);
    shared += part * count(jar->aluminium_shared_sd, mole);
    own = std::hypot(own, part * count(jar->aluminium_own_sd, mole));
  }
  const Mass sd = std::hypot(shared, own) * mole / per_alum;
  const Mass short_of = result.alum_wanted - result.alum;
  result.enough = sd > 0.0 * kilogram
                      ? Chance{0.5 * std::erfc(count(short_of, sd) / std::sqrt(2.0))}
                      : Chance{short_of > 0.0 * kilogram ? 0.0 : 1.0};
  if (left > 1e-9 * result.powder_wanted) return result; // too little to dust the hide
  const Mass topping = short_of + normal_quantile(need.chance) * sd;
  if (topping > 0.0 * kilogram) {
    result.answer = CoverAnswer::with_alum;
    result.fresh_alum = topping;
    result.fresh_salt = salt_with_alum.value * topping;
  } else {
    result.answer = CoverAnswer::yes;
  }
  return result;
}

} // namespace whittaw

// One hide and its area, by whichever measure is at hand.
#pragma once

#include <whittaw/hide/species.hpp>
#include <whittaw/hide/tape.hpp>
#include <whittaw/hide/trim.hpp>

#include <optional>
#include <string>
#include <variant>

namespace whittaw {

struct LiveWeight {
  Mass mass = 0.0 * kilogram;
};
/// Fresh, unsalted weight; `own` replaces the species row's mass by area.
struct GreenWeight {
  Mass mass = 0.0 * kilogram;
  std::optional<ArealMass> own = std::nullopt;
};
struct KnownArea {
  Area area = 0.0 * square_metre;
};

using AreaMeasure = std::variant<LiveWeight, GreenWeight, Tape, KnownArea>;

struct Hide {
  std::string tag;
  const Species *species = nullptr; ///< a row of species_table
  AreaMeasure measure;
  std::optional<Mass> fleshed_weight = std::nullopt;
  Trim trim = Trim::whole;
  std::string owner = {};
};

struct HideArea {
  Estimate<Area> flayed;  ///< the whole flayed skin laid slack, head and shanks off
  Estimate<Area> trimmed; ///< what is left to be pasted
  std::string_view method;
  Source source;
};

/// One standard deviation of a stated area: a pin-wheel machine keeps 1 % (ISO 11646; from memory),
/// a tracing at home about 2 %: an assumption.
inline constexpr Spread known_area_spread{0.02};
/// One standard deviation of the workshop's own kilogram per square metre: an assumption.
inline constexpr Spread own_areal_mass_spread{0.12};

namespace detail {

/// The part of a law's spread that all its hides share, and the part of each hide.
inline double shared_part(Spread spread) { return spread.value * std::sqrt(shared_variance.value); }
inline double own_part(Spread spread) {
  return spread.value * std::sqrt(1.0 - shared_variance.value);
}

/// An area by a law whose shared error, named, is in the coefficient that multiplies (`sign` 1) or
/// divides (`sign` -1).
inline Estimate<Area> by_law(Area value, Spread spread, std::string_view name, double sign) {
  return {value, own_part(spread) * value, {{name, sign * shared_part(spread) * value}}};
}

inline Problem no_weight_law(const Species &species) {
  const bool vowel = std::string_view("aeiou").find(species.name.front()) != std::string::npos;
  return {"no published equation gives the area of " + std::string(vowel ? "an " : "a ") +
              std::string(species.name) + " skin from live weight",
          "tape it (length and widths), give the area of its measured outline, weigh it green, or "
          "ask for the rough guess with species 'mammal'"};
}

inline Result<HideArea> flayed_area(const Hide &hide) {
  const Species &species = *hide.species;
  if (const auto *live = std::get_if<LiveWeight>(&hide.measure)) {
    if (!species.weight_law) return no_weight_law(species);
    const WeightLaw &law = *species.weight_law;
    const Area area = std::pow(count(live->mass, kilogram), law.exponent) * law.coefficient;
    const auto estimate = by_law(area, law.spread, species.weight_law_error, 1.0);
    return HideArea{estimate, estimate, "live weight", law.source};
  }
  if (const auto *green = std::get_if<GreenWeight>(&hide.measure)) {
    if (green->own) {
      const auto estimate =
          by_law(green->mass / *green->own, own_areal_mass_spread, "own mass by area", -1.0);
      return HideArea{estimate,
                      estimate,
                      "green weight, own figure",
                      {"the workshop's own mass by area", Mark::own}};
    }
    const auto estimate = by_law(green->mass / species.green.areal_mass, species.green.spread,
                                 species.green_law_error, -1.0);
    return HideArea{estimate, estimate, "green weight", species.green.source};
  }
  if (const auto *tape = std::get_if<Tape>(&hide.measure)) {
    auto checked = check_tape(*tape);
    if (!checked) return checked.problem();
    auto measured = tape_area(*tape);
    switch (measured.rule) {
    case TapeRule::length_by_width:
      return HideArea{measured.area, measured.area, "tape, length by width",
                      length_by_width_source};
    case TapeRule::trapezoid:
      return HideArea{measured.area, measured.area, "tape, trapezoids", tape_rule_source};
    case TapeRule::simpson:
      return HideArea{measured.area, measured.area, "tape, Simpson's rule", tape_rule_source};
    }
  }
  const auto &known = std::get<KnownArea>(hide.measure);
  const auto estimate = whittaw::estimate(known.area, known_area_spread);
  return HideArea{estimate, estimate, "known area", {"as stated by the user", Mark::own}};
}

/// What the trim leaves: by the tape's own lengths where there is one, else the table's share,
/// whose error all hides of the trim share.
inline Estimate<Area> trimmed_area(const Hide &hide, const Estimate<Area> &flayed) {
  if (hide.trim == Trim::whole) return flayed;
  const auto &row = trim_row(hide.trim);
  const auto *tape = std::get_if<Tape>(&hide.measure);
  if (tape == nullptr || tape->widths.size() == 2) {
    auto left = row.kept.value * flayed;
    add_shared(left.shared, row.error, row.spread.value * left.value);
    return left;
  }
  if (tape->widths.size() == 1) { // the very rectangle that was read, or the ellipse in it
    const double of = hide.trim == Trim::square ? 1.0 : std::numbers::pi / 4.0;
    const double spread =
        std::hypot(width_reading_spread.value, laying_spread.value, cutting_spread.value);
    return estimate(of * tape->length * tape->widths.front(), Spread{spread});
  }
  const Area cut =
      hide.trim == Trim::square ? inscribed_rectangle(*tape) : inscribed_ellipse(*tape);
  auto left = std::min(1.0, count(cut, flayed.value)) * flayed;
  left.own_sd = root_sum_square(left.own_sd, cutting_spread.value * left.value, square_metre);
  return left;
}

} // namespace detail

/// The area of a hide, as flayed and as trimmed. A known area is the hide's own as it lies, so its
/// trim is not taken off a second time.
/// Errors: a species without a weight law, a tape that is not sound.
inline Result<HideArea> hide_area(const Hide &hide) {
  auto area = detail::flayed_area(hide);
  if (!area) return area;
  if (!std::holds_alternative<KnownArea>(hide.measure))
    area.value().trimmed = detail::trimmed_area(hide, area->flayed);
  return area;
}

/// Fleshed over green weight, when a hide was not weighed after fleshing: an assumption.
inline constexpr Share fleshed_of_green{0.85};
inline constexpr Spread fleshed_of_green_spread{0.10};

inline constexpr std::string_view fleshings_error = "fleshings";

/// The fleshed weight of what is pasted, wool or hair on: as weighed (after trimming), else green
/// weight less the fleshings and what is trimmed, else from the area. The species' mass by area,
/// and the share of fleshings, are errors that hides share.
inline Estimate<Mass> fleshed_weight(const Hide &hide, const HideArea &area) {
  if (hide.fleshed_weight) return {*hide.fleshed_weight, 0.01 * *hide.fleshed_weight, {}};
  if (const auto *green = std::get_if<GreenWeight>(&hide.measure)) {
    const double kept = count(area.trimmed.value, area.flayed.value);
    return shared_estimate(kept * fleshed_of_green.value * green->mass, fleshed_of_green_spread,
                           fleshings_error);
  }
  const GreenLaw &law = hide.species->green;
  auto weight = scale(area.trimmed, fleshed_of_green.value * law.areal_mass);
  weight.own_sd =
      detail::root_sum_square(weight.own_sd, detail::own_part(law.spread) * weight.value, kilogram);
  detail::add_shared(weight.shared, hide.species->green_law_error,
                     detail::shared_part(law.spread) * weight.value);
  detail::add_shared(weight.shared, fleshings_error, fleshed_of_green_spread.value * weight.value);
  return weight;
}

/// Area over fleshed weight, the figure that turns a coat into an offer. Where one follows from the
/// other, only the mass by area and the fleshings are uncertain.
inline Estimate<double> area_per_weight(const Hide &hide, const HideArea &area,
                                        const Estimate<Mass> &weight) {
  const double value = count(area.trimmed.value, square_metre) / count(weight.value, kilogram);
  if (hide.fleshed_weight) {
    const double own = std::hypot(count(area.trimmed.own_sd, area.trimmed.value),
                                  count(weight.own_sd, weight.value));
    Estimate<double> result{value, own * value, {}};
    for (const auto &error : area.trimmed.shared)
      detail::add_shared(result.shared, error.name, count(error.sd, area.trimmed.value) * value);
    return result;
  }
  const auto *green = std::get_if<GreenWeight>(&hide.measure);
  const bool own_figure = green != nullptr && green->own.has_value();
  const Spread spread = own_figure ? own_areal_mass_spread : hide.species->green.spread;
  const std::string_view name = own_figure ? "own mass by area" : hide.species->green_law_error;
  return {value,
          detail::own_part(spread) * value,
          {{name, -detail::shared_part(spread) * value},
           {fleshings_error, -fleshed_of_green_spread.value * value}}};
}

} // namespace whittaw

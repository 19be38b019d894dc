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
/// Fresh, unsalted weight.
struct GreenWeight {
  Mass mass = 0.0 * kilogram;
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
  std::optional<ArealMass> own_areal_mass = std::nullopt; ///< instead of the species row's
};

struct HideArea {
  Estimate<Area> flayed;  ///< the whole flayed skin laid slack, head and shanks off
  Estimate<Area> trimmed; ///< what is left to be pasted
  std::string_view method;
  Source source;
  Source trim_source = {}; ///< of what was cut off; no text where nothing was
};

/// One standard deviation of a stated area: a pin-wheel machine keeps 1 % (ISO 11646; from memory),
/// a tracing at home about 2 %: an assumption.
inline constexpr Spread known_area_spread{0.02};
/// One standard deviation of the workshop's own kilogram per square metre: an assumption.
inline constexpr Spread own_areal_mass_spread{0.12};

/// Green mass by area that a hide is reckoned with.
struct MassByArea {
  ArealMass value = 0.0 * kilogram_per_square_metre;
  Spread spread;
  std::string_view error; ///< name of the error that the species' hides share
  Source source;
};

inline MassByArea mass_by_area(const Hide &hide) {
  const Species &species = *hide.species;
  if (hide.own_areal_mass)
    return {*hide.own_areal_mass,
            own_areal_mass_spread,
            species.green_law_error,
            {"the workshop's own mass by area", Mark::own}};
  return {species.green.areal_mass, species.green.spread, species.green_law_error,
          species.green.source};
}

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
    const Area area =
        power_law(law.coefficient, Estimate<Mass>{live->mass}, kilogram, law.exponent).value;
    const auto estimate = by_law(area, law.spread, species.weight_law_error, 1.0);
    return HideArea{estimate, estimate, "live weight", law.source};
  }
  if (const auto *green = std::get_if<GreenWeight>(&hide.measure)) {
    const MassByArea law = mass_by_area(hide);
    const auto estimate = by_law(green->mass / law.value, law.spread, law.error, -1.0);
    return HideArea{estimate, estimate,
                    hide.own_areal_mass ? "green weight, own figure" : "green weight", law.source};
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

/// Cuts the trim off: by the tape's own lengths where there is one, else by the table's share,
/// whose error all hides of the trim share.
inline void trim_off(const Hide &hide, HideArea &area) {
  if (hide.trim == Trim::whole) return;
  const auto &row = trim_row(hide.trim);
  const auto *tape = std::get_if<Tape>(&hide.measure);
  if (tape == nullptr || tape->widths.size() == 2) {
    area.trimmed = row.kept.value * area.flayed;
    add_shared(area.trimmed.shared, row.error, row.spread.value * area.trimmed.value);
    area.trim_source = row.source;
    return;
  }
  area.trim_source = {"by the lengths taped", Mark::own};
  if (tape->widths.size() == 1) { // the very rectangle that was read, or the ellipse in it
    const double of = hide.trim == Trim::square ? 1.0 : std::numbers::pi / 4.0;
    const double spread =
        std::hypot(width_reading_spread.value, laying_spread.value, cutting_spread.value);
    area.trimmed = estimate(of * tape->length * tape->widths.front(), Spread{spread});
    return;
  }
  const Area cut =
      hide.trim == Trim::square ? inscribed_rectangle(*tape) : inscribed_ellipse(*tape);
  area.trimmed = std::min(1.0, count(cut, area.flayed.value)) * area.flayed;
  area.trimmed.own_sd =
      root_sum_square(area.trimmed.own_sd, cutting_spread.value * area.trimmed.value, square_metre);
}

} // namespace detail

/// The area of a hide, as flayed and as trimmed. A known area is the hide's own as it lies, so its
/// trim is not taken off a second time.
/// Errors: a species without a weight law, a tape that is not sound.
inline Result<HideArea> hide_area(const Hide &hide) {
  auto area = detail::flayed_area(hide);
  if (!area) return area;
  if (!std::holds_alternative<KnownArea>(hide.measure)) detail::trim_off(hide, area.value());
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
  const MassByArea law = mass_by_area(hide);
  auto weight = scale(area.trimmed, fleshed_of_green.value * law.value);
  weight.own_sd =
      detail::root_sum_square(weight.own_sd, detail::own_part(law.spread) * weight.value, kilogram);
  detail::add_shared(weight.shared, law.error, detail::shared_part(law.spread) * weight.value);
  detail::add_shared(weight.shared, fleshings_error, fleshed_of_green_spread.value * weight.value);
  return weight;
}

/// Relative errors of area over fleshed weight, the figure that turns a coat into an offer, for a
/// hide that is `of_area` of the day's area and `of_weight` of its weight. Where one of the two
/// follows from the other by the mass by area, the area's other errors fall out of their ratio.
inline Estimate<double> area_per_weight_error(const Hide &hide, const HideArea &area,
                                              const Estimate<Mass> &weight, Share of_area = {1.0},
                                              Share of_weight = {1.0}) {
  Estimate<double> error;
  if (hide.fleshed_weight) {
    error.own_sd = std::hypot(of_area.value * count(area.trimmed.own_sd, area.trimmed.value),
                              of_weight.value * count(weight.own_sd, weight.value));
    for (const auto &each : area.trimmed.shared)
      detail::add_shared(error.shared, each.name,
                         of_area.value * count(each.sd, area.trimmed.value));
    return error;
  }
  // By green weight the mass by area moves the area, else it moves the weight.
  const MassByArea law = mass_by_area(hide);
  const bool moves_area = std::holds_alternative<GreenWeight>(hide.measure);
  const double moved = moves_area ? of_area.value : of_weight.value;
  error.own_sd = moved * detail::own_part(law.spread);
  detail::add_shared(error.shared, law.error, -moved * detail::shared_part(law.spread));
  detail::add_shared(error.shared, fleshings_error,
                     -of_weight.value * fleshed_of_green_spread.value);
  return error;
}

} // namespace whittaw

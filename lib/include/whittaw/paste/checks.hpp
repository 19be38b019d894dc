// What could go wrong with a batch, and what to change.
#pragma once

#include <whittaw/paste/batch.hpp>
#include <whittaw/paste/workshop.hpp>
#include <whittaw/quantity/write.hpp>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw {

enum class Level { ok, note, warn, stop };

constexpr std::string_view level_name(Level level) {
  constexpr std::array<std::string_view, 4> names{"ok", "note", "warn", "stop"};
  return names[static_cast<std::size_t>(level)];
}

struct Check {
  std::string_view id;
  Level level = Level::ok;
  std::string text;
};

/// A shed in the cool season; below it a note on crystals would never end. An assumption.
inline constexpr Temperature cool_shed = degrees_celsius(5.0);
/// A scale's step may put a part off by this much before it is said. An assumption.
inline constexpr Share most_scale_error{0.03};
/// Above this spread of the day's area a tape is advised. An assumption.
inline constexpr Spread wide_area_spread{0.15};
/// Trimmed areas beyond these are no hide of farm or wood. Common practice.
inline constexpr Area smallest_hide = 0.005 * square_metre;
inline constexpr Area largest_hide = 7.0 * square_metre;
/// A fleshed weight may be off the species' usual mass by area by this factor. An assumption.
inline constexpr double odd_fleshed_weight = 3.0;

namespace detail {

inline Check check_basicity(Basicity value) {
  const auto &row = basicity_band(value);
  const std::string figure =
      "Basicity " + write_percent(value, 3) + ": " + std::string(row.meaning);
  switch (row.band) {
  case BasicityBand::plain:
  case BasicityBand::low: return {"basicity", Level::note, figure + "."};
  case BasicityBand::fair: return {"basicity", Level::ok, figure + "."};
  case BasicityBand::high:
    return {"basicity", Level::warn, figure + ". Use less soda; keep basicity below 35 %."};
  case BasicityBand::dropping:
    return {"basicity", Level::stop,
            figure + ". Do not mix this. Check the form of the soda and the kind of alum."};
  }
  return {};
}

/// What does not dissolve in one water, and the water that would.
inline void check_water(std::vector<Check> &checks, std::string_view id, std::string_view where,
                        const std::vector<Saturation> &salts, Temperature temperature,
                        UnitSystem units, const ScaleStep &step) {
  const auto warmer = warmer_to_dissolve(salts, temperature);
  for (const auto &salt : salts) {
    if (!salt.overfull()) continue;
    const std::string what = write_mass(salt.undissolved, units, step) + " of the " +
                             std::string(solubility_row(salt.solute).name) +
                             " does not dissolve in " + std::string(where) + " at " +
                             write_temperature(temperature, units) + " (pure-water table)";
    if (!salt.needs)
      checks.push_back({id, Level::stop, what + ", nor in hot water. Use more water."});
    else if (*salt.needs <= temperature)
      checks.push_back({id, Level::warn,
                        what + ", for it dissolves less above " +
                            write_temperature(best_temperature(salt.solute), units) +
                            ". Use cooler water."});
    else
      checks.push_back({id, Level::warn,
                        what + ". Use water of at least " + write_temperature(*warmer, units) +
                            " and stir until clear."});
  }
}

inline void check_saturation(std::vector<Check> &checks, const BatchLiquor &liquor,
                             UnitSystem units, const ScaleStep &step) {
  const std::size_t before = checks.size();
  if (liquor.soda_water.empty()) {
    check_water(checks, "dissolve-liquor", "the liquor", liquor.mixed, liquor.temperature, units,
                step);
  } else {
    check_water(checks, "dissolve-alum", "the alum water", liquor.alum_water, liquor.temperature,
                units, step);
    check_water(checks, "dissolve-soda", "the salt and soda water", liquor.soda_water,
                liquor.temperature, units, step);
  }
  if (checks.size() == before)
    checks.push_back({"dissolve", Level::ok,
                      "All of it dissolves at " + write_temperature(liquor.temperature, units) +
                          " (pure-water tables)."});
  const auto cold = first_to_crystallise(liquor.mixed);
  if (cold && cold->below > cool_shed) {
    const auto keep = degrees_celsius(std::ceil(celsius_value(cold->below)));
    const std::string what(solubility_row(cold->solute).name);
    if (keep > warmest_paste)
      checks.push_back({"keep-warm", Level::stop,
                        "The " + what + " stays dissolved only above " +
                            write_temperature(keep, units) + ", and raw skin bears no more than " +
                            write_temperature(warmest_paste, units) + ". Use more water."});
    else
      checks.push_back(
          {"keep-warm", Level::note,
           "Below " + write_temperature(keep, units) + " " + what +
               " crystallises in the paste: keep bucket and pasted hides above that."});
  }
  if (liquor.temperature > warmest_paste)
    checks.push_back({"too-warm", Level::warn,
                      "Water of " + write_temperature(liquor.temperature, units) +
                          " is for dissolving only: let it cool to " +
                          write_temperature(warmest_paste, units) +
                          " before meal and hides, raw skin shrinks in heat."});
}

/// What the steps of the scale do to alum, salt or soda, all bags of one together.
inline void check_scale(std::vector<Check> &checks, const Batch &batch, UnitSystem units,
                        const ScaleStep &step) {
  for (const Role role : {Role::alum, Role::salt, Role::soda}) {
    Mass wanted = 0.0 * kilogram;
    Mass shown = 0.0 * kilogram;
    std::string name;
    for (const auto &ingredient : batch.ingredients) {
      if (ingredient.role != role) continue;
      wanted += ingredient.mass;
      shown += on_scale(ingredient.mass, units, step);
      name += (name.empty() ? "" : " and ") + ingredient.name;
    }
    if (!(wanted > 0.0 * kilogram)) continue;
    const Share off{std::abs(count(shown, wanted) - 1.0)};
    if (!(shown > 0.0 * kilogram))
      checks.push_back(
          {"scale", Level::stop,
           "The scale cannot weigh so little " + name + ". Use a finer scale or mix more."});
    else if (off > most_scale_error)
      checks.push_back({"scale", Level::warn,
                        "The scale's step puts " + name + " off by " + write_percent(off, 1) +
                            ". Use a finer scale or mix more."});
  }
}

inline std::string some_of(const std::vector<std::string> &names) {
  std::string text;
  for (std::size_t i = 0; i < names.size() && i < 4; ++i) text += (i ? ", " : "") + names[i];
  if (names.size() > 4) text += " and " + std::to_string(names.size() - 4) + " more";
  return text;
}

/// Hides whose own offer is off the range by more than its spread, each with the coat that would
/// do.
inline std::string uneven_hides(const Day &day, const Batch &batch, const OfferRange &range,
                                UnitSystem units) {
  std::vector<std::string> off;
  for (std::size_t i = 0; i < batch.hides.size(); ++i) {
    const Offer offer = batch.hides[i].offer;
    const double sd = offer.value * batch.hides[i].offer_spread.value;
    const bool low = offer.value + sd < range.low.value;
    const bool high = offer.value - sd > range.high.value;
    if (!low && !high) continue;
    const double factor = (low ? range.low.value : range.high.value) / offer.value;
    off.push_back(day.hides[i].tag + (low ? " low (" : " high (") +
                  write_length(factor * batch.coat, units) + " would do)");
  }
  if (off.empty()) return "";
  return " By hide: " + some_of(off) + "; the batch is not sized for that.";
}

inline Check check_offer(const Day &day, const Batch &batch, UnitSystem units) {
  const OfferRange range = day.recipe.offer.value_or(usual_offer);
  const std::string wanted =
      write_significant(range.low.value * 100.0, 2) + " to " + write_percent(range.high, 2);
  const std::string figure =
      "Alum offer " +
      write_percent_spread(batch.offer, batch.offer.value * batch.offer_spread.value) +
      " of fleshed weight";
  const std::string uneven = uneven_hides(day, batch, range, units);
  const bool under = batch.offer < range.low;
  const bool over = batch.offer > range.high;
  if (!under && !over)
    return {"offer", uneven.empty() ? Level::ok : Level::note,
            figure + ", within " + wanted + "." + uneven};
  const double factor = (under ? range.low.value : range.high.value) / batch.offer.value;
  std::string text = figure + (under ? ", below " : ", above ") + wanted + ". Spread " +
                     write_length(factor * batch.coat, units) + " rather than " +
                     write_length(batch.coat, units);
  const int coats = under ? static_cast<int>(std::ceil(factor * batch.coats - 1e-9))
                          : static_cast<int>(std::floor(factor * batch.coats + 1e-9));
  const Offer then{batch.offer.value * coats / batch.coats};
  if (coats >= 1 && coats != batch.coats && then >= range.low && then <= range.high)
    text += ", or put on " + std::to_string(coats) + (coats == 1 ? " coat" : " coats") +
            " rather than " + std::to_string(batch.coats);
  text += ", or make the liquor " + write_significant(factor, 3) +
          " times as strong, alum, salt and soda together." + uneven;
  return {"offer", Level::warn, text};
}

inline void check_vessel(std::vector<Check> &checks, const Day &day, const Batch &batch,
                         UnitSystem units) {
  const Bucket &bucket = day.bucket;
  if (bucket.material != nullptr && bucket.material->metal)
    checks.push_back({"vessel", Level::stop,
                      "The bucket is " + std::string(bucket.material->name) +
                          ": alum eats metal and metal stains. Use plastic, wood or stoneware."});
  if (bucket.material == nullptr)
    checks.push_back({"vessel", Level::note,
                      "The day does not say what the bucket is made of: it must not be metal."});
  if (batch.lots > 1) {
    checks.push_back({"bucket", Level::warn,
                      "The bucket holds " + write_volume(*bucket.volume, units) +
                          "; the paste with "
                          "room to stir and foam needs " +
                          write_volume(batch.bucket, units) + ". Mix in " +
                          std::to_string(batch.lots) + " equal lots."});
  }
}

inline void check_shelf(std::vector<Check> &checks, const Day &day, const Batch &batch,
                        UnitSystem units, const ScaleStep &step) {
  for (const auto &ingredient : batch.ingredients) {
    if (ingredient.bag && day.shelf[*ingredient.bag].iodized)
      checks.push_back(
          {"iodized-salt", Level::stop, "The salt is iodized. Use plain salt without iodine."});
    const bool short_of =
        std::any_of(batch.missing.begin(), batch.missing.end(),
                    [&](const Missing &missing) { return missing.role == ingredient.role; });
    const bool extra = ingredient.role == Role::water || ingredient.role == Role::extra;
    if (!ingredient.bag && !day.shelf.empty() && !extra && !short_of)
      checks.push_back({"not-on-shelf", Level::note,
                        "No " + std::string(role_name(ingredient.role)) +
                            " is on the shelf list: the card takes " + ingredient.name + "."});
  }
  const auto &meal = day.recipe.meal;
  for (const auto &ingredient : batch.ingredients)
    if (ingredient.role == Role::meal && meal && ingredient.form.name != meal->kind->name)
      checks.push_back({"meal", Level::note,
                        "The recipe means " + std::string(meal->kind->name) + "; " +
                            ingredient.name + " is taken weight for weight: judge by the feel."});
  for (const auto &missing : batch.missing)
    checks.push_back({"shelf-short", Level::stop,
                      "The shelf lacks " + std::string(role_name(missing.role)) + " worth " +
                          write_mass(missing.mass, units, step) + " of " + form_name(missing.form) +
                          ". Get more, or split the day."});
}

/// What is odd about one hide's size; empty if nothing is.
inline std::string odd_size(const Hide &hide, const HideArea &area) {
  const auto *live = std::get_if<LiveWeight>(&hide.measure);
  if (live != nullptr && hide.species->weight_law &&
      (live->mass < hide.species->weight_law->lightest ||
       live->mass > hide.species->weight_law->heaviest))
    return "an unusual live weight for its species";
  if (area.flayed.value < smallest_hide || area.flayed.value > largest_hide)
    return "an unusual size for any hide";
  return "";
}

/// Whether a weighed fleshed weight cannot be of this hide.
inline bool odd_fleshed(const Hide &hide, const HideArea &area) {
  if (!hide.fleshed_weight) return false;
  const auto *green = std::get_if<GreenWeight>(&hide.measure);
  if (green != nullptr && *hide.fleshed_weight > green->mass) return true;
  const double factor = count(*hide.fleshed_weight / area.trimmed.value,
                              fleshed_of_green.value * mass_by_area(hide).value);
  return factor > odd_fleshed_weight || factor < 1.0 / odd_fleshed_weight;
}

inline void check_hides(std::vector<Check> &checks, const Day &day, const Batch &batch) {
  std::vector<std::string> odd;
  std::vector<std::string> weights;
  for (std::size_t i = 0; i < day.hides.size(); ++i) {
    const auto &area = batch.hides[i].area;
    if (!odd_size(day.hides[i], area).empty()) odd.push_back(day.hides[i].tag);
    if (odd_fleshed(day.hides[i], area)) weights.push_back(day.hides[i].tag);
  }
  if (!weights.empty())
    checks.push_back({"fleshed-weight", Level::warn,
                      "The fleshed weight does not fit the hide's size: " + some_of(weights) +
                          ". Check it; it is weighed after fleshing and trimming."});
  std::vector<std::string> outside;
  for (const auto &hide : day.hides) {
    const auto *live = std::get_if<LiveWeight>(&hide.measure);
    if (live == nullptr || !hide.species->weight_law) continue;
    const auto &law = *hide.species->weight_law;
    const bool usual = live->mass >= law.lightest && live->mass <= law.heaviest;
    if (usual && (live->mass < law.fitted_from || live->mass > law.fitted_to))
      outside.push_back(hide.tag);
  }
  if (!outside.empty())
    checks.push_back({"outside-law", Level::note,
                      "Outside the weights that the area law was fitted on: " + some_of(outside) +
                          ". A tape is surer."});
  if (!odd.empty())
    checks.push_back({"hide-size", Level::warn,
                      "Unusual size or live weight for its species: " + some_of(odd) +
                          ". Check the figure, or tape the hide."});
  if (batch.area.spread() > wide_area_spread)
    checks.push_back({"area-spread", Level::note,
                      "The area is only good to " + write_percent(batch.area.spread(), 2) +
                          " (one standard deviation): tape the hides to need less reserve."});
}

inline void check_scoops(std::vector<Check> &checks, const Workshop &workshop,
                         const Portions &portions) {
  if (workshop.scoops.empty()) return;
  if (!portions.by_scoops) {
    checks.push_back(
        {"scoops", Level::note,
         portions.no_density.empty()
             ? "No scooping comes within " + write_percent(Share{least_over}, 1) + " to +" +
                   write_percent(Share{most_over}, 1) +
                   " of each amount and keeps the ratio of alum, salt and soda within " +
                   write_percent(workshop.ratio_tolerance, 2) + ": weigh them."
             : "What a cup of " + portions.no_density +
                   " weighs is not known: weigh alum, salt and soda."});
    return;
  }
  const Basicity high{portions.basicity.value + 2.0 * portions.basicity_sd};
  if (basicity_band(high).band > BasicityBand::fair &&
      basicity_band(portions.basicity).band <= BasicityBand::fair)
    checks.push_back(
        {"scoops", Level::warn,
         "By scoops the basicity may reach " + write_percent(high, 2) +
             ", for a cup of soda varies: weigh the alum and the soda, or weigh a level "
             "cup of each once and record it."});
  else
    checks.push_back({"scoops", Level::ok,
                      "Rounding to scoops puts the ratio off by " +
                          write_percent(Spread{portions.ratio_error}, 2) +
                          "; with what a cup holds, basicity " +
                          write_percent_spread(portions.basicity, portions.basicity_sd) + "."});
}

} // namespace detail

/// All checks of a batch, worst first.
inline std::vector<Check> check_batch(const Day &day, const Batch &batch, const Workshop &workshop,
                                      const Portions &portions, UnitSystem units) {
  std::vector<Check> checks;
  checks.push_back(detail::check_basicity(batch.liquor.basicity));
  const Batch mixed_at_once = batch.lots > 1 ? one_lot(batch) : batch;
  detail::check_saturation(checks, mixed_at_once.liquor, units, workshop.scale);
  if (!day.water_temperature)
    checks.push_back({"water-temperature", Level::note,
                      "No water temperature is stated: cold water of " +
                          write_temperature(assumed_water_temperature, units) + " is assumed."});
  detail::check_scale(checks, mixed_at_once, units, workshop.scale);
  checks.push_back(detail::check_offer(day, batch, units));
  detail::check_shelf(checks, day, batch, units, workshop.scale);
  detail::check_vessel(checks, day, batch, units);
  detail::check_hides(checks, day, batch);
  detail::check_scoops(checks, workshop,
                       batch.lots > 1 ? measure_batch(mixed_at_once, workshop) : portions);
  std::stable_sort(checks.begin(), checks.end(),
                   [](const Check &a, const Check &b) { return a.level > b.level; });
  return checks;
}

/// Whether any check says stop.
inline bool says_stop(const std::vector<Check> &checks) {
  return std::any_of(checks.begin(), checks.end(),
                     [](const Check &check) { return check.level == Level::stop; });
}

} // namespace whittaw

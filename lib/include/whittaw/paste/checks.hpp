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

/// The worst salt of one water, in words.
inline void check_water(std::vector<Check> &checks, std::string_view id, std::string_view where,
                        const std::vector<Saturation> &salts, Temperature temperature,
                        UnitSystem units, const ScaleStep &step) {
  for (const auto &salt : salts) {
    if (!salt.overfull()) continue;
    const std::string what = write_mass(salt.undissolved, units, step) + " of the " +
                             std::string(solubility_row(salt.solute).name) +
                             " does not dissolve in " + std::string(where) + " at " +
                             write_temperature(temperature, units) + " (pure-water table)";
    if (salt.needs) {
      // Round up: at the rounded temperature all of it dissolves.
      const auto enough = degrees_celsius(std::ceil(celsius_value(*salt.needs) + 1.0));
      checks.push_back({id, Level::warn,
                        what + ". Use water of at least " + write_temperature(enough, units) +
                            " and stir until clear."});
    } else {
      checks.push_back({id, Level::stop, what + ", nor in hot water. Use more water."});
    }
  }
}

inline void check_saturation(std::vector<Check> &checks, const BatchLiquor &liquor,
                             UnitSystem units, const ScaleStep &step) {
  const std::size_t before = checks.size();
  check_water(checks, "dissolve-alum", "the alum water", liquor.alum_water, liquor.temperature,
              units, step);
  check_water(checks, "dissolve-soda", "the salt and soda water", liquor.soda_water,
              liquor.temperature, units, step);
  check_water(checks, "dissolve-liquor", "the whole liquor", liquor.mixed, liquor.temperature,
              units, step);
  if (checks.size() == before)
    checks.push_back({"dissolve", Level::ok,
                      "All of it dissolves at " + write_temperature(liquor.temperature, units) +
                          " (pure-water tables)."});
}

inline std::string some_of(const std::vector<std::string> &names) {
  std::string text;
  for (std::size_t i = 0; i < names.size() && i < 4; ++i) text += (i ? ", " : "") + names[i];
  if (names.size() > 4) text += " and " + std::to_string(names.size() - 4) + " more";
  return text;
}

inline Check check_offer(const Day &day, const Batch &batch, UnitSystem units) {
  const OfferRange range = day.recipe.offer.value_or(usual_offer);
  const std::string wanted =
      write_significant(range.low.value * 100.0, 2) + " to " + write_percent(range.high, 2);
  const std::string figure = "Alum offer " + write_percent(batch.offer, 2) +
                             " of fleshed weight, \u00b1 " +
                             write_percent(Offer{batch.offer.value * batch.offer_spread.value}, 1);
  std::vector<std::string> low;
  std::vector<std::string> high;
  for (std::size_t i = 0; i < batch.hides.size(); ++i) {
    if (batch.hides[i].offer.value < range.low.value) low.push_back(day.hides[i].tag);
    if (batch.hides[i].offer.value > range.high.value) high.push_back(day.hides[i].tag);
  }
  std::string uneven;
  if (!low.empty()) uneven += " Below it: " + some_of(low) + ".";
  if (!high.empty()) uneven += " Above it: " + some_of(high) + ".";
  const bool under = batch.offer < range.low;
  const bool over = batch.offer > range.high;
  if (!under && !over) {
    const bool even = low.empty() && high.empty();
    return {"offer", even ? Level::ok : Level::note,
            figure + ", within " + wanted + "." + uneven +
                (even ? "" : " Spread those thicker or thinner.")};
  }
  const double factor = (under ? range.low.value : range.high.value) / batch.offer.value;
  std::string text = figure + (under ? ", below " : ", above ") + wanted + "." + uneven +
                     " Spread " + write_length(factor * batch.coat, units) + " rather than " +
                     write_length(batch.coat, units);
  const int coats = under ? static_cast<int>(std::ceil(factor * batch.coats - 1e-9))
                          : static_cast<int>(std::floor(factor * batch.coats + 1e-9));
  if (coats >= 1 && coats != batch.coats)
    text += ", or put on " + std::to_string(coats) + (coats == 1 ? " coat" : " coats") +
            " rather than " + std::to_string(batch.coats);
  text += ", or make the paste " + write_significant(factor, 3) + " times as strong in alum.";
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
  if (bucket.volume && *bucket.volume < batch.bucket) {
    const int lots = static_cast<int>(std::ceil(count(batch.bucket, *bucket.volume)));
    checks.push_back({"bucket", Level::warn,
                      "The bucket holds " + write_volume(*bucket.volume, units) +
                          "; the paste with "
                          "room to stir and foam needs " +
                          write_volume(batch.bucket, units) + ". Mix in " + std::to_string(lots) +
                          " equal lots."});
  }
}

inline void check_shelf(std::vector<Check> &checks, const Day &day, const Batch &batch,
                        UnitSystem units, const ScaleStep &step) {
  for (const auto &ingredient : batch.ingredients) {
    if (ingredient.bag && day.shelf[*ingredient.bag].iodized)
      checks.push_back(
          {"iodized-salt", Level::stop, "The salt is iodized. Use plain salt without iodine."});
    if (!ingredient.bag && !day.shelf.empty() && ingredient.role != Role::water)
      checks.push_back({"not-on-shelf", Level::note,
                        "No " + std::string(role_name(ingredient.role)) +
                            " is on the shelf list: the card takes " + ingredient.name + "."});
  }
  for (const auto &missing : batch.missing)
    checks.push_back({"shelf-short", Level::stop,
                      "The shelf lacks " + std::string(role_name(missing.role)) + " worth " +
                          write_mass(missing.mass, units, step) + " of " + form_name(missing.form) +
                          ". Get more, or split the day."});
}

inline void check_hides(std::vector<Check> &checks, const Day &day, const Batch &batch) {
  std::vector<std::string> odd;
  for (const auto &hide : day.hides) {
    const auto *live = std::get_if<LiveWeight>(&hide.measure);
    if (live == nullptr || !hide.species->weight_law) continue;
    const auto &law = *hide.species->weight_law;
    if (live->mass < law.lightest || live->mass > law.heaviest) odd.push_back(hide.tag);
  }
  if (!odd.empty())
    checks.push_back({"live-weight", Level::warn,
                      "Unusual live weight for its species: " + some_of(odd) +
                          ". Check the figure, or tape the hide."});
  const double spread = batch.area.spread().value;
  if (spread > 0.15)
    checks.push_back({"area-spread", Level::note,
                      "The area is only good to " + write_percent(Spread{spread}, 2) +
                          " (one standard deviation): tape the hides to need less reserve."});
}

inline void check_scoops(std::vector<Check> &checks, const Workshop &workshop,
                         const Portions &portions) {
  if (workshop.scoops.empty()) return;
  if (!portions.by_scoops) {
    checks.push_back({"scoops", Level::note,
                      "No scooping keeps the ratio of alum, salt and soda within " +
                          write_percent(workshop.ratio_tolerance, 2) +
                          ", or a bulk density is not known: weigh them."});
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
                      "By scoops the ratio is off by " +
                          write_percent(Spread{portions.ratio_error}, 2) + " at most, basicity " +
                          write_percent(portions.basicity, 2) + " \u00b1 " +
                          write_percent(Basicity{portions.basicity_sd}, 1) + "."});
}

} // namespace detail

/// All checks of a batch, worst first.
inline std::vector<Check> check_batch(const Day &day, const Batch &batch, const Workshop &workshop,
                                      const Portions &portions, UnitSystem units) {
  std::vector<Check> checks;
  checks.push_back(detail::check_basicity(batch.liquor.basicity));
  detail::check_saturation(checks, batch.liquor, units, workshop.scale);
  if (!day.water_temperature)
    checks.push_back({"water-temperature", Level::note,
                      "No water temperature is stated: cold water of " +
                          write_temperature(assumed_water_temperature, units) + " is assumed."});
  checks.push_back(detail::check_offer(day, batch, units));
  detail::check_shelf(checks, day, batch, units, workshop.scale);
  detail::check_vessel(checks, day, batch, units);
  detail::check_hides(checks, day, batch);
  detail::check_scoops(checks, workshop, portions);
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

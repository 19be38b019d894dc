// The powder book: what each entry does to the jars. Entries are read one after the other; what was
// undone is left out by the reader.
#pragma once

#include <whittaw/powder/uptake.hpp>
#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/write.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw {

enum class Deed { saved, used, topped_up, sieved, thrown_out, weighed, noted, undone };

struct DeedRow {
  Deed deed;
  std::string_view name;
};
inline constexpr std::array<DeedRow, 8> deed_table{{
    {Deed::saved, "saved"},
    {Deed::used, "used"},
    {Deed::topped_up, "topped up"},
    {Deed::sieved, "sieved"},
    {Deed::thrown_out, "thrown out"},
    {Deed::weighed, "weighed"},
    {Deed::noted, "noted"},
    {Deed::undone, "undone"},
}};

constexpr std::string_view deed_name(Deed deed) {
  return deed_table[static_cast<std::size_t>(deed)].name;
}

/// One entry of the book. Fields that its deed does not need stay empty.
struct PowderEntry {
  std::int64_t number = 0; ///< rising by one from 1
  std::string at;          ///< when written, ISO 8601, UTC
  Deed deed = Deed::noted;
  std::string jar;
  Mass mass = 0.0 * kilogram;                          ///< as weighed, damp and all
  std::optional<MassFraction> moisture = std::nullopt; ///< by a sun or oven test
  std::string batch = {};                              ///< saved from, or used in
  std::string hides = {};
  Contents contents = {}; ///< saved: put on those hides; topped up: stirred in
  int rounds = 1;         ///< saved: how often this powder has been on a hide
  bool slipped = false;   ///< from a hide that lost its wool
  bool suspect = false;   ///< from an animal under suspicion of disease
  std::int64_t undoes = 0;
  std::string note = {};
};

/// Powder of one batch in a jar, dry.
struct Origin {
  std::string batch;
  Mass dry = 0.0 * kilogram;
};

/// A jar of saved powder.
struct Jar {
  std::string name;
  Contents contents;
  Contents fresh; ///< what as much dry fresh paste would hold: the measure of strength
  Mass water = 0.0 * kilogram;
  /// One standard deviation of the aluminium in it: what all powders share, and its own.
  Amount aluminium_shared_sd = 0.0 * mole;
  Amount aluminium_own_sd = 0.0 * mole;
  int rounds = 0;
  bool slipped = false;
  bool suspect = false;
  std::string last_at;
  std::vector<Origin> origins = {};
};

inline Mass mass_of(const Jar &jar) { return dry_mass(jar.contents) + jar.water; }
inline MassFraction moisture_of(const Jar &jar) {
  const Mass mass = mass_of(jar);
  return {mass > 0.0 * kilogram ? count(jar.water, mass) : 0.0};
}
/// Aluminium by dry mass against fresh dry paste.
inline Strength strength_of(const Jar &jar) {
  return is_empty(jar.contents) ? Strength{0.0} : strength_against(jar.contents, jar.fresh);
}
inline Spread aluminium_spread(const Jar &jar) {
  const Amount aluminium = aluminium_of(jar.contents);
  if (!(aluminium > 0.0 * mole)) return {0.0};
  return {std::hypot(count(jar.aluminium_shared_sd, aluminium),
                     count(jar.aluminium_own_sd, aluminium))};
}

/// A movement between two accounts. Accounts are "jar X", "paste BATCH", "used", "sieved",
/// "thrown out", "fresh" and "stock-take"; all of them together always hold nothing.
struct Posting {
  std::string from;
  std::string to;
  Contents contents;
};

/// All jars, in the order in which they first appear.
struct PowderBook {
  std::vector<Jar> jars;
  std::int64_t last_number = 0;
  std::string last_at;
};

inline Jar *find_jar(PowderBook &book, std::string_view name) {
  for (auto &jar : book.jars)
    if (jar.name == name) return &jar;
  return nullptr;
}
inline const Jar *find_jar(const PowderBook &book, std::string_view name) {
  for (const auto &jar : book.jars)
    if (jar.name == name) return &jar;
  return nullptr;
}

namespace detail {

/// Powder may weigh this much more than what was reckoned to be left on the skins: an assumption.
inline constexpr double most_recovered = 1.25;
/// A stock-take that finds this much more than the book says is a mistake: an assumption.
inline constexpr double most_found = 1.5;
/// Relative error of the dry mass after a sun or oven test: an assumption.
inline constexpr Spread tested_moisture_spread{0.02};

inline Problem unknown_jar(const PowderBook &book, std::string_view name) {
  std::string known;
  for (const auto &jar : book.jars) known += (known.empty() ? "" : ", ") + jar.name;
  return {"no jar is called '" + std::string(name) + "'",
          known.empty() ? "save some powder first" : "jars: " + known};
}

/// Takes a share of a jar's contents, water, spread and origins.
inline Contents take_share(Jar &jar, Share share) {
  const double rest = 1.0 - share.value;
  const Contents taken = share_of(jar.contents, share);
  jar.contents -= taken;
  jar.fresh -= share_of(jar.fresh, share);
  jar.water *= rest;
  jar.aluminium_shared_sd *= rest;
  jar.aluminium_own_sd *= rest;
  for (auto &origin : jar.origins) origin.dry *= rest;
  return taken;
}

inline void empty_if_done(Jar &jar) {
  if (!is_empty(jar.contents)) return;
  Jar emptied;
  emptied.name = jar.name;
  emptied.last_at = jar.last_at;
  jar = std::move(emptied);
}

inline Result<Posting> save(PowderBook &book, const PowderEntry &entry) {
  const Contents left = left_on_surface(entry.contents);
  const Mass most = dry_mass(left);
  const MassFraction moisture = entry.moisture.value_or(air_dry_moisture);
  const Mass dry = (1.0 - moisture.value) * entry.mass;
  if (!(most > 0.0 * kilogram))
    return Problem{"nothing was put on the hides that this powder is from",
                   "name the day and the hides"};
  const double recovered = count(dry, most);
  if (recovered > most_recovered)
    return Problem{write_mass(entry.mass, UnitSystem::metric) +
                       " is more than these hides can give back, about " +
                       write_mass(most / (1.0 - moisture.value), UnitSystem::metric),
                   "check the mass and the hides"};
  const Contents powder = share_of(left, Share{recovered});

  Jar *jar = find_jar(book, entry.jar);
  if (jar == nullptr) {
    book.jars.push_back({});
    jar = &book.jars.back();
    jar->name = entry.jar;
  }
  jar->contents += powder;
  jar->fresh += share_of(entry.contents, Share{count(dry, dry_mass(entry.contents))});
  jar->water += entry.mass - dry;
  // The assumed uptake is one error for every powder; the moisture is this powder's own.
  const auto &uptake = uptake_table[static_cast<std::size_t>(Part::aluminium)];
  const Amount aluminium = aluminium_of(powder);
  jar->aluminium_shared_sd += uptake.sd.value / (1.0 - uptake.kept.value) * aluminium;
  const double dampness = entry.moisture
                              ? tested_moisture_spread.value
                              : air_dry_moisture_sd.value / (1.0 - air_dry_moisture.value);
  jar->aluminium_own_sd =
      std::hypot(count(jar->aluminium_own_sd, mole), dampness * count(aluminium, mole)) * mole;
  jar->rounds = std::max(jar->rounds, entry.rounds);
  jar->slipped = jar->slipped || entry.slipped;
  jar->suspect = jar->suspect || entry.suspect;
  auto origin = jar->origins.begin();
  while (origin != jar->origins.end() && origin->batch != entry.batch) ++origin;
  if (origin == jar->origins.end()) origin = jar->origins.insert(origin, {entry.batch, {}});
  origin->dry += dry_mass(powder);
  return Posting{"paste " + entry.batch, "jar " + entry.jar, powder};
}

inline Result<Posting> take_out(PowderBook &book, const PowderEntry &entry, std::string to) {
  Jar *jar = find_jar(book, entry.jar);
  if (jar == nullptr) return unknown_jar(book, entry.jar);
  const Mass there = mass_of(*jar);
  // All of it, where no mass is said or it comes to the gram.
  const bool all =
      !(entry.mass > 0.0 * kilogram) || std::abs(count(entry.mass - there, gram)) < 0.5;
  if (!all && entry.mass > there)
    return Problem{"jar '" + entry.jar + "' holds " + write_mass(there, UnitSystem::metric) +
                       ", less than " + write_mass(entry.mass, UnitSystem::metric),
                   "check the mass; if the jar holds more than the book says, write a weighing"};
  if (is_empty(jar->contents))
    return Problem{"jar '" + entry.jar + "' is empty", "name another jar"};
  const Contents taken = take_share(*jar, all ? Share{1.0} : Share{count(entry.mass, there)});
  empty_if_done(*jar);
  return Posting{"jar " + entry.jar, std::move(to), taken};
}

inline Result<Posting> top_up(PowderBook &book, const PowderEntry &entry) {
  Jar *jar = find_jar(book, entry.jar);
  if (jar == nullptr) return unknown_jar(book, entry.jar);
  jar->contents += entry.contents;
  const Mass crystals = entry.mass - dry_mass(entry.contents);
  if (crystals > 0.0 * kilogram) jar->water += crystals;
  auto origin = jar->origins.begin();
  while (origin != jar->origins.end() && origin->batch != "fresh") ++origin;
  if (origin == jar->origins.end()) origin = jar->origins.insert(origin, {"fresh", {}});
  origin->dry += dry_mass(entry.contents);
  return Posting{"fresh", "jar " + entry.jar, entry.contents};
}

/// A stock-take: what was lost or found is of the jar's own make.
inline Result<Posting> weigh(PowderBook &book, const PowderEntry &entry) {
  Jar *jar = find_jar(book, entry.jar);
  if (jar == nullptr) return unknown_jar(book, entry.jar);
  const Mass there = mass_of(*jar);
  if (is_empty(jar->contents))
    return Problem{"jar '" + entry.jar + "' is empty by the book", "save powder into it first"};
  const double factor = count(entry.mass, there);
  if (factor > most_found)
    return Problem{"the book says " + write_mass(there, UnitSystem::metric) + " in jar '" +
                       entry.jar + "', and " + write_mass(entry.mass, UnitSystem::metric) +
                       " is half as much again",
                   "check the mass, or write down the powder that was saved"};
  if (factor <= 1.0) {
    const Contents lost = take_share(*jar, Share{1.0 - factor});
    empty_if_done(*jar);
    return Posting{"jar " + entry.jar, "stock-take", lost};
  }
  const Contents found = share_of(jar->contents, Share{factor - 1.0});
  jar->contents += found;
  jar->fresh += share_of(jar->fresh, Share{factor - 1.0});
  jar->water *= factor;
  jar->aluminium_shared_sd *= factor;
  jar->aluminium_own_sd *= factor;
  for (auto &origin : jar->origins) origin.dry *= factor;
  return Posting{"stock-take", "jar " + entry.jar, found};
}

} // namespace detail

/// Puts one entry into effect, and gives the movement it makes. Errors leave the book as it was:
/// an unknown jar, more taken than there is, more saved than was put on.
inline Result<Posting> apply(PowderBook &book, const PowderEntry &entry) {
  auto done = [&]() -> Result<Posting> {
    switch (entry.deed) {
    case Deed::saved: return detail::save(book, entry);
    case Deed::used:
      return detail::take_out(book, entry,
                              entry.batch.empty() ? std::string("used") : "used " + entry.batch);
    case Deed::topped_up: return detail::top_up(book, entry);
    case Deed::sieved: return detail::take_out(book, entry, "sieved");
    case Deed::thrown_out: return detail::take_out(book, entry, "thrown out");
    case Deed::weighed: return detail::weigh(book, entry);
    case Deed::noted:
      if (!entry.jar.empty() && find_jar(book, entry.jar) == nullptr)
        return detail::unknown_jar(book, entry.jar);
      return Posting{};
    case Deed::undone: return Posting{};
    }
    return Posting{};
  }();
  if (!done) return done;
  if (Jar *jar = find_jar(book, entry.jar); jar != nullptr && entry.deed != Deed::noted)
    jar->last_at = entry.at;
  book.last_number = entry.number;
  book.last_at = std::max(book.last_at, entry.at);
  return done;
}

} // namespace whittaw

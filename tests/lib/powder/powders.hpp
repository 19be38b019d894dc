// Pastes and powders in round figures that the tests of the powder book start from.
#pragma once

#include <whittaw/powder/cover.hpp>

#include <close.hpp>

#include <doctest/doctest.h>

#include <string>
#include <utility>

namespace whittaw_test {

using namespace whittaw;

/// A mole of potash alum without its water and a kilogram of meal: 26.982 + 2 x 96.056 + 39.098 +
/// 1000 = 1258.192 g dry.
inline Contents round_paste() {
  Contents contents;
  contents[Part::aluminium] = 1'000'000;
  contents[Part::sulfate] = 2'000'000;
  contents[Part::potassium] = 1'000'000;
  contents[Part::meal] = 1'000'000'000;
  return contents;
}

inline PowderEntry entry_of(PowderBook &book, Deed deed, std::string jar, Mass mass) {
  PowderEntry entry;
  entry.number = book.last_number + 1;
  entry.at = "2026-11-20T18:04:00Z";
  entry.deed = deed;
  entry.jar = std::move(jar);
  entry.mass = mass;
  return entry;
}

inline PowderEntry saving(PowderBook &book, std::string jar, Mass mass) {
  PowderEntry entry = entry_of(book, Deed::saved, std::move(jar), mass);
  entry.batch = "first";
  entry.contents = round_paste();
  return entry;
}

/// Puts an entry into effect that must go.
inline Posting must(PowderBook &book, const PowderEntry &entry) {
  const auto done = apply(book, entry);
  REQUIRE_MESSAGE(done.ok(), done.problem().found);
  return done.value();
}

inline const Jar &jar_of(const PowderBook &book, std::string_view name) {
  const Jar *jar = find_jar(book, name);
  REQUIRE(jar != nullptr);
  return *jar;
}

/// A jar A with 700 g of air-dry powder: 560 g dry, of at most 1158.0362 g: 0.290146 mol Al.
inline PowderBook one_jar() {
  PowderBook book;
  must(book, saving(book, "A", 700.0 * gram));
  return book;
}

inline Mass mass_of_origins(const Jar &jar) {
  Mass sum = 0.0 * kilogram;
  for (const auto &origin : jar.origins) sum += origin.dry;
  return sum;
}

} // namespace whittaw_test

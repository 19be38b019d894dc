#include "powders.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cstdint>
#include <map>
#include <random>
#include <string>

using namespace whittaw_test;

TEST_CASE("deeds are in the table's order") {
  for (std::size_t i = 0; i < deed_table.size(); ++i)
    CHECK(static_cast<std::size_t>(deed_table[i].deed) == i);
  CHECK(deed_name(Deed::thrown_out) == "thrown out");
}

// 700 g, 20 % water assumed: 560 g dry of the 1158.0362 g left: 0.4835773 of each part.
// 0.6 x 0.4835773 = 0.290146, 1.4 x = 0.677008, 0.7 x = 0.338504 mol; 980 x = 473.905738 g
TEST_CASE("powder is saved at the moisture of air-dry powder if no other is said") {
  PowderBook book;
  const Posting posting = must(book, saving(book, "A", 700.0 * gram));
  CHECK(posting.from == "paste first");
  CHECK(posting.to == "jar A");
  const Jar &jar = jar_of(book, "A");
  CHECK(jar.contents == posting.contents);
  CHECK(jar.contents[Part::aluminium] == 290'146);
  CHECK(jar.contents[Part::sulfate] == 677'008);
  CHECK(jar.contents[Part::potassium] == 338'504);
  CHECK(near(static_cast<double>(jar.contents[Part::meal]), 473'905'738.0, 2.0));
  CHECK(near(mass_of(jar), 700.0 * gram, 0.001 * gram));
  CHECK(near(jar.water, 140.0 * gram, 1e-6 * gram));
  CHECK(near(moisture_of(jar).value, 0.2, 1e-6));
  CHECK(near(strength_of(jar).value, 0.6518926, 1e-5));
  // Uptake 0.15 of 0.60 left is 0.25 of what there is, moisture 0.06 / 0.80 = 0.075: 0.2610077
  CHECK(near(aluminium_spread(jar).value, 0.2610077, 1e-5));
  CHECK(jar.rounds == 1);
  CHECK(jar.last_at == "2026-11-20T18:04:00Z");
  CHECK(book.last_number == 1);
}

TEST_CASE("a moisture that was tested goes before the assumed one, and narrows the spread") {
  // 700 g at 10 %: 630 g dry, 0.5440244 of what is left: 0.326415 mol Al. Spread root(0.25^2 +
  // 0.02^2) = 0.2507987
  PowderBook book;
  PowderEntry entry = saving(book, "A", 700.0 * gram);
  entry.moisture = MassFraction{0.10};
  must(book, entry);
  const Jar &jar = jar_of(book, "A");
  CHECK(jar.contents[Part::aluminium] == 326'415);
  CHECK(near(jar.water, 70.0 * gram, 1e-6 * gram));
  CHECK(near(aluminium_spread(jar).value, 0.2507987, 1e-5));
  CHECK(near(strength_of(jar).value, 0.6518926, 1e-5)); // strength is of dry mass
}

TEST_CASE("no more is saved than a quarter above what the hides can give back") {
  // 1.25 x 1158.0362 g dry, / 0.8: 1809.43 g
  PowderBook book;
  const auto refused = apply(book, saving(book, "A", 1810.0 * gram));
  REQUIRE_FALSE(refused.ok());
  CHECK(has(refused.problem().found, "1810 g is more than these hides can give back"));
  CHECK(has(refused.problem().found, "1448 g")); // 1158.0362 / 0.8 = 1447.5
  CHECK(book.jars.empty());
  CHECK(book.last_number == 0);
  CHECK(apply(book, saving(book, "A", 1809.0 * gram)).ok());
}

TEST_CASE("nothing is saved from hides on which nothing was put") {
  PowderBook book;
  PowderEntry entry = saving(book, "A", 100.0 * gram);
  entry.contents = {};
  CHECK_FALSE(apply(book, entry).ok());
  CHECK(book.jars.empty());
}

TEST_CASE("using a part of a jar takes that part of all that is in it") {
  PowderBook book = one_jar();
  // 175 of 700 g is a quarter: 72 536.5 of 290 146, 169 252 of 677 008, 84 626 of 338 504
  PowderEntry entry = entry_of(book, Deed::used, "A", 175.0 * gram);
  const Contents before = jar_of(book, "A").contents;
  const Posting posting = must(book, entry);
  CHECK(posting.from == "jar A");
  CHECK(posting.to == "used");
  CHECK(near(static_cast<double>(posting.contents[Part::aluminium]), 72'536.5, 1.0));
  CHECK(posting.contents[Part::sulfate] == 169'252);
  CHECK(posting.contents[Part::potassium] == 84'626);
  const Jar &jar = jar_of(book, "A");
  CHECK(jar.contents + posting.contents == before);
  CHECK(near(mass_of(jar), 525.0 * gram, 0.001 * gram));
  CHECK(near(jar.water, 105.0 * gram, 0.001 * gram));
  CHECK(near(strength_of(jar).value, 0.6518926, 1e-5));
  CHECK(near(aluminium_spread(jar).value, 0.2610077, 1e-5));
}

TEST_CASE("powder that is used in a batch goes to the batch's account") {
  PowderBook book = one_jar();
  PowderEntry entry = entry_of(book, Deed::used, "A", 100.0 * gram);
  entry.batch = "second";
  CHECK(must(book, entry).to == "used second");
}

TEST_CASE("sieved and thrown out go to accounts of their own") {
  PowderBook book = one_jar();
  const Contents before = jar_of(book, "A").contents;
  const Posting lumps = must(book, entry_of(book, Deed::sieved, "A", 70.0 * gram));
  CHECK(lumps.to == "sieved");
  CHECK(near(mass_of(jar_of(book, "A")), 630.0 * gram, 0.001 * gram));
  const Posting rest = must(book, entry_of(book, Deed::thrown_out, "A", 0.0 * gram));
  CHECK(rest.to == "thrown out");
  CHECK(lumps.contents + rest.contents == before);
  const Jar &jar = jar_of(book, "A");
  CHECK(is_empty(jar.contents));
  CHECK(is_empty(jar.fresh));
  CHECK(mass_of(jar) == 0.0 * kilogram);
  CHECK(jar.origins.empty());
  CHECK(jar.rounds == 0);
}

TEST_CASE("a mass that comes to the jar's to the gram takes all of it") {
  for (const double grams : {699.6, 700.0, 700.4}) {
    PowderBook book = one_jar();
    must(book, entry_of(book, Deed::used, "A", grams * gram));
    CHECK(is_empty(jar_of(book, "A").contents));
  }
  PowderBook book = one_jar();
  must(book, entry_of(book, Deed::used, "A", 699.4 * gram));
  CHECK_FALSE(is_empty(jar_of(book, "A").contents));
}

TEST_CASE("more than there is, an unknown jar and an empty jar are refused") {
  PowderBook book = one_jar();
  const auto much = apply(book, entry_of(book, Deed::used, "A", 701.0 * gram));
  REQUIRE_FALSE(much.ok());
  CHECK(has(much.problem().found, "jar 'A' holds 700 g, less than 701 g"));
  const auto unknown = apply(book, entry_of(book, Deed::used, "B", 1.0 * gram));
  REQUIRE_FALSE(unknown.ok());
  CHECK(has(unknown.problem().found, "no jar is called 'B'"));
  CHECK(has(unknown.problem().remedy, "A"));
  CHECK(book.last_number == 1);
  must(book, entry_of(book, Deed::used, "A", 700.0 * gram));
  for (const Deed deed : {Deed::used, Deed::sieved, Deed::thrown_out, Deed::weighed})
    CHECK_FALSE(apply(book, entry_of(book, deed, "A", 0.1 * gram)).ok());
}

TEST_CASE("a jar that weighs less than the book says lost a share of all that is in it") {
  PowderBook book = one_jar();
  const Contents before = jar_of(book, "A").contents;
  // 630 of 700: a tenth lost, 29 014.6 of 290 146
  const Posting posting = must(book, entry_of(book, Deed::weighed, "A", 630.0 * gram));
  CHECK(posting.from == "jar A");
  CHECK(posting.to == "stock-take");
  CHECK(near(static_cast<double>(posting.contents[Part::aluminium]), 29'014.6, 1.0));
  const Jar &jar = jar_of(book, "A");
  CHECK(jar.contents + posting.contents == before);
  CHECK(near(mass_of(jar), 630.0 * gram, 0.001 * gram));
  CHECK(near(moisture_of(jar).value, 0.2, 1e-6));
}

TEST_CASE("a jar that weighs more than the book says holds more of the same") {
  PowderBook book = one_jar();
  // 770 of 700: a tenth found
  const Posting posting = must(book, entry_of(book, Deed::weighed, "A", 770.0 * gram));
  CHECK(posting.from == "stock-take");
  CHECK(posting.to == "jar A");
  const Jar &jar = jar_of(book, "A");
  CHECK(near(static_cast<double>(jar.contents[Part::aluminium]), 319'160.6, 1.0));
  CHECK(near(mass_of(jar), 770.0 * gram, 0.001 * gram));
  CHECK(near(mass_of_origins(jar), dry_mass(jar.contents), 0.001 * gram));
  CHECK(near(strength_of(jar).value, 0.6518926, 1e-5));
  CHECK(near(aluminium_spread(jar).value, 0.2610077, 1e-5));
}

TEST_CASE("a weighing of more than half as much again is a mistake") {
  PowderBook book = one_jar();
  const auto refused = apply(book, entry_of(book, Deed::weighed, "A", 1051.0 * gram));
  REQUIRE_FALSE(refused.ok());
  CHECK(has(refused.problem().found, "the book says 700 g in jar 'A', and 1051 g"));
  CHECK(near(mass_of(jar_of(book, "A")), 700.0 * gram, 0.001 * gram));
  CHECK(apply(book, entry_of(book, Deed::weighed, "A", 1049.0 * gram)).ok());
}

TEST_CASE("a jar weighed as empty forgets what was in it, as one used up does") {
  PowderBook book;
  PowderEntry bad = saving(book, "A", 700.0 * gram);
  bad.suspect = true;
  bad.slipped = true;
  bad.rounds = 3;
  must(book, bad);
  must(book, entry_of(book, Deed::weighed, "A", 0.0 * gram));
  CHECK(is_empty(jar_of(book, "A").contents));
  must(book, saving(book, "A", 500.0 * gram));
  const Jar &jar = jar_of(book, "A");
  CHECK_FALSE(jar.suspect);
  CHECK_FALSE(jar.slipped);
  CHECK(jar.rounds == 1);
}

TEST_CASE("alum stirred in brings its aluminium, its dry mass and its water") {
  PowderBook book = one_jar();
  PowderEntry entry = entry_of(book, Deed::topped_up, "A", 47.4372 * gram);
  entry.contents = contents_of(forms::potassium_alum, entry.mass); // a tenth of a mole
  const Posting posting = must(book, entry);
  CHECK(posting.from == "fresh");
  CHECK(posting.to == "jar A");
  const Jar &jar = jar_of(book, "A");
  CHECK(jar.contents[Part::aluminium] == 390'146);
  CHECK(near(mass_of(jar), 747.4372 * gram, 0.001 * gram));
  CHECK(near(jar.water, 161.618 * gram, 0.001 * gram)); // 140 + 1.2 x 18.015
  // (0.390146 / 585.8192) / (1 / 1258.192) = 0.8379353: dry 560 + 25.8192
  CHECK(near(strength_of(jar).value, 0.8379353, 1e-5));
  // The fresh alum is sure: the spread is 0.2610077 x 0.290146 / 0.390146 = 0.1941077
  CHECK(near(aluminium_spread(jar).value, 0.1941077, 1e-5));
  REQUIRE(jar.origins.size() == 2);
  CHECK(jar.origins[1].batch == "fresh");
  CHECK(near(jar.origins[1].dry, 25.8192 * gram, 0.001 * gram));
  CHECK(near(mass_of_origins(jar), dry_mass(jar.contents), 0.001 * gram));
  must(book, entry);
  CHECK(jar_of(book, "A").origins.size() == 2);
}

TEST_CASE("only a jar that is there is topped up") {
  PowderBook book;
  PowderEntry entry = entry_of(book, Deed::topped_up, "A", 50.0 * gram);
  entry.contents = contents_of(forms::salt, entry.mass);
  CHECK_FALSE(apply(book, entry).ok());
  CHECK(book.jars.empty());
}

// Lot one: 700 g at the assumed 20 %: 560 g dry, 0.2901464 mol Al. Lot two, of a paste with 2 mol
// Al: 1285.174 g dry, 1.2 x 26.982 + 134.4784 + 27.3686 + 980 = 1174.2254 left; 300 g at 10 %
// tested: 270 g dry, 0.2299388 of it: 0.2759266 mol Al. Fresh paste of the same dry masses: 560 /
// 1258.192 = 0.4450831 mol, 2 x 270 / 1285.174 = 0.4201766 mol.
TEST_CASE("two lots in one jar: strength, moisture and spread are those of the mixture") {
  PowderBook book = one_jar();
  PowderEntry entry = saving(book, "A", 300.0 * gram);
  entry.batch = "second";
  entry.contents[Part::aluminium] = 2'000'000;
  entry.moisture = MassFraction{0.10};
  entry.rounds = 2;
  must(book, entry);
  const Jar &jar = jar_of(book, "A");
  CHECK(book.jars.size() == 1);
  CHECK(near(static_cast<double>(jar.contents[Part::aluminium]), 566'073.0, 2.0));
  CHECK(near(mass_of(jar), 1000.0 * gram, 0.001 * gram));
  CHECK(near(moisture_of(jar).value, 0.17, 1e-6)); // (140 + 30) / 1000
  // (0.5660730 / 830) / (0.8652597 / 830)
  CHECK(near(strength_of(jar).value, 0.6542232, 1e-5));
  // Shared 0.25 of all of it; own root((0.075 x 0.2901464)^2 + (0.02 x 0.2759266)^2) = 0.0224499,
  // 0.0396589 of 0.5660730: root(0.25^2 + 0.0396589^2) = 0.2531261
  CHECK(near(aluminium_spread(jar).value, 0.2531261, 1e-5));
  CHECK(jar.rounds == 2);
  REQUIRE(jar.origins.size() == 2);
  CHECK(jar.origins[0].batch == "first");
  CHECK(near(jar.origins[0].dry, 560.0 * gram, 0.001 * gram));
  CHECK(jar.origins[1].batch == "second");
  CHECK(near(jar.origins[1].dry, 270.0 * gram, 0.001 * gram));
  // A tenth used takes a tenth of each origin.
  must(book, entry_of(book, Deed::used, "A", 100.0 * gram));
  CHECK(near(jar_of(book, "A").origins[0].dry, 504.0 * gram, 0.001 * gram));
  CHECK(near(jar_of(book, "A").origins[1].dry, 243.0 * gram, 0.001 * gram));
}

TEST_CASE("powder of one batch saved twice is one origin") {
  PowderBook book = one_jar();
  must(book, saving(book, "A", 100.0 * gram));
  const Jar &jar = jar_of(book, "A");
  REQUIRE(jar.origins.size() == 1);
  CHECK(near(jar.origins[0].dry, 640.0 * gram, 0.001 * gram));
}

TEST_CASE("suspicion, slipping and rounds stay with the jar until it is empty") {
  PowderBook book = one_jar();
  PowderEntry bad = saving(book, "A", 100.0 * gram);
  bad.suspect = true;
  bad.slipped = true;
  bad.rounds = 3;
  must(book, bad);
  must(book, saving(book, "A", 100.0 * gram));
  CHECK(jar_of(book, "A").suspect);
  CHECK(jar_of(book, "A").slipped);
  CHECK(jar_of(book, "A").rounds == 3);
  must(book, entry_of(book, Deed::thrown_out, "A", 0.0 * gram));
  must(book, saving(book, "A", 100.0 * gram));
  CHECK_FALSE(jar_of(book, "A").suspect);
  CHECK_FALSE(jar_of(book, "A").slipped);
  CHECK(jar_of(book, "A").rounds == 1);
}

TEST_CASE("a note moves nothing, and is of a jar that is there or of none") {
  PowderBook book = one_jar();
  const Contents before = jar_of(book, "A").contents;
  CHECK(is_empty(must(book, entry_of(book, Deed::noted, "", 0.0 * gram)).contents));
  CHECK(is_empty(must(book, entry_of(book, Deed::noted, "A", 0.0 * gram)).contents));
  CHECK(jar_of(book, "A").contents == before);
  CHECK_FALSE(apply(book, entry_of(book, Deed::noted, "B", 0.0 * gram)).ok());
  CHECK(book.last_number == 3);
}

TEST_CASE("the book's time never goes back") {
  PowderBook book = one_jar();
  PowderEntry entry = entry_of(book, Deed::noted, "", 0.0 * gram);
  entry.at = "2026-11-01T00:00:00Z";
  must(book, entry);
  CHECK(book.last_at == "2026-11-20T18:04:00Z");
}

namespace {

bool same(const PowderBook &a, const PowderBook &b) {
  if (a.jars.size() != b.jars.size() || a.last_number != b.last_number || a.last_at != b.last_at)
    return false;
  for (std::size_t i = 0; i < a.jars.size(); ++i) {
    const Jar &x = a.jars[i];
    const Jar &y = b.jars[i];
    if (x.name != y.name || x.contents != y.contents || x.fresh != y.fresh || x.water != y.water ||
        x.aluminium_shared_sd != y.aluminium_shared_sd ||
        x.aluminium_own_sd != y.aluminium_own_sd || x.rounds != y.rounds ||
        x.slipped != y.slipped || x.suspect != y.suspect || x.last_at != y.last_at ||
        x.origins.size() != y.origins.size())
      return false;
    for (std::size_t k = 0; k < x.origins.size(); ++k)
      if (x.origins[k].batch != y.origins[k].batch || x.origins[k].dry != y.origins[k].dry)
        return false;
  }
  return true;
}

PowderEntry random_entry(std::mt19937 &random, PowderBook &book) {
  const auto up_to = [&](int most) {
    return static_cast<int>(random() % (static_cast<unsigned>(most) + 1U));
  };
  constexpr std::array deeds{Deed::saved,  Deed::saved,      Deed::used,    Deed::topped_up,
                             Deed::sieved, Deed::thrown_out, Deed::weighed, Deed::noted};
  const Deed deed = deeds[random() % deeds.size()];
  PowderEntry entry = entry_of(book, deed, std::string(1, static_cast<char>('A' + up_to(3))),
                               0.001 * up_to(900'000) * gram);
  if (deed == Deed::noted && up_to(1) == 0) entry.jar.clear();
  // A weighing near what the jar holds, above it or below.
  if (deed == Deed::weighed)
    if (const Jar *jar = find_jar(book, entry.jar); jar != nullptr)
      entry.mass = 0.001 * up_to(1600) * mass_of(*jar);
  if (deed == Deed::topped_up)
    entry.contents = contents_of(up_to(1) == 0 ? forms::potassium_alum : forms::salt, entry.mass);
  if (deed == Deed::saved) {
    entry.batch = "paste " + std::to_string(up_to(4));
    for (auto &micro : entry.contents.micro) micro = up_to(2'000'000);
    entry.contents[Part::meal] = 1000LL * up_to(1'000'000);
    if (up_to(1) == 0) entry.moisture = MassFraction{0.001 * up_to(900)};
    entry.rounds = 1 + up_to(4);
  }
  return entry;
}

} // namespace

TEST_CASE("in any history all accounts together hold nothing, and each jar what its postings say") {
  std::mt19937 random(20261120);
  int refused = 0;
  int done = 0;
  for (int history = 0; history < 3000; ++history) {
    PowderBook book;
    std::map<std::string, Contents> accounts;
    const int length = 5 + static_cast<int>(random() % 40);
    for (int step = 0; step < length; ++step) {
      const PowderEntry entry = random_entry(random, book);
      const PowderBook before = book;
      const auto posting = apply(book, entry);
      if (!posting) {
        ++refused;
        REQUIRE(same(before, book));
        continue;
      }
      ++done;
      REQUIRE(book.last_number == entry.number);
      if (!is_empty(posting->contents)) {
        accounts[posting->from] -= posting->contents;
        accounts[posting->to] += posting->contents;
      }
      Contents sum;
      for (const auto &[name, contents] : accounts) sum += contents;
      REQUIRE(is_empty(sum));
      for (const auto &jar : book.jars) {
        REQUIRE(jar.contents == accounts["jar " + jar.name]);
        for (const auto micro : jar.contents.micro) REQUIRE(micro >= 0);
        for (const auto micro : jar.fresh.micro) REQUIRE(micro >= 0);
        REQUIRE(jar.water >= 0.0 * kilogram);
        REQUIRE(near(mass_of_origins(jar), dry_mass(jar.contents), 0.05 * gram));
      }
    }
  }
  // The histories are no rows of refusals.
  CHECK(refused > 5'000);
  CHECK(done > 20'000);
}

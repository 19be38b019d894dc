#include "powders.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace whittaw_test;

namespace {

/// Half a square metre: 0.8 x 0.5 = 400 g of powder.
CoverNeed need_of(Mass fleshed_weight) {
  CoverNeed need;
  need.area = 0.5 * square_metre;
  need.fleshed_weight = fleshed_weight;
  need.offer = {0.08};
  need.chance = {0.90};
  return need;
}

/// A jar that may be used, with 700 g.
Jar good_jar() { return jar_of(one_jar(), "A"); }

/// A jar saved last on a day of November.
void save_on(PowderBook &book, std::string jar, Mass mass, const std::string &day) {
  PowderEntry entry = saving(book, std::move(jar), mass);
  entry.at = "2026-11-" + day + "T12:00:00Z";
  must(book, entry);
}

} // namespace

// Jar A: 700 g with 0.290146 mol Al, as potash alum x 474.372 = 137.637 g. 400 of 700 g hold
// 78.650 g, one standard deviation 0.2610077 x 78.650 = 20.5282 g.
TEST_CASE("cover says yes where the powder is enough with the chance asked for") {
  // 0.08 x 600 g = 48 g: (78.650 - 48) / 20.5282 = 1.49305, a chance of 0.93229
  const PowderBook book = one_jar();
  const Cover result = cover(book, need_of(600.0 * gram), JarOrder::oldest);
  CHECK(result.answer == CoverAnswer::yes);
  CHECK(near(result.powder_wanted, 400.0 * gram, 1e-6 * gram));
  CHECK(near(result.powder, 400.0 * gram, 1e-6 * gram));
  CHECK(near(result.alum_wanted, 48.0 * gram, 1e-6 * gram));
  CHECK(near(result.alum, 78.650 * gram, 0.001 * gram));
  CHECK(near(result.enough.value, 0.93229, 2e-5));
  CHECK(result.fresh_alum == 0.0 * kilogram);
  CHECK(result.fresh_salt == 0.0 * kilogram);
  REQUIRE(result.draws.size() == 1);
  CHECK(result.draws[0].jar == "A");
  CHECK(near(result.draws[0].mass, 400.0 * gram, 1e-6 * gram));
  CHECK(near(result.draws[0].left, 300.0 * gram, 0.001 * gram));
}

TEST_CASE("cover says how much alum makes it enough with the chance asked for") {
  // 80 g: (78.650 - 80) / 20.5282 = -0.06576, a chance of 0.47378. At 0.90, 1.28155 standard
  // deviations: 80 - 78.650 + 1.28155 x 20.5282 = 27.658 g of alum, half as much salt.
  const PowderBook book = one_jar();
  const Cover result = cover(book, need_of(1000.0 * gram), JarOrder::oldest);
  CHECK(result.answer == CoverAnswer::with_alum);
  CHECK(near(result.alum_wanted, 80.0 * gram, 1e-6 * gram));
  CHECK(near(result.enough.value, 0.47378, 2e-5));
  CHECK(near(result.fresh_alum, 27.658 * gram, 0.002 * gram));
  CHECK(near(result.fresh_salt, 13.829 * gram, 0.001 * gram));
}

TEST_CASE("the chance asked for decides between yes and alum") {
  // 48 g is enough with 0.93229
  const PowderBook book = one_jar();
  CoverNeed need = need_of(600.0 * gram);
  need.chance = {0.93};
  CHECK(cover(book, need, JarOrder::oldest).answer == CoverAnswer::yes);
  need.chance = {0.935};
  CHECK(cover(book, need, JarOrder::oldest).answer == CoverAnswer::with_alum);
}

TEST_CASE("cover says no where there is too little to dust the hide") {
  // 0.876 m2 want 700.8 g, and there are 700; 0.874 m2 want 699.2 g
  const PowderBook book = one_jar();
  CoverNeed need = need_of(600.0 * gram);
  need.area = 0.876 * square_metre;
  const Cover little = cover(book, need, JarOrder::oldest);
  CHECK(little.answer == CoverAnswer::no);
  CHECK(near(little.powder, 700.0 * gram, 0.001 * gram));
  CHECK(near(little.draws.at(0).left, 0.0 * gram, 1e-9 * gram));
  need.area = 0.874 * square_metre;
  CHECK(cover(book, need, JarOrder::oldest).answer != CoverAnswer::no);
}

TEST_CASE("no jar at all covers nothing, and its chance is none") {
  const Cover result = cover(PowderBook(), need_of(600.0 * gram), JarOrder::oldest);
  CHECK(result.answer == CoverAnswer::no);
  CHECK(result.draws.empty());
  CHECK(result.enough.value == 0.0);
}

// Jar B: 300 g at 10 % tested: 270 / 1158.0362 x 0.6 = 0.1398920 mol Al, 66.3608 g as potash alum.
// With 100 g of A, 19.6624 g: 86.0233 g. Shared 0.25 x 86.0233 = 21.5058; own root((0.075 x
// 19.6624)^2 + (0.02 x 66.3608)^2) = 1.98454; together 21.5972. (86.0233 - 80) / 21.5972 = 0.27889:
// 0.60983.
TEST_CASE("powder of two jars shares the error of uptake and not that of moisture") {
  PowderBook book = one_jar();
  PowderEntry entry = saving(book, "B", 300.0 * gram);
  entry.moisture = MassFraction{0.10};
  must(book, entry);
  const Cover result = cover(book, need_of(1000.0 * gram), JarOrder::least_left);
  REQUIRE(result.draws.size() == 2);
  CHECK(result.draws[0].jar == "B");
  CHECK(near(result.draws[0].left, 0.0 * gram, 1e-6 * gram));
  CHECK(result.draws[1].jar == "A");
  CHECK(near(result.draws[1].mass, 100.0 * gram, 0.001 * gram));
  CHECK(near(result.alum, 86.0233 * gram, 0.001 * gram));
  CHECK(near(result.enough.value, 0.60983, 3e-5));
}

TEST_CASE("jars are drawn from in the order asked for") {
  PowderBook book;
  save_on(book, "late", 500.0 * gram, "20");
  save_on(book, "early", 600.0 * gram, "10");
  save_on(book, "little", 410.0 * gram, "15");
  // Alum stirred in makes one the strongest.
  PowderEntry alum = entry_of(book, Deed::topped_up, "late", 20.0 * gram);
  alum.at = "2026-11-21T12:00:00Z";
  alum.contents = contents_of(forms::potassium_alum, alum.mass);
  must(book, alum);
  const auto first = [&](JarOrder order) {
    return cover(book, need_of(600.0 * gram), order).draws.at(0).jar;
  };
  CHECK(first(JarOrder::oldest) == "early");
  CHECK(first(JarOrder::strongest) == "late");
  CHECK(first(JarOrder::least_left) == "little");
}

TEST_CASE("a note on a jar does not make its powder any younger") {
  PowderBook book;
  save_on(book, "early", 600.0 * gram, "10");
  save_on(book, "late", 600.0 * gram, "20");
  PowderEntry note = entry_of(book, Deed::noted, "early", 0.0 * gram);
  note.at = "2026-11-25T12:00:00Z";
  must(book, note);
  CHECK(cover(book, need_of(600.0 * gram), JarOrder::oldest).draws.at(0).jar == "early");
}

TEST_CASE("jars that may not be used are left") {
  PowderBook book;
  PowderEntry entry = saving(book, "bad", 700.0 * gram);
  entry.slipped = true;
  must(book, entry);
  CHECK(cover(book, need_of(600.0 * gram), JarOrder::oldest).answer == CoverAnswer::no);
  must(book, saving(book, "good", 700.0 * gram));
  const Cover result = cover(book, need_of(600.0 * gram), JarOrder::oldest);
  CHECK(result.answer == CoverAnswer::yes);
  CHECK(result.draws.at(0).jar == "good");
}

TEST_CASE("a jar in good order may be used, an empty one not") {
  CHECK(not_reusable(good_jar()).empty());
  CHECK(not_reusable(Jar()) == "empty");
}

TEST_CASE("suspicion of disease comes first") {
  Jar jar = good_jar();
  jar.suspect = true;
  jar.slipped = true;
  CHECK(has(not_reusable(jar), "suspicion of disease"));
  jar.suspect = false;
  CHECK(has(not_reusable(jar), "slipped"));
  jar.slipped = false;
  CHECK(not_reusable(jar).empty());
}

TEST_CASE("powder above 35 % of water is damp") {
  // 560 g dry: 301 g of water are 34.96 %, 302 g 35.03 %
  Jar jar = good_jar();
  jar.water = 301.0 * gram;
  CHECK(not_reusable(jar).empty());
  jar.water = 302.0 * gram;
  CHECK(has(not_reusable(jar), "damp"));
}

TEST_CASE("powder goes on a hide after three times and not after four") {
  Jar jar = good_jar();
  jar.rounds = 3;
  CHECK(not_reusable(jar).empty());
  jar.rounds = 4;
  CHECK(not_reusable(jar) == "on a hide 4 times already");
}

TEST_CASE("powder below 35 % of the strength of fresh is weak") {
  // Strength 0.65189. With m g of meal more it is 0.65189 x 560 / (560 + m): 0.35 at m = 483.03.
  Jar jar = good_jar();
  const Contents powder = jar.contents;
  jar.contents[Part::meal] = powder[Part::meal] + 480'000'000;
  CHECK(not_reusable(jar).empty());
  jar.contents[Part::meal] = powder[Part::meal] + 490'000'000;
  CHECK(has(not_reusable(jar), "weak, 35 % as strong as fresh"));
}

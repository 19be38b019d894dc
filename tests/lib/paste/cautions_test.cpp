// Cautions follow what is in the batch.
#include <whittaw/paste/cautions.hpp>

#include "close.hpp"
#include "days.hpp"

#include <set>
#include <string>

using namespace whittaw;
using namespace whittaw_test;

namespace {
std::set<std::string_view> ids(const Day &day) {
  std::set<std::string_view> found;
  for (const auto &caution : cautions_for(day, batch_of(day))) found.insert(caution.id);
  return found;
}
/// A day with one deer skin, plain potash alum and salt: the fewest cautions.
Day bare_day() {
  Day day;
  day.recipe = round_recipe();
  day.recipe.soda.reset();
  day.hides = {hide("a", "deer", KnownArea{1.0 * square_metre})};
  return day;
}
const std::set<std::string_view> always{"label", "first-aid", "metal", "raw-hide",
                                        "dust",  "keep-away", "waste", "not-food"};
} // namespace

TEST_CASE("the plainest day has the cautions that always hold, and the alum's") {
  auto expected = always;
  expected.insert("eyes-alum");
  CHECK((ids(bare_day()) == expected));
}

TEST_CASE("soda brings its own caution and the foam's") {
  Day day = bare_day();
  day.recipe.soda = RecipePart{forms::soda_crystals, 120.0 * gram};
  const auto found = ids(day);
  CHECK(found.contains("eyes-soda"));
  CHECK(found.contains("foam"));
  CHECK_FALSE(ids(bare_day()).contains("foam"));
}

TEST_CASE("the foam is told of right after the label, and first aid before the eyes") {
  Day day = bare_day();
  day.recipe.soda = RecipePart{forms::soda_crystals, 120.0 * gram};
  const auto chosen = cautions_for(day, batch_of(day));
  REQUIRE(chosen.size() > 2);
  CHECK(chosen[0].id == "label");
  CHECK(chosen[1].id == "foam");
  CHECK(chosen[2].id == "first-aid");
  CHECK(has(chosen[2].text, "rinse with water for 15 minutes"));
  CHECK(cautions_for(bare_day(), batch_of(bare_day()))[1].id == "first-aid");
}

TEST_CASE("the alum that is drawn decides, not the recipe's") {
  Day day = bare_day();
  day.shelf = {bag(forms::aluminium_sulfate_14)};
  CHECK(ids(day).contains("eyes-aluminium-sulfate"));
  CHECK_FALSE(ids(day).contains("eyes-alum"));
  day.shelf = {bag(aluminium_sulfate_of_alumina({0.17}))};
  CHECK(ids(day).contains("eyes-aluminium-sulfate"));
  day.shelf = {bag(forms::ammonium_alum)};
  CHECK(ids(day).contains("ammonia"));
  CHECK(ids(day).contains("eyes-alum"));
  CHECK_FALSE(ids(bare_day()).contains("ammonia"));
  day.shelf = {bag(forms::potassium_alum, 10.0 * gram), bag(forms::aluminium_sulfate_14)};
  CHECK(ids(day).contains("eyes-aluminium-sulfate"));
  CHECK(ids(day).contains("eyes-alum"));
}

TEST_CASE("the animals bring their diseases") {
  Day day = bare_day();
  CHECK_FALSE(ids(day).contains("orf"));
  CHECK_FALSE(ids(day).contains("tularaemia"));
  for (const std::string_view animal : {"sheep", "goat", "lamb", "kid"}) {
    day.hides = {hide("a", animal, KnownArea{1.0 * square_metre})};
    CHECK(ids(day).contains("orf"));
  }
  for (const std::string_view animal : {"rabbit", "hare"}) {
    day.hides = {hide("a", animal, KnownArea{0.25 * square_metre})};
    CHECK(ids(day).contains("tularaemia"));
    CHECK_FALSE(ids(day).contains("orf"));
  }
}

TEST_CASE("every caution says something, under a name of its own") {
  std::set<std::string_view> names;
  for (const auto &caution : caution_table) {
    CAPTURE(std::string(caution.id));
    CHECK(names.insert(caution.id).second);
    CHECK(caution.text.size() > 20);
    CHECK((caution.source.mark == Mark::practice || !caution.source.text.empty()));
    // Nothing is said to be harmless.
    for (const std::string_view word : {"harmless", "food-safe", "non-toxic"})
      CHECK_FALSE(has(caution.text, word));
  }
  for (const auto id : always) CHECK(names.contains(id));
}

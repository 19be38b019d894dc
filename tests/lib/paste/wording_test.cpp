// Sentences about a batch, and the sources behind it.
#include <whittaw/paste/wording.hpp>

#include "close.hpp"
#include "days.hpp"

#include <algorithm>
#include <set>
#include <string>

using namespace whittaw;
using namespace whittaw_test;

TEST_CASE("an exchange says which is meant, which is there, and both masses") {
  Day day = three_hides();
  day.shelf = {bag(forms::soda_anhydrous), bag(aluminium_sulfate_of_alumina({0.17})),
               bag(forms::salt)};
  const Batch batch = batch_of(day);
  REQUIRE(batch.exchanges.size() == 2);
  // By hand: 314.784 g of crystals are 116.599 g of powder, 2.70 times as strong; 1311.600 g of
  // alum are 2.764919 / 3.33461 = 829.16 g of the grade, 1.58 times as strong.
  CHECK(
      write_exchange(batch.exchanges[1], UnitSystem::metric, {}) ==
      "washing soda: the recipe means crystals; your anhydrous powder is 2.70 times as strong, so "
      "117 g, not 315 g.");
  CHECK(
      write_exchange(batch.exchanges[0], UnitSystem::metric, {}) ==
      "alum: the recipe means potassium alum; your aluminium sulfate, 17 % Al2O3 is 1.58 times as "
      "strong, so 829 g, not 1312 g.");
  // The other way round it is the weaker.
  day.recipe.soda->form = forms::soda_anhydrous;
  day.shelf = {bag(forms::soda_crystals)};
  CHECK(has(write_exchange(batch_of(day).exchanges[0], UnitSystem::metric, {}),
            "is 2.70 times as weak"));
}

TEST_CASE("four ounces of soda crystals made up with powder are told in one sentence") {
  const auto drawn = draw(forms::soda_crystals, 4.0 * ounce, {bag(forms::soda_anhydrous)});
  REQUIRE(drawn.draws.size() == 1);
  // By hand: 4 oz = 113.398 g, x 105.988 / 286.138 = 42.004 g, 1.4816 oz; 286.138 / 105.988
  // = 2.700.
  const Exchange exchange{Role::soda,
                          forms::soda_crystals,
                          4.0 * ounce,
                          forms::soda_anhydrous,
                          drawn.draws[0].mass,
                          0,
                          times_as_strong(forms::soda_anhydrous, forms::soda_crystals)};
  CHECK(
      write_exchange(exchange, UnitSystem::metric, {}) ==
      "washing soda: the recipe means crystals; your anhydrous powder is 2.70 times as strong, so "
      "42 g, not 113 g.");
  CHECK(
      write_exchange(exchange, UnitSystem::us, {}) ==
      "washing soda: the recipe means crystals; your anhydrous powder is 2.70 times as strong, so "
      "1.5 oz, not 4.0 oz.");
  // As a scale of 5 g shows it.
  CHECK(has(write_exchange(exchange, UnitSystem::metric, {5.0 * gram, ounce}),
            "so 40 g, not 115 g."));
}

TEST_CASE("a source is printed with how well it is known") {
  CHECK(write_source({"a handbook", Mark::memory}) == "a handbook (from memory)");
  CHECK(write_source({"", Mark::practice}) == "common practice");
}

TEST_CASE("every figure's source is named, each once") {
  Day day = three_hides();
  day.recipe.source = "a printed paste";
  day.recipe.mark = Mark::seen;
  day.hides[2].trim = Trim::ellipse;
  const Batch batch = batch_of(day);
  const auto sources = sources_of(day, batch, measure_batch(batch, {}), cautions_for(day, batch));
  CHECK(sources.front() == "Recipe: a printed paste (seen)");
  const std::set<std::string> once(sources.begin(), sources.end());
  CHECK(once.size() == sources.size());
  for (const std::string_view part :
       {"McGregor 2016", "Brody 1945", "Trim: ", "Basicity: ", "pH: ", "Solubility: ", "Offer: ",
        "corn meal", "Bucket: ", "Coat and paste yield: ", "Warmth: ", "Caution: "}) {
    CAPTURE(std::string(part));
    CHECK(std::any_of(sources.begin(), sources.end(),
                      [&](const std::string &source) { return has(source, part); }));
  }
}

TEST_CASE("hides of two kinds in turn still name each source once") {
  Day day = three_hides();
  std::swap(day.hides[1], day.hides[2]); // goat, calf, goat
  const Batch batch = batch_of(day);
  const auto sources = sources_of(day, batch, measure_batch(batch, {}), {});
  CHECK(std::count_if(sources.begin(), sources.end(),
                      [](const std::string &source) { return has(source, "McGregor 2016"); }) == 1);
}

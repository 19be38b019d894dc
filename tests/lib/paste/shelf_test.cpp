// What is drawn from the shelf.
#include <whittaw/paste/shelf.hpp>

#include "close.hpp"
#include "days.hpp"

using namespace whittaw;
using whittaw_test::bag;
using whittaw_test::near;
using whittaw_test::priced;

namespace {
constexpr Mass tenth_of_a_gram = 0.1 * gram;
}

TEST_CASE("with no bag of the role the recipe's own form is taken as bought") {
  const std::vector<Bag> shelf{bag(forms::salt)};
  const auto drawn = draw(forms::potassium_alum, 500.0 * gram, shelf);
  REQUIRE(drawn.draws.size() == 1);
  CHECK_FALSE(drawn.draws[0].bag.has_value());
  CHECK(drawn.draws[0].form.name == forms::potassium_alum.name);
  CHECK(drawn.draws[0].mass == 500.0 * gram);
  CHECK(drawn.missing == 0.0 * kilogram);
}

TEST_CASE("another form is drawn by moles of what it is for") {
  // By hand: 500 g potash alum are 1.05402 mol Al, in ammonium alum 1.05402 x 453.313 = 477.80 g.
  const auto alum = draw(forms::potassium_alum, 500.0 * gram, {bag(forms::ammonium_alum)});
  REQUIRE(alum.draws.size() == 1);
  CHECK(near(alum.draws[0].mass, 477.80 * gram, tenth_of_a_gram));
  // 120 g soda crystals are 0.419378 mol, anhydrous 0.419378 x 105.988 = 44.45 g.
  const auto soda = draw(forms::soda_crystals, 120.0 * gram, {bag(forms::soda_anhydrous)});
  CHECK(near(soda.draws[0].mass, 44.45 * gram, tenth_of_a_gram));
  // As bicarbonate twice the moles: 0.838756 x 84.006 = 70.46 g.
  const auto baking = draw(forms::soda_crystals, 120.0 * gram, {bag(forms::sodium_bicarbonate)});
  CHECK(near(baking.draws[0].mass, 70.46 * gram, tenth_of_a_gram));
}

TEST_CASE("the recipe's own form is drawn first where prices are not all known") {
  const auto drawn = draw(forms::potassium_alum, 500.0 * gram,
                          {priced(forms::ammonium_alum, 0.01), bag(forms::potassium_alum)});
  REQUIRE(drawn.draws.size() == 1);
  CHECK(drawn.draws[0].bag == 1);
  CHECK(drawn.draws[0].mass == 500.0 * gram);
}

TEST_CASE("the cheapest by what it brings is drawn first, not the cheapest by weight") {
  // By hand, for 1 kg of potash alum: itself at 2.00; 0.6322 kg of aluminium sulfate of 17 % at
  // 2.50 a kilogram, 1.58.
  const Form grade = aluminium_sulfate_of_alumina({0.17});
  const auto drawn = draw(forms::potassium_alum, 1.0 * kilogram,
                          {priced(forms::potassium_alum, 2.00), priced(grade, 2.50)});
  REQUIRE(drawn.draws.size() == 1);
  CHECK(drawn.draws[0].bag == 1);
  CHECK(near(drawn.draws[0].mass, 632.2 * gram, tenth_of_a_gram));
  // At 3.50 it would be 2.21: the alum itself.
  CHECK(draw(forms::potassium_alum, 1.0 * kilogram,
             {priced(forms::potassium_alum, 2.00), priced(grade, 3.50)})
            .draws[0]
            .bag == 0);
}

TEST_CASE("several bags are emptied in turn, and the rest is missing") {
  // Wanted: 1000 g of potash alum. By hand: 200 g of the 14 hydrate at 1.00 a kilogram bring
  // 2 x 200 / 594.342 = 0.673013 mol, worth 319.26 g; 300 g of potash alum at 3.00; of ammonium
  // alum at 4.00 the last 380.74 g are 0.802619 mol, 363.84 g.
  const std::vector<Bag> shelf{priced(forms::ammonium_alum, 4.00),
                               priced(forms::potassium_alum, 3.00, 300.0 * gram), bag(forms::salt),
                               priced(forms::aluminium_sulfate_14, 1.00, 200.0 * gram)};
  const auto drawn = draw(forms::potassium_alum, 1000.0 * gram, shelf);
  REQUIRE(drawn.draws.size() == 3);
  CHECK(drawn.draws[0].bag == 3);
  CHECK(near(drawn.draws[0].mass, 200.0 * gram, 1e-9 * gram));
  CHECK(drawn.draws[1].bag == 1);
  CHECK(near(drawn.draws[1].mass, 300.0 * gram, 1e-9 * gram));
  CHECK(drawn.draws[2].bag == 0);
  CHECK(near(drawn.draws[2].mass, 363.84 * gram, tenth_of_a_gram));
  CHECK(drawn.missing == 0.0 * kilogram);

  auto short_shelf = shelf;
  short_shelf[0].amount = 100.0 * gram; // brings 0.220598 mol, worth 104.65 g: 276.09 g are missing
  const auto short_drawn = draw(forms::potassium_alum, 1000.0 * gram, short_shelf);
  CHECK(near(short_drawn.missing, 276.09 * gram, tenth_of_a_gram));
}

TEST_CASE("an amount that just suffices leaves nothing missing") {
  const auto drawn = draw(forms::salt, 250.0 * gram, {bag(forms::salt, 250.0 * gram)});
  CHECK(drawn.missing == 0.0 * kilogram);
  // Half a percent, 1.25 g, is not worth another bag; 2 g are missing.
  const auto hardly = draw(forms::salt, 250.0 * gram, {bag(forms::salt, 249.0 * gram)});
  CHECK(hardly.missing == 0.0 * kilogram);
  const auto less = draw(forms::salt, 250.0 * gram, {bag(forms::salt, 248.0 * gram)});
  CHECK(near(less.missing, 2.0 * gram, 1e-9 * gram));
}

TEST_CASE("iodized salt is drawn last, however cheap and wherever it is listed") {
  Bag iodized = priced(forms::salt, 0.10);
  iodized.iodized = true;
  const auto drawn =
      draw(forms::salt, 300.0 * gram, {iodized, priced(forms::salt, 2.00, 200.0 * gram)});
  REQUIRE(drawn.draws.size() == 2);
  CHECK(drawn.draws[0].bag == 1);
  CHECK(near(drawn.draws[0].mass, 200.0 * gram, 1e-9 * gram));
  CHECK(drawn.draws[1].bag == 0);
  CHECK(near(drawn.draws[1].mass, 100.0 * gram, 1e-9 * gram));
  // With enough plain salt none of it is drawn; without prices neither.
  const auto enough = draw(forms::salt, 300.0 * gram, {iodized, priced(forms::salt, 2.00)});
  REQUIRE(enough.draws.size() == 1);
  CHECK(enough.draws[0].bag == 1);
  iodized.price.reset();
  CHECK(draw(forms::salt, 300.0 * gram, {iodized, bag(forms::salt)}).draws[0].bag == 1);
}

TEST_CASE("bags of equal rank are drawn as listed") {
  const auto drawn = draw(forms::salt, 300.0 * gram,
                          {bag(forms::salt, 200.0 * gram), bag(forms::salt, 200.0 * gram)});
  REQUIRE(drawn.draws.size() == 2);
  CHECK(drawn.draws[0].bag == 0);
  CHECK(near(drawn.draws[1].mass, 100.0 * gram, 1e-9 * gram));
}

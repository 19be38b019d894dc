// Each check speaks up for its case and stays silent for the case beside it.
#include <whittaw/paste/checks.hpp>

#include "close.hpp"
#include "days.hpp"

#include <cstdlib>
#include <optional>
#include <string>
#include <utility>
#include <vector>

using namespace whittaw;
using namespace whittaw_test;

namespace doctest {
template <> struct StringMaker<Level> {
  static String convert(Level level) { return std::string(level_name(level)).c_str(); }
};
template <> struct StringMaker<std::optional<Level>> {
  static String convert(std::optional<Level> level) {
    return level ? StringMaker<Level>::convert(*level) : String("silent");
  }
};
} // namespace doctest

namespace {

/// A day that nothing is wrong with: a known square metre, 5 kg fleshed.
Day sound_day() {
  Day day;
  day.recipe = round_recipe();
  day.hides = {hide("a", "sheep", KnownArea{1.0 * square_metre})};
  day.hides[0].fleshed_weight = 5.0 * kilogram;
  day.bucket = {find_vessel("plastic"), 60.0 * litre};
  day.water_temperature = degrees_celsius(25.0);
  return day;
}
std::vector<Check> checks_of(const Day &day, UnitSystem units = UnitSystem::metric,
                             const Workshop &workshop = {}) {
  const Batch batch = batch_of(day);
  return check_batch(day, batch, workshop, measure_batch(batch, workshop), units);
}
std::optional<Check> find(const std::vector<Check> &checks, std::string_view id) {
  for (const auto &check : checks)
    if (check.id == id) return check;
  return std::nullopt;
}
std::optional<Level> level(const Day &day, std::string_view id) {
  const auto check = find(checks_of(day), id);
  if (!check) return std::nullopt;
  return check->level;
}
std::string text(const Day &day, std::string_view id) {
  const auto check = find(checks_of(day), id);
  REQUIRE(check.has_value());
  return check->text;
}
/// The number behind `words` in `in`.
double number_after(const std::string &in, const std::string &words) {
  const auto at = in.find(words);
  REQUIRE_MESSAGE(at != std::string::npos, in);
  return std::strtod(in.c_str() + at + words.size(), nullptr);
}

} // namespace

TEST_CASE("a sound day passes every check") {
  const auto checks = checks_of(sound_day());
  for (const auto &check : checks) {
    CAPTURE(std::string(check.id));
    CAPTURE(check.text);
    // A liquor of this strength crystallises in a cold shed, which is no fault of the day.
    CHECK(check.level == (check.id == "keep-warm" ? Level::note : Level::ok));
  }
  CHECK_FALSE(says_stop(checks));
  CHECK(find(checks, "basicity").has_value());
  CHECK(find(checks, "dissolve").has_value());
  CHECK(find(checks, "offer").has_value());
}

TEST_CASE("basicity: noted when low, warned when high, stopped where aluminium drops out") {
  Day day = sound_day();               // 26.5 %
  day.recipe.soda->mass = 30.0 * gram; // 6.6 %
  CHECK(level(day, "basicity") == Level::note);
  day.recipe.soda->mass = 180.0 * gram; // 39.8 %
  CHECK(level(day, "basicity") == Level::warn);
  CHECK_FALSE(says_stop(checks_of(day)));
  // 1.1 lb alum and 1.1 lb soda crystals, 111 %.
  day.recipe.alum.mass = 1.1 * pound;
  day.recipe.soda->mass = 1.1 * pound;
  CHECK(level(day, "basicity") == Level::stop);
  CHECK(has(text(day, "basicity"), "111 %"));
  CHECK(says_stop(checks_of(day)));
  day.recipe.soda.reset();
  CHECK(level(day, "basicity") == Level::note);
}

TEST_CASE("the wrong form of soda is caught: the bulletin with anhydrous powder") {
  Day day = sound_day();
  day.recipe = bulletin();
  CHECK(level(day, "basicity") == Level::ok);
  day.recipe.soda->form = forms::soda_anhydrous; // 74.6 %
  CHECK(level(day, "basicity") == Level::stop);
}

TEST_CASE("dissolving: cold alum water is warned of, and the warmth it asks for is enough") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "dissolve-alum").has_value());
  day.water_temperature = degrees_celsius(10.0);
  CHECK(level(day, "dissolve-alum") == Level::warn);
  CHECK_FALSE(level(day, "dissolve").has_value());
  // By hand: 272.14 g in 3992.8 + 227.86 g of water, 6.448 in 100 g: 22.2 degrees; with the margin
  // of 3 degrees 25.2, rounded up 26.
  const double asked = number_after(text(day, "dissolve-alum"), "water of at least ");
  CHECK(asked == 26.0);
  day.water_temperature = degrees_celsius(asked);
  CHECK_FALSE(level(day, "dissolve-alum").has_value());
  // In Fahrenheit too the warmth asked for is enough.
  day.water_temperature = degrees_celsius(10.0);
  const auto in_us = find(checks_of(day, UnitSystem::us), "dissolve-alum");
  REQUIRE(in_us.has_value());
  const double fahrenheit = number_after(in_us->text, "water of at least ");
  day.water_temperature = degrees_celsius((fahrenheit - 32.0) / 1.8);
  CHECK_FALSE(level(day, "dissolve-alum").has_value());
}

TEST_CASE("dissolving: what no hot water holds is stopped") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "dissolve-soda").has_value());
  day.recipe.salt.mass = 900.0 * gram; // 43 g in 100 g of water; 37.1 at 60 degrees
  CHECK(level(day, "dissolve-soda") == Level::stop);
  CHECK(has(text(day, "dissolve-soda"), "more water"));
  CHECK_FALSE(level(day, "dissolve-liquor").has_value()); // it has two waters
}

TEST_CASE("dissolving: of a recipe of one water only the liquor is spoken of") {
  Day day = sound_day();
  day.recipe.water_for_alum = 6.0 * litre;
  day.recipe.water_for_salt_and_soda = 0.0 * litre;
  for (const std::string_view id : {"dissolve-alum", "dissolve-soda", "dissolve-liquor"})
    CHECK_FALSE(level(day, id).has_value());
  CHECK(level(day, "dissolve") == Level::ok);
  // By hand: 272.14 g of alum in 5989.2 + 227.86 + 75.55 g of water, 4.325 in 100 g: 11.7 degrees,
  // with the margin 14.7, rounded up 15.
  day.water_temperature = degrees_celsius(10.0);
  CHECK(level(day, "dissolve-liquor") == Level::warn);
  CHECK(number_after(text(day, "dissolve-liquor"), "water of at least ") == 15.0);
  CHECK_FALSE(level(day, "dissolve-alum").has_value());
  CHECK_FALSE(level(day, "dissolve-soda").has_value());
  day.recipe.salt.mass = 2600.0 * gram; // 41 g in 100 g; 37.1 at 60 degrees
  CHECK(level(day, "dissolve-liquor") == Level::stop);
  // Made up with anhydrous soda it is one water still.
  day.recipe.salt.mass = 250.0 * gram;
  day.water_temperature = degrees_celsius(25.0);
  day.shelf = {bag(forms::potassium_alum), bag(forms::salt), bag(forms::soda_anhydrous)};
  CHECK_FALSE(level(day, "dissolve-soda").has_value());
  CHECK(level(day, "dissolve") == Level::ok);
}

TEST_CASE("dissolving: soda that hot water holds less of asks for cooler water") {
  Day day = sound_day();
  // By hand: 945 g in 1996.4 g of water are 47.3 in 100 g; water holds 46.0 at 60 degrees, 49.0 at
  // 40 and 48.2 at 45.
  day.recipe.soda = RecipePart{forms::soda_anhydrous, 945.0 * gram};
  day.water_temperature = degrees_celsius(60.0);
  CHECK(level(day, "dissolve-soda") == Level::warn);
  CHECK(has(text(day, "dissolve-soda"), "Use cooler water."));
  CHECK_FALSE(has(text(day, "dissolve-soda"), "at least"));
  // Soda dissolves best at 40 degrees, and all of this up to 40 + 20 x (49.0 - 47.335) / 3 = 51.1.
  const double above = number_after(text(day, "dissolve-soda"), "less above ");
  CHECK(above >= 40.0);
  CHECK(above <= 51.1);
  day.water_temperature = degrees_celsius(45.0);
  CHECK_FALSE(level(day, "dissolve-soda").has_value());
  // In cold water it asks for warmer: 30 + 10 x (47.335 - 39.7) / 9.3 = 38.2, and 3, rounded up.
  day.water_temperature = degrees_celsius(20.0);
  CHECK(number_after(text(day, "dissolve-soda"), "water of at least ") == 42.0);
}

TEST_CASE("keep-warm: a paste that crystallises in a cool shed is noted") {
  Day day = sound_day();
  // By hand: 4.325 in 100 g (see above), 10 + 10 x 0.325 / 1.9 = 11.7 degrees.
  CHECK(level(day, "keep-warm") == Level::note);
  CHECK(number_after(text(day, "keep-warm"), "Below ") == 12.0);
  // 410 g: 223.156 in 5989.2 + 186.844 + 75.551 g, 3.570: 5.7 degrees. 400 g: 3.485: 4.9.
  day.recipe.alum.mass = 410.0 * gram;
  CHECK(number_after(text(day, "keep-warm"), "Below ") == 6.0);
  day.recipe.alum.mass = 400.0 * gram;
  CHECK_FALSE(level(day, "keep-warm").has_value());
}

TEST_CASE("too-warm: water hotter than a raw skin bears is warned of") {
  Day day = sound_day();
  day.water_temperature = degrees_celsius(35.0);
  CHECK_FALSE(level(day, "too-warm").has_value());
  day.water_temperature = degrees_celsius(36.0);
  CHECK(level(day, "too-warm") == Level::warn);
  CHECK(has(text(day, "too-warm"), "let it cool to 35 \u00b0C"));
}

TEST_CASE("scale: steps that put a part off by more than 3 per cent are warned of") {
  // By hand, for 1 m2: 8 / 7.487254 = 1.068482, good to sqrt(.02^2 + .1^2 + .04^2) = 10.9545 %; for
  // 90 % x exp(-.109218^2 / 2 + 1.281552 x .109218), / 0.95: 1.285885 times the recipe: alum 642.94
  // g, salt 321.47, soda 154.31.
  Workshop workshop;
  const auto scale = [&](const Day &day) {
    std::vector<std::pair<Level, std::string>> found;
    for (const auto &check : checks_of(day, UnitSystem::metric, workshop))
      if (check.id == "scale") found.push_back({check.level, check.text});
    return found;
  };
  CHECK(scale(sound_day()).empty()); // one gram
  workshop.scale.metric = 10.0 * gram;
  CHECK(scale(sound_day()).empty()); // 640, 320, 150: soda 2.8 % off
  workshop.scale.metric = 20.0 * gram;
  auto found = scale(sound_day()); // 640, 320, 160: soda 3.7 % off
  REQUIRE(found.size() == 1);
  CHECK(found[0].first == Level::warn);
  CHECK(has(found[0].second, "washing soda crystals (decahydrate) off by 4 %"));
  workshop.scale.metric = 400.0 * gram;
  found = scale(sound_day()); // 800, 400, none
  REQUIRE(found.size() == 3);
  CHECK(found[0].first == Level::stop);
  CHECK(has(found[0].second, "cannot weigh so little washing soda crystals (decahydrate)"));
  // It is one lot that is weighed: four of 38.58 g of soda, 40 on a scale of 5 g, 3.7 % off; of
  // alum 160.73 g, 160, and of salt 80.37, 80.
  Day day = sound_day();
  workshop.scale.metric = 5.0 * gram;
  CHECK(scale(day).empty()); // 155: 0.4 % off
  day.bucket.volume = batch_of(day).bucket / 3.9;
  REQUIRE(batch_of(day).lots == 4);
  found = scale(day);
  REQUIRE(found.size() == 1);
  CHECK(has(found[0].second, "washing soda"));
}

TEST_CASE("an unstated water temperature is noted and taken as cold") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "water-temperature").has_value());
  day.water_temperature.reset();
  CHECK(level(day, "water-temperature") == Level::note);
  CHECK(level(day, "dissolve-alum") == Level::warn);
}

TEST_CASE("offer: the coat it suggests brings the offer to the bound") {
  Day day = sound_day();
  // By hand: 0.534241 kg of alum a square metre, on 5 kg 10.7 %, on 8 kg 6.7 %, on 4 kg 13.4 %. The
  // spread: area 2 %, weight 1 %, coat 10 %, yield 4 %: 11.0 %, 1.2 of 10.7.
  CHECK(level(day, "offer") == Level::ok);
  CHECK(text(day, "offer") ==
        "Alum offer 10.7 \u00b1 1.2 % of fleshed weight, within 8.0 to 12 %.");
  for (const double fleshed : {8.0, 4.0}) {
    CAPTURE(fleshed);
    day = sound_day();
    day.hides[0].fleshed_weight = fleshed * kilogram;
    CHECK(level(day, "offer") == Level::warn);
    const double millimetres = number_after(text(day, "offer"), "Spread ");
    CHECK(has(text(day, "offer"), " times as strong, alum, salt and soda together."));
    // By hand: 8 / 6.678 = 1.20, 12 / 13.356 = 0.898.
    CHECK(close(number_after(text(day, "offer"), "make the liquor "),
                fleshed > 5.0 ? 1.198 : 0.8985, 0.002));
    day.coat = millimetres * millimetre;
    // The coat is printed to two digits: 1 % here.
    CHECK(close(batch_of(day).offer.value, fleshed > 5.0 ? 0.08 : 0.12, 0.01));
  }
}

TEST_CASE("offer: the number of coats it suggests lies within the range") {
  struct Case {
    int coats;
    double fleshed;
    bool suggests;
  };
  // Offers in per cent: 5.3 (two coats: 10.7), 7.6 (two: 15.3), 13.4 (one: 6.7), 16.0 (two: 10.7).
  for (const Case &each :
       {Case{1, 5.0, true}, Case{1, 3.5, false}, Case{2, 4.0, false}, Case{3, 5.0, true}}) {
    Day day = sound_day();
    day.coats = each.coats;
    day.hides[0].fleshed_weight = each.fleshed * kilogram;
    const std::string said = text(day, "offer");
    CAPTURE(said);
    CHECK(has(said, "or put on ") == each.suggests);
    if (!has(said, "or put on ")) continue;
    day.coats = static_cast<int>(number_after(said, "or put on "));
    CHECK(level(day, "offer") == Level::ok);
  }
}

TEST_CASE(
    "offer: hides off the range by more than their spread are named, and a recipe's own range "
    "rules") {
  Day day = sound_day();
  day.hides.push_back(hide("thick", "sheep", KnownArea{1.0 * square_metre}));
  // By hand: 53.4241 / 7 = 7.63 %, good to 10.247 %: up to 8.41, which is within. Both
  // together 8.9.
  day.hides.back().fleshed_weight = 7.0 * kilogram;
  CHECK(level(day, "offer") == Level::ok);
  CHECK_FALSE(has(text(day, "offer"), "thick"));
  // 53.4241 / 8 = 6.678 %, up to 7.36; 8 / 6.678 x 4 mm = 4.79 mm would do. Both together 8.2.
  day.hides.back().fleshed_weight = 8.0 * kilogram;
  CHECK(level(day, "offer") == Level::note);
  CHECK(has(text(day, "offer"),
            "By hide: thick low (4.8 mm would do); the batch is not sized for that."));
  // 53.4241 / 4 = 13.36 %, down to 11.99, within; / 3.9 = 13.70, down to 12.29; 12 / 13.70 x 4 =
  // 3.50 mm. With 6.1 kg beside it 10.7 together.
  day.hides[0].fleshed_weight = 6.1 * kilogram;
  day.hides[1].tag = "thin";
  day.hides[1].fleshed_weight = 4.0 * kilogram;
  CHECK(level(day, "offer") == Level::ok);
  day.hides[1].fleshed_weight = 3.9 * kilogram;
  CHECK(level(day, "offer") == Level::note);
  CHECK(has(text(day, "offer"), "By hide: thin high (3.5 mm would do)"));
  day = sound_day();
  day.recipe.offer = OfferRange{{0.11}, {0.15}};
  CHECK(level(day, "offer") == Level::warn);
  CHECK(has(text(day, "offer"), "below 11 to 15 %"));
}

TEST_CASE("shelf: iodized salt stops, plain salt does not") {
  Day day = sound_day();
  day.shelf = {bag(forms::salt)};
  CHECK_FALSE(level(day, "iodized-salt").has_value());
  day.shelf[0].iodized = true;
  CHECK(level(day, "iodized-salt") == Level::stop);
}

TEST_CASE("shelf: what is not listed is noted, unless there is no list") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "not-on-shelf").has_value());
  day.shelf = {bag(forms::salt), bag(forms::potassium_alum)};
  const auto checks = checks_of(day);
  int noted = 0;
  for (const auto &check : checks)
    if (check.id == "not-on-shelf") ++noted;
  CHECK(noted == 2); // soda and meal
}

TEST_CASE("shelf: extras are not asked for, nor what is short a second time") {
  Day day = sound_day();
  day.recipe.meal.reset();
  day.recipe.extras = {{"egg yolk", 100.0 * gram}};
  day.shelf = {bag(forms::salt), bag(forms::potassium_alum), bag(forms::soda_crystals)};
  CHECK_FALSE(level(day, "not-on-shelf").has_value());
  day.shelf[1].amount = 100.0 * gram;
  CHECK(level(day, "shelf-short") == Level::stop);
  CHECK_FALSE(level(day, "not-on-shelf").has_value());
}

TEST_CASE("shelf: iodized salt that need not be drawn is not spoken of") {
  Day day = sound_day();
  day.shelf = {bag(forms::salt), bag(forms::salt)};
  day.shelf[0].iodized = true;
  CHECK_FALSE(level(day, "iodized-salt").has_value());
  day.shelf[1].amount = 10.0 * gram;
  CHECK(level(day, "iodized-salt") == Level::stop);
}

TEST_CASE("meal: another meal than the recipe's is noted") {
  Day day = sound_day();
  const auto meal = [](std::string_view name) {
    return Bag{whittaw::detail::meal_form(*find_bulk(name)), find_bulk(name)};
  };
  day.shelf = {bag(forms::potassium_alum), bag(forms::salt), bag(forms::soda_crystals),
               meal("corn meal")};
  CHECK_FALSE(level(day, "meal").has_value());
  day.shelf[3] = meal("rye flour");
  CHECK(level(day, "meal") == Level::note);
  CHECK(has(text(day, "meal"), "The recipe means corn meal; rye flour is taken weight for weight"));
}

TEST_CASE("shelf: too little stops, and just enough does not") {
  Day day = sound_day();
  const Mass needed = mass_of_role(batch_of(day), Role::alum);
  day.shelf = {bag(forms::potassium_alum, needed * 1.001)};
  CHECK_FALSE(level(day, "shelf-short").has_value());
  day.shelf = {bag(forms::potassium_alum, needed - 100.0 * gram)};
  CHECK(level(day, "shelf-short") == Level::stop);
  CHECK(has(text(day, "shelf-short"), "100 g of potassium alum"));
}

TEST_CASE("vessel: metal stops, an unnamed one is noted, and no metal hides in the table") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "vessel").has_value());
  for (const std::string_view metal :
       {"stainless steel", "galvanised steel", "zinc", "aluminium", "iron", "copper"}) {
    CAPTURE(std::string(metal));
    day.bucket.material = find_vessel(metal);
    CHECK(level(day, "vessel") == Level::stop);
  }
  for (const std::string_view other : {"plastic", "glass", "stoneware", "wood"}) {
    day.bucket.material = find_vessel(other);
    CHECK_FALSE(level(day, "vessel").has_value());
  }
  day.bucket.material = nullptr;
  CHECK(level(day, "vessel") == Level::note);
  CHECK(find_vessel("paper") == nullptr);
}

TEST_CASE("bucket: a small one is filled in equal lots that fit") {
  Day day = sound_day();
  const Volume needed = batch_of(day).bucket;
  day.bucket.volume = needed * 1.001;
  CHECK_FALSE(level(day, "bucket").has_value());
  day.bucket.volume = needed * 0.999;
  CHECK(level(day, "bucket") == Level::warn);
  CHECK(number_after(text(day, "bucket"), "Mix in ") == 2.0);
  day.bucket.volume = needed / 2.5;
  CHECK(number_after(text(day, "bucket"), "Mix in ") == 3.0);
  day.bucket.volume.reset();
  CHECK_FALSE(level(day, "bucket").has_value());
}

TEST_CASE("hides: an odd live weight or size is warned of, an ordinary one is not") {
  Day day = sound_day();
  day.hides = {hide("a", "goat", LiveWeight{27.0 * kilogram})};
  CHECK_FALSE(level(day, "hide-size").has_value());
  day.hides[0].measure = LiveWeight{270.0 * kilogram};
  CHECK(level(day, "hide-size") == Level::warn);
  day.hides[0].measure = LiveWeight{0.27 * kilogram};
  CHECK(level(day, "hide-size") == Level::warn);
  CHECK(has(text(day, "hide-size"), ": a."));
  // No hide of farm or wood has 22 square metres, whatever it was measured by.
  day.hides[0].measure = KnownArea{22.0 * square_metre};
  CHECK(level(day, "hide-size") == Level::warn);
  day.hides[0].measure = KnownArea{0.6 * square_metre};
  CHECK_FALSE(level(day, "hide-size").has_value());
}

TEST_CASE("hides: a fleshed weight that cannot be of the hide is warned of") {
  Day day = sound_day();
  day.hides = {hide("a", "goat", GreenWeight{2.0 * kilogram})};
  day.hides[0].fleshed_weight = 1.7 * kilogram;
  CHECK_FALSE(level(day, "fleshed-weight").has_value());
  day.hides[0].fleshed_weight = 2.5 * kilogram; // more than it weighed green
  CHECK(level(day, "fleshed-weight") == Level::warn);
  // By hand: 0.576 m2 x 2.5 x 0.85 = 1.224 kg; a third and three times of it are 0.408 and 3.672.
  day.hides[0].measure = KnownArea{0.576 * square_metre};
  for (const double fits : {0.41, 1.2, 3.66}) {
    day.hides[0].fleshed_weight = fits * kilogram;
    CHECK_FALSE(level(day, "fleshed-weight").has_value());
  }
  for (const double off : {0.40, 3.7}) {
    day.hides[0].fleshed_weight = off * kilogram;
    CHECK(level(day, "fleshed-weight") == Level::warn);
  }
}

TEST_CASE("dissolving: a liquor that only holds hotter than raw skin bears is stopped") {
  Day day = sound_day();
  day.water_temperature = degrees_celsius(60.0);
  // By hand: 453.6 g of alum in 1 kg of water bring 246.9 g to 1206.7: 20.46 in 100 g, which the
  // table holds from 40 + 20 x 8.76 / 13.1 = 53.4 degrees, above the 35 that skin bears.
  day.recipe.alum = {forms::potassium_alum, pound};
  day.recipe.soda.reset();
  day.recipe.salt = {forms::salt, 100.0 * gram};
  day.recipe.water_for_alum = 1.0 * kilogram / water_density;
  day.recipe.water_for_salt_and_soda = 0.0 * litre;
  CHECK(level(day, "keep-warm") == Level::stop);
  day.recipe.water_for_alum = us_gallon; // 6.2 in 100 g: 21.2 degrees
  CHECK(level(day, "keep-warm") == Level::note);
}

TEST_CASE("hides: a live weight that the law was not fitted on is noted") {
  Day day = sound_day();
  // source: McGregor 2016, kids of 8.3 to 23.1 kg.
  for (const double within : {8.3, 15.0, 23.1}) {
    CAPTURE(within);
    day.hides = {hide("a", "goat", LiveWeight{within * kilogram})};
    CHECK_FALSE(level(day, "outside-law").has_value());
  }
  for (const double outside : {8.2, 23.2, 60.0}) {
    CAPTURE(outside);
    day.hides = {hide("a", "goat", LiveWeight{outside * kilogram})};
    CHECK(level(day, "outside-law") == Level::note);
    CHECK(has(text(day, "outside-law"), ": a."));
    CHECK_FALSE(level(day, "hide-size").has_value());
  }
  // An unusual weight is warned of once, and of other laws the limits are not known.
  day.hides = {hide("a", "goat", LiveWeight{270.0 * kilogram})};
  CHECK_FALSE(level(day, "outside-law").has_value());
  day.hides = {hide("a", "sheep", LiveWeight{60.0 * kilogram})};
  CHECK_FALSE(level(day, "outside-law").has_value());
  day.hides = {hide("a", "goat", KnownArea{1.0 * square_metre})};
  CHECK_FALSE(level(day, "outside-law").has_value());
}

TEST_CASE("hides: an area known too loosely is noted") {
  Day day = sound_day();
  CHECK_FALSE(level(day, "area-spread").has_value());
  day.hides = {hide("a", "mammal", LiveWeight{27.0 * kilogram})}; // 30 %
  CHECK(level(day, "area-spread") == Level::note);
  day.hides = {hide("a", "goat", LiveWeight{27.0 * kilogram})}; // 13 %
  CHECK_FALSE(level(day, "area-spread").has_value());
}

TEST_CASE("checks come worst first") {
  Day day = sound_day();
  day.bucket = {find_vessel("zinc"), 1.0 * litre};
  day.water_temperature.reset();
  const auto checks = checks_of(day);
  for (std::size_t i = 1; i < checks.size(); ++i) CHECK(checks[i - 1].level >= checks[i].level);
  CHECK(checks.front().level == Level::stop);
  CHECK(checks.back().level == Level::ok);
}

// What a kilogram of each form brings, and how forms stand for each other.
#include <whittaw/substance/form.hpp>

#include "close.hpp"

#include <set>
#include <string>

using namespace whittaw;
using whittaw_test::is_near;
using whittaw_test::near;

namespace {
constexpr Form grade_17 = aluminium_sulfate_of_alumina(percent<MassFractionKind>(17.0));

constexpr double instead_of_100_g(const Form &recipe, const Form &other) {
  return 100.0 * times_as_strong(recipe, other);
}
} // namespace

// source: "100 g potash alum by aluminium", calculated from the molar masses; by hand, for
// ammonium alum 100 x 453.313 / 474.372 = 95.56, for the 14 hydrate 100 x 594.342 / 2 / 474.372 =
// 62.64, for 17 % alumina 100 / 474.372 x 101.961 / 2 / 0.17 = 63.22.
static_assert(is_near(instead_of_100_g(forms::potassium_alum, forms::ammonium_alum), 95.6, 0.05));
static_assert(is_near(instead_of_100_g(forms::potassium_alum, grade_17), 63.2, 0.05));
static_assert(is_near(instead_of_100_g(forms::potassium_alum, forms::aluminium_sulfate_14), 62.6,
                      0.05));
static_assert(is_near(instead_of_100_g(forms::potassium_alum, forms::aluminium_sulfate_16), 66.4,
                      0.05));
static_assert(is_near(instead_of_100_g(forms::potassium_alum, forms::aluminium_sulfate_18), 70.2,
                      0.05));

// By hand: 4 oz = 113.398 g of crystals, x 105.988 / 286.138 = 42.00 g anhydrous, x 124.003 /
// 286.138 = 49.14 g monohydrate; and 286.138 / 105.988 = 2.700.
static_assert(is_near(113.398 * times_as_strong(forms::soda_crystals, forms::soda_anhydrous), 42.0,
                      0.05));
static_assert(is_near(113.398 * times_as_strong(forms::soda_crystals, forms::soda_monohydrate),
                      49.1, 0.05));
static_assert(is_near(times_as_strong(forms::soda_anhydrous, forms::soda_crystals), 2.700, 0.0005));
// One mole of carbonate binds two hydroxides, bicarbonate one: 2 x 84.006 / 105.988 = 1.5852.
static_assert(is_near(times_as_strong(forms::soda_anhydrous, forms::sodium_bicarbonate), 1.5852,
                      0.0001));

// By hand, moles a kilogram: aluminium 1000 / 474.372 = 2.10805 in potash alum, 2000 x 0.17 /
// 101.961 = 3.33461 in the 17 % grade; carbonate 1000 / 286.138 = 3.49482 in soda crystals.
static_assert(is_near(count(forms::potassium_alum.aluminium, mole / kilogram), 2.10805, 1e-5));
static_assert(is_near(count(grade_17.aluminium, mole / kilogram), 3.33461, 1e-5));
static_assert(is_near(count(forms::soda_crystals.carbonate, mole / kilogram), 3.49482, 1e-5));
static_assert(is_near(count(forms::soda_crystals.hydroxide, mole / kilogram), 6.98964, 1e-5));

// By hand, water: 216.180 / 474.372 = 0.455718; 180.150 / 286.138 = 0.629591; the grade holds
// 0.17 x 342.132 / 101.961 = 0.570438 of the anhydrous sulfate.
static_assert(is_near(forms::potassium_alum.water.value, 0.455718, 1e-6));
static_assert(is_near(forms::potassium_alum.anhydrous.value, 0.544282, 1e-6));
static_assert(is_near(forms::soda_crystals.water.value, 0.629591, 1e-6));
static_assert(is_near(grade_17.anhydrous.value, 0.570438, 1e-6));
static_assert(is_near(grade_17.water.value, 0.429562, 1e-6));
static_assert(forms::salt.water.value == 0.0 && forms::soda_anhydrous.water.value == 0.0);
static_assert(is_near(alumina_of_anhydrous_sulfate.value, 0.29802, 1e-5)); // 101.961 / 342.132

// Salt brings neither aluminium, hydroxide nor gas; alum no gas; soda no aluminium.
static_assert(count(forms::salt.aluminium, mole / kilogram) == 0.0);
static_assert(count(forms::potassium_alum.carbonate, mole / kilogram) == 0.0);
static_assert(count(forms::potassium_alum.hydroxide, mole / kilogram) == 0.0);
static_assert(count(forms::soda_crystals.aluminium, mole / kilogram) == 0.0);

TEST_CASE("a grade with a hydrate's alumina is as strong as that hydrate") {
  // By hand: the 14 hydrate holds 101.961 / 594.342 = 17.1553 % of alumina.
  const Form grade = aluminium_sulfate_of_alumina({0.171553});
  CHECK(near(times_as_strong(grade, forms::aluminium_sulfate_14), 1.0, 1e-5));
  CHECK(near(grade.water.value, forms::aluminium_sulfate_14.water.value, 1e-5));
}

TEST_CASE("every form has a role, a name of its own, a source for its density") {
  std::set<std::string_view> names;
  for (const auto &form : forms::fixed) {
    CAPTURE(std::string(form.name));
    CHECK(names.insert(form.name).second);
    CHECK((form.role == Role::alum || form.role == Role::salt || form.role == Role::soda));
    CHECK(form.solute.has_value());
    CHECK_FALSE(form.density_source.text.empty());
    CHECK(near(form.water.value + form.anhydrous.value, 1.0, 1e-12));
  }
}

TEST_CASE("crystal densities are those of printed monographs") {
  // source: IFA GESTIS and handbook entries for the pure substances, g/mL (from memory): potash
  // alum 1.725 to 1.757, soda crystals 1.44 to 1.46, salt 2.16 to 2.17, soda ash 2.53 to 2.54.
  const auto within = [](const Form &form, double low, double high) {
    const double density = count(form.crystal_density, gram_per_millilitre);
    return density >= low - 1e-12 && density <= high + 1e-12;
  };
  CHECK(within(forms::potassium_alum, 1.725, 1.757));
  CHECK(within(forms::ammonium_alum, 1.64, 1.65));
  CHECK(within(forms::soda_crystals, 1.44, 1.46));
  CHECK(within(forms::salt, 2.16, 2.17));
  CHECK(within(forms::soda_anhydrous, 2.53, 2.54));
}

TEST_CASE("role names stand in the order of the roles") {
  CHECK(role_name(Role::water) == "water");
  CHECK(role_name(Role::salt) == "salt");
  CHECK(role_name(Role::alum) == "alum");
  CHECK(role_name(Role::soda) == "soda");
  CHECK(role_name(Role::meal) == "meal");
  CHECK(role_name(Role::extra) == "extra");
}

TEST_CASE("a grade is named by its alumina, and all else by its own name") {
  CHECK(form_name(grade_17) == "aluminium sulfate, 17 % Al2O3");
  CHECK(form_name(aluminium_sulfate_of_alumina({0.165})) == "aluminium sulfate, 16.5 % Al2O3");
  CHECK(form_name(forms::aluminium_sulfate_14) == "aluminium sulfate, 14 waters");
  CHECK(form_name(forms::salt) == "salt");
}

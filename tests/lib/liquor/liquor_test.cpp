// Basicity, gas and pH of the liquor.
#include <whittaw/liquor/acidity.hpp>
#include <whittaw/liquor/basicity.hpp>
#include <whittaw/liquor/gas.hpp>

#include "close.hpp"

#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::is_near;
using whittaw_test::near;

namespace {
constexpr LiquorAmounts liquor(const Form &alum, Mass alum_mass, const Form &soda, Mass soda_mass) {
  LiquorAmounts amounts;
  add_to(amounts, alum, alum_mass);
  add_to(amounts, soda, soda_mass);
  return amounts;
}
constexpr double percent_basic(const Form &alum, Mass alum_mass, const Form &soda, Mass soda_mass) {
  return 100.0 * basicity(liquor(alum, alum_mass, soda, soda_mass)).value;
}
double litres_of_gas(const Form &soda, Mass mass) {
  const auto amounts = liquor(forms::potassium_alum, pound, soda, mass);
  return count(carbon_dioxide_volume(amounts.carbonate, degrees_celsius(20.0)), litre);
}
constexpr Mass four_ounces = 4.0 * ounce;
} // namespace

// source: USDA Farmers' Bulletin 1334 (from memory): 1 lb alum and 4 oz washing soda. By hand:
// 453.592 / 474.372 = 0.95620 mol Al; 113.398 / 286.138 = 0.39630 mol of carbonate in crystals, two
// hydroxides each: 2 x 0.39630 / 3 / 0.95620 = 27.6 %; monohydrate 0.91448 mol, 63.8 %; anhydrous
// 1.06991 mol, 74.6 %.
static_assert(is_near(percent_basic(forms::potassium_alum, pound, forms::soda_crystals,
                                    four_ounces),
                      27.6, 0.05));
static_assert(is_near(percent_basic(forms::potassium_alum, pound, forms::soda_monohydrate,
                                    four_ounces),
                      63.8, 0.05));
static_assert(is_near(percent_basic(forms::potassium_alum, pound, forms::soda_anhydrous,
                                    four_ounces),
                      74.6, 0.05));
// Aluminium sulfate of 17 % pound for pound: 453.592 x 3.33461 / 1000 = 1.51255 mol Al; 17.5 %.
static_assert(is_near(percent_basic(aluminium_sulfate_of_alumina({0.17}), pound,
                                    forms::soda_crystals, four_ounces),
                      17.5, 0.05));
// 1.1 lb alum and 1.1 lb crystals: 2 x 1.58522 / 3 / 0.95620 = 110.5 %, printed as 111.
static_assert(is_near(percent_basic(forms::potassium_alum, 1.1 * pound, forms::soda_crystals,
                                    1.1 * pound),
                      110.52, 0.02));
// Bicarbonate binds one hydroxide a mole: 84.006 g to 474.372 g of alum is a third.
static_assert(is_near(percent_basic(forms::potassium_alum, 474.372 * gram,
                                    forms::sodium_bicarbonate, 84.006 * gram),
                      100.0 / 3.0, 1e-6));
static_assert(basicity(LiquorAmounts{}).value == 0.0);

TEST_CASE("four ounces of soda give off the gas of their form") {
  // source: ideal gas, 24.055 L/mol at 20 degrees and 1 atm (8.314463 x 293.15 / 101325). By hand:
  // 0.39630, 0.91448 and 1.06991 mol are 9.5, 22.0 and 25.7 L.
  CHECK(near(litres_of_gas(forms::soda_crystals, four_ounces), 9.5, 0.05));
  CHECK(near(litres_of_gas(forms::soda_monohydrate, four_ounces), 22.0, 0.05));
  CHECK(near(litres_of_gas(forms::soda_anhydrous, four_ounces), 25.7, 0.05));
  // source: molar volume 22.41396954 L/mol at 0 degrees and 1 atm (CODATA 2018).
  CHECK(close(carbon_dioxide_volume(mole, degrees_celsius(0.0)), 22.41396954 * litre, 1e-8));
}

TEST_CASE("the bucket holds the paste, a quarter more, and an eighth of the gas") {
  // By hand: 1.25 x 8 + 9.5 / 8 = 11.1875 L.
  CHECK(close(bucket_volume(8.0 * litre, 9.5 * litre), 11.1875 * litre, 1e-12));
  CHECK(close(bucket_volume(8.0 * litre, 0.0 * litre), 10.0 * litre, 1e-12));
}

TEST_CASE("each published recipe falls in the band that practice gives it") {
  const auto band = [](double percent) { return basicity_band({percent / 100.0}).band; };
  CHECK(band(0.0) == BasicityBand::plain);
  CHECK(band(5.0) == BasicityBand::low);
  CHECK(band(17.5) == BasicityBand::fair);
  CHECK(band(27.6) == BasicityBand::fair); // the bulletin
  CHECK(band(35.0) == BasicityBand::fair);
  CHECK(band(35.1) == BasicityBand::high);
  CHECK(band(50.1) == BasicityBand::dropping);
  CHECK(band(63.8) == BasicityBand::dropping); // with the wrong soda
  CHECK(band(111.0) == BasicityBand::dropping);
}

TEST_CASE("bands rise, each in its own place") {
  for (std::size_t i = 0; i < basicity_bands.size(); ++i) {
    CHECK(static_cast<std::size_t>(basicity_bands[i].band) == i);
    if (i > 0) CHECK(basicity_bands[i - 1].up_to < basicity_bands[i].up_to);
  }
}

TEST_CASE("the pH to look for lies in the published band, and is not given beyond it") {
  // source: potash alum 0.2 mol/L measured 3.3; published models put the bulletin paste at 3.7 to
  // 4.3.
  const auto plain = estimated_acidity({0.0});
  REQUIRE(plain.has_value());
  CHECK(near(plain->ph, 3.3, 1e-9));
  const auto bulletin = estimated_acidity({0.276});
  REQUIRE(bulletin.has_value());
  CHECK(bulletin->ph > 3.7);
  CHECK(bulletin->ph < 4.3);
  CHECK(bulletin->ph_sd >= 0.5);
  CHECK(estimated_acidity({0.35}).has_value());
  CHECK_FALSE(estimated_acidity({0.36}).has_value());
  CHECK_FALSE(estimated_acidity({1.11}).has_value());
}

// Prices as people write them.
#include <whittaw/quantity/read_money.hpp>

#include "close.hpp"

#include <string>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::has;

namespace {
/// Money for one kilogram.
double by_kilogram(const Price &price) { return count(cost_of(price.per_mass, kilogram), tender); }

struct Written {
  std::string_view text;
  double by_kilogram;
  std::string_view currency;
};
} // namespace

TEST_CASE("a price is read with its currency before or behind, by any unit of mass") {
  // By hand: $1.20 a pound is 1.20 / 0.45359237 = 2.6455471 dollars a kilogram; 12 EUR for 5 kg is
  // 2.40 a kilogram; 30 cents an ounce is 0.30 / 0.028349523 = 10.582189 a kilogram.
  for (const Written &good : {
           Written{"2.40 EUR/kg", 2.40, "EUR"},
           Written{"EUR 2.40/kg", 2.40, "EUR"},
           Written{"2.40 \u20ac / kg", 2.40, "EUR"},
           Written{"$1.20/lb", 2.6455471, "USD"},
           Written{"1.20 USD per lb", 2.6455471, "USD"},
           Written{"\u00a33 per kg", 3.0, "GBP"},
           Written{"12 EUR/5 kg", 2.40, "EUR"},
           Written{"0.30 USD/oz", 10.582189, "USD"},
           Written{"45 SEK/kg", 45.0, "SEK"},
           Written{"0 EUR/kg", 0.0, "EUR"},
       }) {
    CAPTURE(std::string(good.text));
    const auto price = read_price(good.text);
    REQUIRE_MESSAGE(price.ok(), price.problem().found);
    CHECK(close(by_kilogram(*price), good.by_kilogram, 1e-7));
    CHECK(price->currency == good.currency);
  }
}

TEST_CASE("what is no price by mass is refused with an example of one") {
  for (const std::string_view bad :
       {"", "2.40", "2.40 EUR", "2.40/kg", "EUR/kg", "-2.40 EUR/kg", "EUR -2/kg", "2,40 EUR/kg",
        "2.40 EUR/L", "2.40 EUR/kg x", "2.40 XYZ/kg", "2.40 eur/kg", "nan EUR/kg", "1e400 EUR/kg",
        "1e300 EUR/kg", "2 EUR/0 kg", "2 EUR/1 lb 4 oz", "2 EUR+3 EUR/kg"}) {
    CAPTURE(std::string(bad));
    const auto price = read_price(bad);
    REQUIRE_FALSE(price.ok());
    CHECK_FALSE(price.problem().remedy.empty());
  }
  CHECK(has(read_price("2.40 EUR").problem().remedy, "2.40 EUR/kg"));
}

TEST_CASE("a cost is price times mass") {
  // By hand: 250 g at 2.40 a kilogram is 0.60.
  const auto price = read_price("2.40 EUR/kg");
  REQUIRE(price.ok());
  CHECK(close(cost_of(price->per_mass, 250.0 * gram), 0.60 * tender, 1e-12));
}

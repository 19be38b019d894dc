// Spreads carried to first order, held against a Monte Carlo of the same formula.
#include <whittaw/quantity/chance.hpp>
#include <whittaw/quantity/estimate.hpp>

#include "close.hpp"

#include <cmath>
#include <random>

using namespace whittaw;
using whittaw_test::close;
using whittaw_test::near;

namespace {

constexpr int draws = 400'000;
// The deviation of a sample of n normal draws is itself good to 1 / sqrt(2 n) = 0.11 %; four of
// those, and the second-order part that the rules leave out, about the square of a spread of at
// most 4 % (0.16 %, a few times), stay within one per cent.
constexpr double sd_tolerance = 0.01;

struct Moments {
  double mean;
  double sd;
};

/// Mean and deviation of `formula` fed with standard normal draws.
template <class Formula> Moments simulate(Formula formula) {
  std::mt19937_64 generator(19680301);
  std::normal_distribution<double> normal;
  const auto draw = [&] { return normal(generator); };
  double mean = 0.0;
  double squares = 0.0;
  for (int i = 1; i <= draws; ++i) {
    const double x = formula(draw);
    const double off = x - mean;
    mean += off / i;
    squares += off * (x - mean);
  }
  return {mean, std::sqrt(squares / (draws - 1))};
}

template <class Q> void check(const Estimate<Q> &got, const Moments &want) {
  CHECK(close(whittaw_test::plain(got.sd()), want.sd, sd_tolerance));
  // Mean: four standard errors, and the bias of second order, taken as one square of the spread.
  const double spread = want.sd / want.mean;
  CHECK(near(whittaw_test::plain(got.value), want.mean,
             4.0 * want.sd / std::sqrt(draws) + spread * spread * std::abs(want.mean)));
}

const Estimate<Length> length = estimate(1.2 * metre, Spread{0.03});
const Estimate<Length> width = estimate(0.7 * metre, Spread{0.04});

} // namespace

TEST_CASE("a sum of figures spreads as the simulated sum") {
  check(length + width, simulate([](auto draw) {
          return 1.2 * (1.0 + 0.03 * draw()) + 0.7 * (1.0 + 0.04 * draw());
        }));
  // By hand: sqrt(0.036^2 + 0.028^2) = 0.045607.
  CHECK(near((length + width).sd(), 0.045607 * metre, 1e-6 * metre));
}

TEST_CASE("a difference of figures spreads as the simulated difference") {
  check(length - width, simulate([](auto draw) {
          return 1.2 * (1.0 + 0.03 * draw()) - 0.7 * (1.0 + 0.04 * draw());
        }));
}

TEST_CASE("a product of figures spreads as the simulated product") {
  check(length * width, simulate([](auto draw) {
          return 1.2 * (1.0 + 0.03 * draw()) * 0.7 * (1.0 + 0.04 * draw());
        }));
  // By hand: the relative spreads 3 % and 4 % make 5 %.
  CHECK(near((length * width).spread().value, 0.05, 1e-12));
}

TEST_CASE("a quotient, a ratio and a reciprocal spread as simulated") {
  const auto quotient = simulate(
      [](auto draw) { return 1.2 * (1.0 + 0.03 * draw()) / (0.7 * (1.0 + 0.04 * draw())); });
  check(ratio(length, width), quotient);
  const auto area = estimate(2.0 * square_metre, Spread{0.03});
  check(area / width, simulate([](auto draw) {
          return 2.0 * (1.0 + 0.03 * draw()) / (0.7 * (1.0 + 0.04 * draw()));
        }));
  check(reciprocal(width), simulate([](auto draw) { return 1.0 / (0.7 * (1.0 + 0.04 * draw())); }));
}

TEST_CASE("a power law spreads as simulated") {
  const auto weight = estimate(27.0 * kilogram, Spread{0.04});
  const auto area = power_law(0.064 * square_metre, weight, kilogram, 2.0 / 3.0);
  CHECK(near(area.value, 0.576 * square_metre, 1e-12 * square_metre)); // 0.064 x 9
  check(area, simulate([](auto draw) {
          return 0.064 * std::pow(27.0 * (1.0 + 0.04 * draw()), 2.0 / 3.0);
        }));
}

TEST_CASE("two goats of one law share its error") {
  const auto goat = [](double value) {
    return Estimate<Area>{
        value * square_metre, 0.03 * value * square_metre, {{"law", 0.04 * value * square_metre}}};
  };
  check(goat(0.5) + goat(0.3), simulate([](auto draw) {
          const double law = draw();
          return 0.5 * (1.0 + 0.03 * draw() + 0.04 * law) +
                 0.3 * (1.0 + 0.03 * draw() + 0.04 * law);
        }));
  // By hand: own 0.03 sqrt(0.25 + 0.09) = 0.017493, shared 0.04 x 0.8 = 0.032, together 0.036470.
  CHECK(near((goat(0.5) + goat(0.3)).sd(), 0.036470 * square_metre, 1e-6 * square_metre));
  CHECK((goat(0.5) + goat(0.3)).shared.size() == 1);
}

TEST_CASE("a shared error cancels in a ratio and in a difference, and doubles in a product") {
  const auto a = shared_estimate(1.2 * metre, Spread{0.04}, "tape");
  const auto b = shared_estimate(0.7 * metre, Spread{0.04}, "tape");
  CHECK(near(ratio(a, b).sd(), 0.0, 1e-15));
  CHECK(near((a - b).sd(), 0.02 * metre, 1e-12 * metre)); // 0.04 x (1.2 - 0.7)
  CHECK(near((a * b).spread().value, 0.08, 1e-12));
  check(a * b, simulate([](auto draw) {
          const double tape = 1.0 + 0.04 * draw();
          return 1.2 * tape * 0.7 * tape;
        }));
  const auto c = shared_estimate(0.7 * metre, Spread{0.04}, "another tape");
  CHECK(near((a * c).spread().value, 0.04 * std::sqrt(2.0), 1e-12));
}

TEST_CASE("a shared error passes through reciprocal and power with its sign") {
  const auto a = shared_estimate(2.0 * metre, Spread{0.03}, "tape");
  const auto same = estimate(1.0 * square_metre, Spread{0.0}) * reciprocal(a);
  // a x (1 / a) is exactly one: what is shared must cancel to nothing.
  CHECK(near(whittaw_test::plain((a * reciprocal(a)).sd()), 0.0, 1e-15));
  CHECK(near(same.spread().value, 0.03, 1e-12));
  const auto power = power_law(1.0 * square_metre, a, metre, -2.0);
  REQUIRE(power.shared.size() == 1);
  CHECK(near(power.shared.front().sd, -0.015 * square_metre, 1e-12 * square_metre)); // -2 x .03 / 4
}

TEST_CASE("scaling by a negative figure leaves spreads positive") {
  const auto less = scale(length, -2.0 * metre);
  CHECK(near(less.value, -2.4 * square_metre, 1e-12 * square_metre));
  CHECK(near(less.own_sd, 0.072 * square_metre, 1e-12 * square_metre));
  CHECK(near((-2.0 * length).own_sd, 0.072 * metre, 1e-12 * metre));
  CHECK(near(less.spread().value, 0.03, 1e-12));
}

TEST_CASE("sums of nothing and of exact figures have no spread") {
  Estimate<Area> sum;
  CHECK(sum.sd() == 0.0 * square_metre);
  sum += Estimate<Area>{1.0 * square_metre};
  CHECK(sum.sd() == 0.0 * square_metre);
  CHECK(sum.value == 1.0 * square_metre);
}

TEST_CASE("normal quantiles are those of the printed table") {
  // source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, cumulative normal.
  CHECK(near(normal_quantile({0.90}), 1.2816, 5e-5));
  CHECK(near(normal_quantile({0.95}), 1.6449, 5e-5));
  CHECK(near(normal_quantile({0.99}), 2.3263, 5e-5));
  CHECK(near(normal_quantile({0.50}), 0.0, 1e-12));
  CHECK(near(normal_quantile({0.10}), -1.2816, 5e-5));
}

TEST_CASE("the size for a chance is enough in that share of simulated needs") {
  for (const double spread : {0.05, 0.15, 0.30}) {
    for (const double chance : {0.50, 0.75, 0.90, 0.99}) {
      CAPTURE(spread);
      CAPTURE(chance);
      const Volume enough = enough_for(estimate(10.0 * litre, Spread{spread}), Chance{chance});
      // Log-normal needs. source: NIST/SEMATECH e-Handbook, 1.3.6.6.9: mean m exp(s^2 / 2),
      // variance m^2 exp(s^2) (exp(s^2) - 1), for median m and shape s.
      const double shape = std::sqrt(std::log(1.0 + spread * spread));
      const double median = 10.0 / std::exp(shape * shape / 2.0);
      int times_enough = 0;
      const auto needs = simulate([&](auto draw) {
        const double need = median * std::exp(shape * draw());
        if (need <= count(enough, litre)) ++times_enough;
        return need;
      });
      REQUIRE(close(needs.mean, 10.0, 0.003)); // the draws are what they claim to be
      REQUIRE(close(needs.sd, 10.0 * spread, 0.01));
      // A share p of n draws is good to sqrt(p (1 - p) / n), at most 0.0008; four of those.
      const double error = std::sqrt(chance * (1.0 - chance) / draws);
      CHECK(near(static_cast<double>(times_enough) / draws, chance, 4.0 * error));
    }
  }
}

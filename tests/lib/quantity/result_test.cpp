// A value or a problem.
#include <whittaw/quantity/fraction.hpp>
#include <whittaw/quantity/result.hpp>
#include <whittaw/quantity/source.hpp>

#include "close.hpp"

#include <string>
#include <type_traits>

using namespace whittaw;

static_assert(!std::is_convertible_v<Offer, Basicity>);
static_assert(!std::is_convertible_v<Offer, double>);
static_assert(percent<OfferKind>(8.0).value == 0.08);
static_assert(Offer{0.08} < Offer{0.12});

TEST_CASE("a result holds its value or its problem") {
  const Result<int> good(7);
  REQUIRE(good.ok());
  CHECK(*good == 7);
  const Result<int> bad(Problem{"found", "remedy"});
  REQUIRE_FALSE(bad.ok());
  CHECK_FALSE(static_cast<bool>(bad));
  CHECK(bad.problem().found == "found");
  CHECK(bad.problem().remedy == "remedy");
}

TEST_CASE("every mark has a name of its own") {
  CHECK(mark_name(Mark::seen) == "seen");
  CHECK(mark_name(Mark::memory) == "from memory");
  CHECK(mark_name(Mark::practice) == "common practice");
  CHECK(mark_name(Mark::calculated) == "calculated");
  CHECK(mark_name(Mark::assumption) == "assumption");
  CHECK(mark_name(Mark::own) == "own weighing");
}

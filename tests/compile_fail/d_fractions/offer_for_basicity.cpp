// D1: an offer is given where a basicity is wanted.
// expect: could not convert 'offer' from 'Fraction<whittaw::OfferKind>'
// expect: to 'Fraction<whittaw::BasicityKind>'
// expect-clang: no known conversion from 'Fraction<struct OfferKind>'
// expect-clang: to 'Fraction<struct BasicityKind>'
#include <whittaw/liquor/acidity.hpp>

using namespace whittaw;

auto acidity(Offer offer, Basicity basicity) {
#ifdef BROKEN
  (void)basicity;
  return estimated_acidity(offer);
#else
  (void)offer;
  return estimated_acidity(basicity);
#endif
}

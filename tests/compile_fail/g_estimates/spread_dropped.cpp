// G3: an estimate is used as if it were exact.
// expect: could not convert 'area' from 'const whittaw::Estimate<
// expect-clang: returned value of type 'const Estimate<whittaw::Area>'
#include <whittaw/quantity/chance.hpp>

using namespace whittaw;

Area to_paste(const Estimate<Area> &area) {
#ifdef BROKEN
  return area;
#else
  return enough_for(area, Chance{0.90});
#endif
}

// How much to make so that it is enough with a stated chance.
#pragma once

#include <whittaw/quantity/estimate.hpp>

#include <boost/math/special_functions/erf.hpp>

#include <cmath>

namespace whittaw {

/// Standard normal quantile: the z below which a share `chance` of the distribution lies.
/// `chance` lies strictly between 0 and 1.
inline double normal_quantile(Chance chance) {
  return -std::sqrt(2.0) * boost::math::erfc_inv(2.0 * chance.value);
}

/// The size that `need` stays below with the stated chance. Areas and all that is proportional to
/// them are positive with errors in proportion to their size (laws of body size are fitted on
/// logarithms), so the need is taken as log-normal with the estimate's mean and deviation.
/// source: moments of the log-normal distribution, NIST/SEMATECH e-Handbook of Statistical
/// Methods, section 1.3.6.6.9.
template <class Q> Q enough_for(const Estimate<Q> &need, Chance chance) {
  const double relative = need.spread().value;
  const double variance = std::log1p(relative * relative);
  return need.value * std::exp(-0.5 * variance + normal_quantile(chance) * std::sqrt(variance));
}

} // namespace whittaw

// Money is a base dimension of its own. Each currency is a unit with no conversion to another, so
// that pounds sterling given where dollars are wanted do not compile.
#pragma once

#include <whittaw/quantity/units.hpp>

namespace whittaw {

struct money_base_dimension : boost::units::base_dimension<money_base_dimension, 1701> {};
using money_dimension = money_base_dimension::dimension_type;

struct tender_base_unit : boost::units::base_unit<tender_base_unit, money_dimension, 1701> {};
struct euro_base_unit : boost::units::base_unit<euro_base_unit, money_dimension, 1702> {};
struct us_dollar_base_unit : boost::units::base_unit<us_dollar_base_unit, money_dimension, 1703> {};
struct pound_sterling_base_unit
    : boost::units::base_unit<pound_sterling_base_unit, money_dimension, 1704> {};

template <class BaseUnit>
using MoneyIn = boost::units::quantity<
    boost::units::unit<money_dimension, typename boost::units::make_system<BaseUnit>::type>>;

/// Money in the currency that a day's prices are written in; which one is known when it is read.
using Money = MoneyIn<tender_base_unit>;
using Euros = MoneyIn<euro_base_unit>;
using UsDollars = MoneyIn<us_dollar_base_unit>;
using PoundsSterling = MoneyIn<pound_sterling_base_unit>;
using PricePerMass = decltype(Money() / Mass());

inline constexpr Money tender = Money::from_value(1.0);

inline Money cost_of(PricePerMass price, Mass mass) { return Money(price * mass); }

/// Money of a known currency as money of the day; say so where all prices share that currency.
template <class BaseUnit> constexpr Money as_tender(MoneyIn<BaseUnit> money) {
  return Money::from_value(money.value());
}

} // namespace whittaw

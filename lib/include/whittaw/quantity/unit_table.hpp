// The names of units that a person may write, each with its size.
#pragma once

#include <whittaw/quantity/units.hpp>

#include <array>
#include <string_view>

namespace whittaw {

enum class Kind { length, area, volume, mass, duration, areal_mass, temperature, fraction };

struct KindRow {
  Kind kind;
  std::string_view name;    ///< "a mass"
  std::string_view example; ///< what would do
};

inline constexpr std::array<KindRow, 8> kind_table{{
    {Kind::length, "a length", "110 cm, 43 in"},
    {Kind::area, "an area", "0.62 m2, 6.7 sq ft"},
    {Kind::volume, "a volume", "750 mL, 2 1/2 cup, 1 US gal"},
    {Kind::mass, "a mass", "850 g, 1 lb 4 oz, 2.5 kg"},
    {Kind::duration, "a time", "7 d, 36 h"},
    {Kind::areal_mass, "a mass by area", "2.6 kg/m2, 0.5 lb/sq ft"},
    {Kind::temperature, "a temperature", "12 C, 54 F"},
    {Kind::fraction, "a share", "17 %, 0.17"},
}};

constexpr const KindRow &kind_row(Kind kind) { return kind_table[static_cast<std::size_t>(kind)]; }

struct UnitRow {
  std::string_view name; ///< lower case, single spaces
  Kind kind;
  double size;          ///< in the SI unit of its kind
  std::string_view gnu; ///< the same unit's name in GNU units, for the test that compares them
};

/// Cup, spoon, pint, quart, gallon and fluid ounce without a qualifier are US customary; imperial
/// ones are written "imp gal" and so on. A hundredweight or a bushel is nowhere the same, and is
/// left out.
/// source: NIST Special Publication 811 (2008), appendix B.8 and B.9.
inline constexpr auto unit_table = std::to_array<UnitRow>({
    {"m", Kind::length, 1.0, "m"},
    {"metre", Kind::length, 1.0, "m"},
    {"meter", Kind::length, 1.0, "m"},
    {"dm", Kind::length, 0.1, "dm"},
    {"cm", Kind::length, 0.01, "cm"},
    {"mm", Kind::length, 0.001, "mm"},
    {"in", Kind::length, count(inch, metre), "inch"},
    {"inch", Kind::length, count(inch, metre), "inch"},
    {"inches", Kind::length, count(inch, metre), "inch"},
    {"ft", Kind::length, count(foot, metre), "ft"},
    {"foot", Kind::length, count(foot, metre), "ft"},
    {"feet", Kind::length, count(foot, metre), "ft"},
    {"yd", Kind::length, 0.9144, "yd"},

    {"m2", Kind::area, 1.0, "m^2"},
    {"m\u00b2", Kind::area, 1.0, "m^2"},
    {"sq m", Kind::area, 1.0, "m^2"},
    {"dm2", Kind::area, 0.01, "dm^2"},
    {"dm\u00b2", Kind::area, 0.01, "dm^2"},
    {"cm2", Kind::area, 1e-4, "cm^2"},
    {"cm\u00b2", Kind::area, 1e-4, "cm^2"},
    {"sq ft", Kind::area, count(square_foot, square_metre), "ft^2"},
    {"ft2", Kind::area, count(square_foot, square_metre), "ft^2"},
    {"sq in", Kind::area, count(square_foot, square_metre) / 144.0, "in^2"},
    {"in2", Kind::area, count(square_foot, square_metre) / 144.0, "in^2"},

    {"l", Kind::volume, 1e-3, "L"},
    {"litre", Kind::volume, 1e-3, "L"},
    {"litres", Kind::volume, 1e-3, "L"},
    {"liter", Kind::volume, 1e-3, "L"},
    {"liters", Kind::volume, 1e-3, "L"},
    {"dl", Kind::volume, 1e-4, "dL"},
    {"cl", Kind::volume, 1e-5, "cL"},
    {"ml", Kind::volume, 1e-6, "mL"},
    {"cup", Kind::volume, count(us_cup, cubic_metre), "uscup"},
    {"cups", Kind::volume, count(us_cup, cubic_metre), "uscup"},
    {"us cup", Kind::volume, count(us_cup, cubic_metre), "uscup"},
    {"tbsp", Kind::volume, count(us_tablespoon, cubic_metre), "ustablespoon"},
    {"tablespoon", Kind::volume, count(us_tablespoon, cubic_metre), "ustablespoon"},
    {"tablespoons", Kind::volume, count(us_tablespoon, cubic_metre), "ustablespoon"},
    {"tsp", Kind::volume, count(us_teaspoon, cubic_metre), "usteaspoon"},
    {"teaspoon", Kind::volume, count(us_teaspoon, cubic_metre), "usteaspoon"},
    {"teaspoons", Kind::volume, count(us_teaspoon, cubic_metre), "usteaspoon"},
    {"fl oz", Kind::volume, count(us_fluid_ounce, cubic_metre), "usfloz"},
    {"us fl oz", Kind::volume, count(us_fluid_ounce, cubic_metre), "usfloz"},
    {"pt", Kind::volume, count(us_gallon, cubic_metre) / 8.0, "uspint"},
    {"pint", Kind::volume, count(us_gallon, cubic_metre) / 8.0, "uspint"},
    {"pints", Kind::volume, count(us_gallon, cubic_metre) / 8.0, "uspint"},
    {"us pt", Kind::volume, count(us_gallon, cubic_metre) / 8.0, "uspint"},
    {"qt", Kind::volume, count(us_gallon, cubic_metre) / 4.0, "usquart"},
    {"quart", Kind::volume, count(us_gallon, cubic_metre) / 4.0, "usquart"},
    {"quarts", Kind::volume, count(us_gallon, cubic_metre) / 4.0, "usquart"},
    {"us qt", Kind::volume, count(us_gallon, cubic_metre) / 4.0, "usquart"},
    {"gal", Kind::volume, count(us_gallon, cubic_metre), "usgallon"},
    {"gallon", Kind::volume, count(us_gallon, cubic_metre), "usgallon"},
    {"gallons", Kind::volume, count(us_gallon, cubic_metre), "usgallon"},
    {"us gal", Kind::volume, count(us_gallon, cubic_metre), "usgallon"},
    {"imp gal", Kind::volume, count(imperial_gallon, cubic_metre), "brgallon"},
    {"imp qt", Kind::volume, count(imperial_gallon, cubic_metre) / 4.0, "brquart"},
    {"imp pt", Kind::volume, count(imperial_pint, cubic_metre), "brpint"},
    {"imp pint", Kind::volume, count(imperial_pint, cubic_metre), "brpint"},
    {"imp pints", Kind::volume, count(imperial_pint, cubic_metre), "brpint"},
    {"imp fl oz", Kind::volume, count(imperial_fluid_ounce, cubic_metre), "brfloz"},

    {"kg", Kind::mass, 1.0, "kg"},
    {"kilogram", Kind::mass, 1.0, "kg"},
    {"kilograms", Kind::mass, 1.0, "kg"},
    {"g", Kind::mass, 1e-3, "g"},
    {"gram", Kind::mass, 1e-3, "g"},
    {"grams", Kind::mass, 1e-3, "g"},
    {"mg", Kind::mass, 1e-6, "mg"},
    {"lb", Kind::mass, count(pound, kilogram), "lb"},
    {"lbs", Kind::mass, count(pound, kilogram), "lb"},
    {"pound", Kind::mass, count(pound, kilogram), "lb"},
    {"pounds", Kind::mass, count(pound, kilogram), "lb"},
    {"oz", Kind::mass, count(ounce, kilogram), "oz"},
    {"ounce", Kind::mass, count(ounce, kilogram), "oz"},
    {"ounces", Kind::mass, count(ounce, kilogram), "oz"},
    {"st", Kind::mass, count(pound, kilogram) * 14.0, "stone"},
    {"stone", Kind::mass, count(pound, kilogram) * 14.0, "stone"},

    {"min", Kind::duration, 60.0, "minute"},
    {"h", Kind::duration, 3600.0, "hour"},
    {"hour", Kind::duration, 3600.0, "hour"},
    {"hours", Kind::duration, 3600.0, "hour"},
    {"d", Kind::duration, 86400.0, "day"},
    {"day", Kind::duration, 86400.0, "day"},
    {"days", Kind::duration, 86400.0, "day"},
    {"week", Kind::duration, 604800.0, "week"},
    {"weeks", Kind::duration, 604800.0, "week"},

    {"kg/m2", Kind::areal_mass, 1.0, "kg/m^2"},
    {"kg/m\u00b2", Kind::areal_mass, 1.0, "kg/m^2"},
    {"g/m2", Kind::areal_mass, 1e-3, "g/m^2"},
    {"lb/sq ft", Kind::areal_mass, count(pound, kilogram) / count(square_foot, square_metre),
     "lb/ft^2"},
    {"lb/ft2", Kind::areal_mass, count(pound, kilogram) / count(square_foot, square_metre),
     "lb/ft^2"},
    {"oz/sq ft", Kind::areal_mass, count(ounce, kilogram) / count(square_foot, square_metre),
     "oz/ft^2"},

    // Temperatures are points on a scale; the reader knows the zeros.
    {"c", Kind::temperature, 1.0, "tempC"},
    {"\u00b0c", Kind::temperature, 1.0, "tempC"},
    {"f", Kind::temperature, 5.0 / 9.0, "tempF"},
    {"\u00b0f", Kind::temperature, 5.0 / 9.0, "tempF"},
    {"k", Kind::temperature, 1.0, "tempK"},

    {"%", Kind::fraction, 0.01, "0.01"},
});

} // namespace whittaw

#include <algorithm>

#include "typed_text.h"
#include "unit_facts.h"

namespace shimwright::quantity {

namespace {

// The international inch is 25.4 mm and the mile 1609.344 m, both exactly. The pound-force foot is 0.45359237 kg times
// 9.80665 m/s² times 0.3048 m = 1.3558179483314004 N·m, exactly (international yard and pound agreement, 1959).
constexpr std::array all_units = {
    UnitFacts{Unit::millimetre, Dimension::length, "mm", 1000, 1, 3, {"mm"}},
    UnitFacts{Unit::inch, Dimension::length, "in", 25400, 1, 4, {"in"}},
    UnitFacts{Unit::thou, Dimension::length, "thou", 254, 10, 1, {"thou"}},
    UnitFacts{Unit::newton_metre, Dimension::torque, "N·m", 1000, 1, 3, {"nm", "n·m", "n⋅m", "n m"}},
    UnitFacts{Unit::pound_foot,
              Dimension::torque,
              "lbf·ft",
              3389544870828501,
              2500000000000,
              3,
              {"lbfft", "lbf·ft", "lbf⋅ft", "lbf ft"}},
    UnitFacts{Unit::gram, Dimension::mass, "g", 1000, 1, 3, {"g"}},
    UnitFacts{Unit::kilogram, Dimension::mass, "kg", 1000000, 1, 6, {"kg"}},
    UnitFacts{Unit::degree, Dimension::angle, "°", 1000, 1, 3, {"°", "deg"}},
    UnitFacts{Unit::degree_celsius, Dimension::temperature, "°C", 1000, 1, 3, {"°c", "c", "℃"}},
    UnitFacts{Unit::volt, Dimension::voltage, "V", 1000, 1, 3, {"v"}},
    UnitFacts{Unit::millivolt, Dimension::voltage, "mV", 1, 1, 0, {"mv"}, true},
    UnitFacts{Unit::litre, Dimension::volume, "l", 1000000, 1, 6, {"l"}},
    UnitFacts{Unit::millilitre, Dimension::volume, "ml", 1000, 1, 3, {"ml"}, true},
    UnitFacts{Unit::bar, Dimension::pressure, "bar", 100000, 1, 5, {"bar"}},
    UnitFacts{Unit::kilopascal, Dimension::pressure, "kPa", 1000, 1, 3, {"kpa"}},
    UnitFacts{Unit::piece, Dimension::count, "", 1, 1, 0, {"pcs"}},
    UnitFacts{Unit::percent, Dimension::percent, "%", 1000, 1, 3, {"%"}},
    UnitFacts{Unit::kilometre, Dimension::distance, "km", 1000, 1, 3, {"km"}},
    UnitFacts{Unit::mile, Dimension::distance, "mi", 1609344, 1000, 3, {"mi"}},
};

// Far beyond anything a workshop meets: they catch a slipped mark or a key held down, not an unlikely value.
constexpr std::array all_dimensions = {
    DimensionFacts{Dimension::length, "length", Unit::millimetre, 10'000'000, -9'999'999},
    DimensionFacts{Dimension::torque, "torque", Unit::newton_metre, 10'000'000, -9'999'999},
    DimensionFacts{Dimension::mass, "mass", Unit::gram, 10'000'000'000, -9'999'999'999},
    DimensionFacts{Dimension::angle, "angle", Unit::degree, 10'000'000, -9'999'999},
    DimensionFacts{Dimension::temperature, "temperature", Unit::degree_celsius, 10'000'000, -273'150},
    DimensionFacts{Dimension::voltage, "voltage", Unit::volt, 10'000'000, -9'999'999},
    DimensionFacts{Dimension::volume, "volume", Unit::litre, 10'000'000'000, -9'999'999'999},
    DimensionFacts{Dimension::pressure, "pressure", Unit::bar, 1'000'000'000, -999'999'999},
    DimensionFacts{Dimension::count, "count", Unit::piece, 1'000'000'000, 0},
    DimensionFacts{Dimension::percent, "percent", Unit::percent, 10'000'000, -9'999'999},
    DimensionFacts{Dimension::distance, "distance", Unit::kilometre, 10'000'000'000, 0},
};

constexpr bool in_order_of_their_enumeration() {
  for (std::size_t index = 0; index < all_units.size(); ++index) {
    if (static_cast<std::size_t>(all_units[index].unit) != index) {
      return false;
    }
  }
  for (std::size_t index = 0; index < all_dimensions.size(); ++index) {
    if (static_cast<std::size_t>(all_dimensions[index].dimension) != index) {
      return false;
    }
  }
  return true;
}
static_assert(in_order_of_their_enumeration());

constexpr bool last_decimal_is_never_below_the_base_unit() {
  return std::all_of(all_units.begin(), all_units.end(), [](const UnitFacts& each) {
    return each.numerator >= each.denominator * power_of_ten(each.most_decimals);
  });
}
static_assert(last_decimal_is_never_below_the_base_unit());

constexpr bool the_finest_decimal_names_every_base_unit() {
  return std::all_of(all_units.begin(), all_units.end(), [](const UnitFacts& each) {
    return is_rounded(each) ? each.numerator < each.denominator * power_of_ten(each.most_decimals + 1)
                            : each.numerator == each.denominator * power_of_ten(each.most_decimals);
  });
}
static_assert(the_finest_decimal_names_every_base_unit());

}  // namespace

const UnitFacts& facts_of(Unit unit) {
  return all_units[static_cast<std::size_t>(unit)];
}

const DimensionFacts& facts_of(Dimension dimension) {
  return all_dimensions[static_cast<std::size_t>(dimension)];
}

const UnitFacts* unit_spelled(std::string_view spelling) {
  const std::string folded = in_lower_case(spelling);
  const auto* const found = std::find_if(all_units.begin(), all_units.end(), [&](const UnitFacts& each) {
    const bool means_mega = each.milli && !spelling.empty() && spelling.front() == 'M';
    return !folded.empty() && !means_mega &&
           std::find(each.spellings.begin(), each.spellings.end(), folded) != each.spellings.end();
  });
  return found == all_units.end() ? nullptr : found;
}

std::string symbols_of(Dimension dimension) {
  std::string list;
  for (const UnitFacts& each : all_units) {
    if (each.dimension == dimension) {
      list += list.empty() ? "" : ", ";
      list += each.symbol.empty() ? each.spellings.front() : each.symbol;
    }
  }
  return list;
}

std::string_view name_of(Dimension dimension) {
  return facts_of(dimension).name;
}

std::optional<Dimension> dimension_named(std::string_view name) {
  const auto* const found = std::find_if(all_dimensions.begin(), all_dimensions.end(),
                                         [name](const DimensionFacts& each) { return each.name == name; });
  return found == all_dimensions.end() ? std::nullopt : std::optional(found->dimension);
}

std::string_view symbol_of(Unit unit) {
  return facts_of(unit).symbol;
}

std::optional<Unit> unit_with_symbol(std::string_view symbol) {
  const auto* const found = std::find_if(all_units.begin(), all_units.end(),
                                         [symbol](const UnitFacts& each) { return each.symbol == symbol; });
  return found == all_units.end() ? std::nullopt : std::optional(found->unit);
}

Dimension dimension_of(Unit unit) {
  return facts_of(unit).dimension;
}

Unit default_unit(Dimension dimension) {
  return facts_of(dimension).default_unit;
}

int most_decimals(Unit unit) {
  return facts_of(unit).most_decimals;
}

int finest_decimals(Unit unit) {
  return most_decimals(unit) + (is_rounded(facts_of(unit)) ? 1 : 0);
}

std::int64_t most_base(Dimension dimension) {
  return facts_of(dimension).most_base;
}

std::int64_t least_base(Dimension dimension) {
  return facts_of(dimension).least_base;
}

}  // namespace shimwright::quantity

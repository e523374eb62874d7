#include "shimwright/quantity/units_shown.h"

namespace shimwright::quantity {

namespace {

int fewest_decimals(Unit unit) {
  switch (unit) {
    case Unit::millimetre:
      return 2;
    case Unit::inch:
      return 4;
    default:
      return 0;
  }
}

}  // namespace

Unit unit_shown(Unit unit, const UnitsShown& shown) {
  switch (dimension_of(unit)) {
    case Dimension::length:
      return shown.length;
    case Dimension::torque:
      return shown.torque;
    default:
      return unit;
  }
}

TypedNumber number_in(const TypedNumber& number, Unit unit) {
  if (number.unit == unit || dimension_of(unit) != dimension_of(number.unit)) {
    return number;
  }
  TypedNumber shown{number.base, fewest_decimals(unit), unit};
  const auto gives_it_back = [&shown] {
    const auto read = read_number(digits_of(shown), shown.unit);
    return read && read->base == shown.base;
  };
  while (shown.decimals < finest_decimals(unit) && !gives_it_back()) {
    ++shown.decimals;
  }
  return shown;
}

int decimals_shown(int decimals, Unit unit) {
  return unit == Unit::inch ? decimals + 2 : decimals;
}

}  // namespace shimwright::quantity

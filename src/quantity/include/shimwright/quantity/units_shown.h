#pragma once

#include "shimwright/quantity/typed_number.h"

namespace shimwright::quantity {

/// The units a person reads and types lengths and torques in. What is stored does not change by it.
struct UnitsShown {
  Unit length = Unit::millimetre;    ///< or inch
  Unit torque = Unit::newton_metre;  ///< or pound_foot
  friend bool operator==(const UnitsShown&, const UnitsShown&) = default;
};

/// The unit a number in `unit` is shown in: lengths and torques in those chosen, all others as they are.
[[nodiscard]] Unit unit_shown(Unit unit, const UnitsShown& shown);

/// The same stored value in another unit of its dimension, with the fewest decimals that give it back exactly when
/// they are typed; two at least for mm and four for inch. In its own unit it keeps the digits typed.
[[nodiscard]] TypedNumber number_in(const TypedNumber& number, Unit unit);

/// Decimals of `unit` about as fine as so many of mm or N·m: for values that were reckoned, as a mean.
[[nodiscard]] int decimals_shown(int decimals, Unit unit);

}  // namespace shimwright::quantity

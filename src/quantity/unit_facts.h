#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::quantity {

/// Wide enough for any 64-bit number times any factor below.
__extension__ using Wide = __int128;

[[nodiscard]] constexpr Wide power_of_ten(int exponent) {
  return exponent <= 0 ? 1 : 10 * power_of_ten(exponent - 1);
}

struct UnitFacts {
  Unit unit;
  Dimension dimension;
  std::string_view symbol;
  /// One of this unit is numerator/denominator base units, exactly.
  std::int64_t numerator;
  std::int64_t denominator;
  /// The last of these decimals is never smaller than the base unit, so that no two numbers are stored as one.
  int most_decimals;
  /// How it may be typed, in lower case, an empty place unused.
  std::array<std::string_view, 4> spellings;
  /// The first letter must be a small m, since a large one means mega.
  bool milli = false;
};

struct DimensionFacts {
  Dimension dimension;
  std::string_view name;
  Unit default_unit;
  std::int64_t most_base;   ///< refused from here on
  std::int64_t least_base;  ///< refused below
};

/// Whether the last decimal that may be typed is no whole number of base units, as in inch: what is kept is rounded
/// then.
[[nodiscard]] constexpr bool is_rounded(const UnitFacts& facts) {
  return facts.numerator % (Wide{facts.denominator} * power_of_ten(facts.most_decimals)) != 0;
}

[[nodiscard]] const UnitFacts& facts_of(Unit unit);
[[nodiscard]] const DimensionFacts& facts_of(Dimension dimension);
/// The unit typed as `spelling`: white space folded to single spaces, letters as typed. Null where no unit is meant.
[[nodiscard]] const UnitFacts* unit_spelled(std::string_view spelling);
/// The symbols of all units of a dimension for a sentence: `mm, in, thou`.
[[nodiscard]] std::string symbols_of(Dimension dimension);

}  // namespace shimwright::quantity

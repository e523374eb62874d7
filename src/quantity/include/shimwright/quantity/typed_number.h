#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "shimwright/quantity/error.h"
#include "shimwright/quantity/quantity.h"

namespace shimwright::quantity {

enum class Dimension {
  length,
  torque,
  mass,
  angle,
  temperature,
  voltage,
  volume,
  pressure,
  count,
  percent,
  distance,
};

/// `length`, `torque`, … as in files.
[[nodiscard]] std::string_view name_of(Dimension dimension);
[[nodiscard]] std::optional<Dimension> dimension_named(std::string_view name);

enum class Unit {
  millimetre,
  inch,
  thou,
  newton_metre,
  pound_foot,
  gram,
  kilogram,
  degree,
  degree_celsius,
  volt,
  millivolt,
  litre,
  millilitre,
  bar,
  kilopascal,
  piece,
  percent,
  kilometre,
  mile,
};

/// As printed and stored: `mm`, `in`, `thou`, `N·m`, `lbf·ft`, `g`, `kg`, `°`, `°C`, `V`, `mV`, `l`, `ml`, `bar`,
/// `kPa`, empty for pieces, `%`, `km`, `mi`.
[[nodiscard]] std::string_view symbol_of(Unit unit);
[[nodiscard]] std::optional<Unit> unit_with_symbol(std::string_view symbol);
[[nodiscard]] Dimension dimension_of(Unit unit);
/// The unit a number without one is taken in: mm, N·m, g, °, °C, V, l, bar, pieces, %, km.
[[nodiscard]] Unit default_unit(Dimension dimension);
/// How many decimals may be typed: finer would be lost in the base unit.
[[nodiscard]] int most_decimals(Unit unit);
/// How many decimals it takes to name every stored value in this unit: one more where the unit is rounded (inch, thou,
/// lbf·ft, mi). Such a number may be typed where it is the very one that is shown for a stored value.
[[nodiscard]] int finest_decimals(Unit unit);

/// A number as a person typed it and as it is stored. `base` is in the base unit of the dimension (see quantity.h) and
/// together with `decimals` and `unit` gives back the digits typed, exactly.
struct TypedNumber {
  std::int64_t base = 0;
  int decimals = 0;
  Unit unit = Unit::millimetre;

  friend bool operator==(const TypedNumber&, const TypedNumber&) = default;
};

/// The one reader of typed numbers. A number without a unit is in `assumed`; a typed unit must be of the same
/// dimension. Comma and point are the decimal mark in every locale; nothing is clamped, guessed or rounded but
/// inch-like units to the base unit (half away from zero). Codes of refusal: empty, incomplete, not_a_number,
/// two_marks, space_inside, unknown_unit, too_fine, out_of_range (a length from 10 m on; see most_base() for the
/// others).
[[nodiscard]] Result<TypedNumber> read_number(std::string_view typed, Unit assumed);

/// The size from which on a number of this dimension is refused, in base units.
[[nodiscard]] std::int64_t most_base(Dimension dimension);
/// What a number of this dimension may not lie below: 0 for a count and a distance, absolute zero for a temperature.
[[nodiscard]] std::int64_t least_base(Dimension dimension);

/// The digits typed, with a point and an ASCII `-`, without a plus and leading zeros: `0.93`, `-0.10`, `13.5`.
[[nodiscard]] std::string digits_of(const TypedNumber& number);
/// The digits and the unit: `0.93 mm`, `13.5 N·m`, `90°`, `2`.
[[nodiscard]] std::string text_of(const TypedNumber& number);
/// A number for people's eyes: a true minus (U+2212) where it begins with an ASCII one.
[[nodiscard]] std::string with_true_minus(std::string number);
/// Digits and unit for people's eyes: `−5 °C`.
[[nodiscard]] std::string printed_text_of(const TypedNumber& number);
/// For a number that has a sign, as a stamp: `+0.12 mm`, `−0.12 mm`, `0.00 mm`.
[[nodiscard]] std::string signed_text_of(const TypedNumber& number);
/// A length in mm with exactly `decimals` decimals (more than 3 are zeros; fewer round half away from zero).
[[nodiscard]] std::string millimetre_text(Length length, int decimals);
/// A base value in `unit` and its symbol, with as many decimals as needed (at most those that may be typed), two at
/// least for mm: for limits and constants in a sentence, `0.20 mm`, `13.5 N·m`.
[[nodiscard]] std::string shortest_text(std::int64_t base, Unit unit);

}  // namespace shimwright::quantity

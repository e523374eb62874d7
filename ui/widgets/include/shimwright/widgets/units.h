#pragma once

#include <cstdint>

#include <QString>

#include "shimwright/quantity/error.h"
#include "shimwright/quantity/units_shown.h"

/// The units lengths and torques are shown and typed in. They belong to the application, as its language does; what is
/// stored and what is printed on a record stays as it was typed.
namespace shimwright::widgets {

[[nodiscard]] quantity::UnitsShown units_shown();
/// Seen by whatever is made or drawn from now on.
void show_in(const quantity::UnitsShown& units);
/// The unit shown in place of this one.
[[nodiscard]] quantity::Unit unit_shown(quantity::Unit unit);

/// A number for the eye, digits and unit: `0.93 mm`, `0.0366 in`, `−5 °C`. A number typed in the unit shown keeps its
/// digits.
[[nodiscard]] QString number_shown(const quantity::TypedNumber& number);
/// The same in its own unit.
[[nodiscard]] QString number_with_unit(const quantity::TypedNumber& number);
/// `mm`, `N·m`, `L`: a unit for the eye.
[[nodiscard]] QString symbol_shown(quantity::Unit unit);
/// The digits alone.
[[nodiscard]] QString digits_shown(const quantity::TypedNumber& number);
/// A stored value that has no digits of its own: `0.001 mm`.
[[nodiscard]] QString amount_shown(std::int64_t base, quantity::Unit unit);
/// A reckoned length with so many decimals of mm, or as fine in the unit shown; without its unit.
[[nodiscard]] QString length_shown(double millimetres, int decimals);
/// What stands behind a ±, rounded up: less than is known is never said.
[[nodiscard]] QString uncertainty_shown(double millimetres, int decimals);
/// `mm` or `in`.
[[nodiscard]] QString length_symbol();
/// A sentence of the window still to be filled in, its `mm` in the unit shown.
[[nodiscard]] QString with_length_unit(const QString& sentence);
/// With no-break spaces around ± and between a number and its unit.
[[nodiscard]] QString kept_together(const QString& text);
/// 1 or 25.4.
[[nodiscard]] double millimetres_of_unit_shown();

/// The same sentence with lengths in mm and torques in N·m in the units shown: `{0} to {1} mm` and arguments like
/// `13.5 N·m`. `pattern` is the text in the language it is to be said in.
[[nodiscard]] Message in_units_shown(const std::string& pattern, const std::vector<std::string>& arguments);

}  // namespace shimwright::widgets

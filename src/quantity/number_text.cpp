#include <algorithm>

#include "shimwright/quantity/typed_number.h"
#include "unit_facts.h"

namespace shimwright::quantity {

namespace {

/// Half away from zero.
Wide divided(Wide value, Wide divisor) {
  const Wide size = (2 * (value < 0 ? -value : value) + divisor) / (2 * divisor);
  return value < 0 ? -size : size;
}

/// `value` divided by ten to the `decimals`, all of these shown. A zero has no sign.
std::string decimal_text(Wide value, int decimals) {
  Wide left = value < 0 ? -value : value;
  std::string reversed;
  const auto fewest = static_cast<std::size_t>(decimals) + (decimals > 0 ? 2U : 1U);
  while (reversed.size() < fewest || left > 0) {
    if (decimals > 0 && reversed.size() == static_cast<std::size_t>(decimals)) {
      reversed += '.';
    }
    reversed += static_cast<char>('0' + static_cast<int>(left % 10));
    left /= 10;
  }
  return (value < 0 ? "-" : "") + std::string(reversed.rbegin(), reversed.rend());
}

std::string text_in(std::int64_t base, Unit unit, int decimals) {
  const UnitFacts& facts = facts_of(unit);
  return decimal_text(divided(Wide{base} * facts.denominator * power_of_ten(decimals), facts.numerator), decimals);
}

std::string with_symbol(std::string digits, Unit unit) {
  if (unit != Unit::piece) {
    // An angle's sign stands at the figure, all other symbols apart from it (SI brochure, 5.4.3).
    digits += unit == Unit::degree ? "" : " ";
    digits += symbol_of(unit);
  }
  return digits;
}

}  // namespace

std::string digits_of(const TypedNumber& number) {
  return text_in(number.base, number.unit, std::clamp(number.decimals, 0, finest_decimals(number.unit)));
}

std::string text_of(const TypedNumber& number) {
  return with_symbol(digits_of(number), number.unit);
}

std::string with_true_minus(std::string number) {
  if (!number.empty() && number.front() == '-') {
    number.replace(0, 1, "\u2212");
  }
  return number;
}

std::string printed_text_of(const TypedNumber& number) {
  return with_true_minus(text_of(number));
}

std::string signed_text_of(const TypedNumber& number) {
  return (number.base > 0 ? "+" : "") + printed_text_of(number);
}

std::string millimetre_text(Length length, int decimals) {
  const int kept = std::clamp(decimals, 0, most_decimals(Unit::millimetre));
  std::string digits = text_in(length.count(), Unit::millimetre, kept);
  digits.append(static_cast<std::size_t>(std::max(decimals - kept, 0)), '0');
  return digits;
}

std::string shortest_text(std::int64_t base, Unit unit) {
  const int fewest = unit == Unit::millimetre ? 2 : 0;
  int decimals = most_decimals(unit);
  std::string digits = text_in(base, unit, decimals);
  while (decimals > fewest && digits.back() == '0') {
    digits.pop_back();
    --decimals;
  }
  if (digits.back() == '.') {
    digits.pop_back();
  }
  return with_symbol(std::move(digits), unit);
}

}  // namespace shimwright::quantity

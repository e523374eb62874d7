#include <rapidcheck.h>
#include <algorithm>

#include <catch2/catch.hpp>

#include "every_unit.h"
#include "shimwright/quantity/typed_number.h"

namespace quantity = shimwright::quantity;
using quantity::read_number;
using quantity::Unit;

namespace {

/// A number as it may be typed in that unit: digits, and where decimals are allowed often a mark and some.
std::string any_digits(Unit unit) {
  const int decimals = *rc::gen::inRange(0, quantity::most_decimals(unit) + 1);
  // Some inside every range, some outside the narrower ones.
  std::string digits = std::to_string(*rc::gen::oneOf(rc::gen::inRange(0, 390), rc::gen::inRange(0, 20000)));
  if (decimals > 0) {
    digits += '.';
    for (int place = 0; place < decimals; ++place) {
      digits += *rc::gen::inRange<char>('0', '9' + 1);
    }
  }
  return digits;
}

bool is_zero(const std::string& digits) {
  return digits.find_first_of("123456789") == std::string::npos;
}

bool read_alike(const std::string& one, const std::string& two, Unit unit) {
  return read_number(one, unit) == read_number(two, unit);
}

}  // namespace

TEST_CASE("the digits typed come back exactly in every unit") {
  for (const Unit unit : quantity::test::every_unit) {
    CAPTURE(quantity::symbol_of(unit));
    CHECK(rc::check([unit] {
      const std::string digits = any_digits(unit);
      const bool negative = *rc::gen::arbitrary<bool>() && !is_zero(digits);
      const std::string typed = (negative ? "-" : "") + digits;
      const auto number = read_number(typed, unit);
      if (number) {
        RC_ASSERT(quantity::digits_of(*number) == typed);
      } else {
        RC_ASSERT(number.error().code == "out_of_range");
      }
    }));
  }
}

TEST_CASE("comma or point, sign, zeros in front and the unit typed make no difference") {
  CHECK(rc::check([] {
    const Unit unit = *rc::gen::elementOf(quantity::test::every_unit);
    const std::string digits = any_digits(unit);
    std::string typed = "+00" + digits + (unit == Unit::piece ? " pcs" : " " + std::string(quantity::symbol_of(unit)));
    std::replace(typed.begin(), typed.end(), '.', ',');
    RC_ASSERT(read_alike(typed, digits, unit));
  }));
}

TEST_CASE("any number read is read again from its own text") {
  CHECK(rc::check([] {
    const Unit unit = *rc::gen::elementOf(quantity::test::every_unit);
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "0", "1", "5", "9", ",", ".", "-", "+", " ", "mm", "in", "thou", "°", "N·m", "e"));
    std::string typed;
    for (const auto& piece : pieces) {
      typed += piece;
    }
    const auto number = read_number(typed, unit);
    if (number) {
      RC_ASSERT(read_alike(quantity::text_of(*number), typed, unit));
    } else {
      RC_ASSERT_FALSE(number.error().code.empty());
      RC_ASSERT_FALSE(number.error().in_english().empty());
    }
  }));
}

TEST_CASE("a larger number typed is never stored smaller") {
  for (const Unit unit : quantity::test::every_unit) {
    CHECK(rc::check([unit] {
      const auto one = read_number(any_digits(unit), unit);
      const auto two = read_number(any_digits(unit), unit);
      if (!one || !two) {
        return;
      }
      const auto as_double = [](const auto& number) { return std::stod(quantity::digits_of(number)); };
      RC_ASSERT((as_double(*one) < as_double(*two)) == (one->base < two->base));
    }));
  }
}

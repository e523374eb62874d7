#include "shimwright/quantity/units_shown.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "every_unit.h"

namespace quantity = shimwright::quantity;
using quantity::number_in;
using quantity::read_number;
using quantity::TypedNumber;
using quantity::Unit;

namespace {

constexpr quantity::UnitsShown imperial{Unit::inch, Unit::pound_foot};

/// Any value that can be stored, small ones often.
std::int64_t any_base(quantity::Dimension dimension) {
  const std::int64_t most = quantity::most_base(dimension) - 1;
  const std::int64_t least = quantity::least_base(dimension);
  const auto near = *rc::gen::inRange<std::int64_t>(std::max<std::int64_t>(least, -5000), 5000);
  return *rc::gen::element(near, *rc::gen::inRange<std::int64_t>(least, most + 1));
}

std::string shown(const std::string& typed, Unit unit, Unit in) {
  return quantity::text_of(number_in(*read_number(typed, unit), in));
}

}  // namespace

TEST_CASE("whatever is stored is shown in every unit of its dimension so that typing it gives the same back") {
  for (const Unit unit : quantity::test::every_unit) {
    CAPTURE(quantity::symbol_of(unit));
    const quantity::Dimension dimension = quantity::dimension_of(unit);
    CHECK(rc::check([unit, dimension] {
      const TypedNumber stored{any_base(dimension), 0, quantity::default_unit(dimension)};
      const TypedNumber exact{stored.base, quantity::finest_decimals(stored.unit), stored.unit};
      const TypedNumber other = unit == stored.unit ? exact : number_in(exact, unit);
      RC_ASSERT(other.base == stored.base);
      const auto again = read_number(quantity::text_of(other), stored.unit);
      RC_ASSERT(again.has_value());
      RC_ASSERT(*again == other);
    }));
  }
}

TEST_CASE("inch and lbf·ft typed, kept, shown in mm and N·m and typed again are the same micrometres and mN·m") {
  for (const Unit typed_in : {Unit::inch, Unit::thou, Unit::pound_foot}) {
    CAPTURE(quantity::symbol_of(typed_in));
    CHECK(rc::check([typed_in] {
      const int decimals = *rc::gen::inRange(0, quantity::most_decimals(typed_in) + 1);
      std::string digits = std::to_string(*rc::gen::inRange(0, 300));
      digits += decimals > 0 ? "." : "";
      for (int place = 0; place < decimals; ++place) {
        digits += *rc::gen::inRange<char>('0', '9' + 1);
      }
      const auto first = read_number(digits, typed_in);
      RC_ASSERT(first.has_value());
      RC_ASSERT(quantity::digits_of(*first) == digits);
      const TypedNumber metric = number_in(*first, quantity::default_unit(quantity::dimension_of(typed_in)));
      const auto second = read_number(quantity::text_of(metric), typed_in);
      RC_ASSERT(second.has_value());
      RC_ASSERT(second->base == first->base);
      const auto third = read_number(quantity::digits_of(number_in(*second, typed_in)), typed_in);
      RC_ASSERT(third.has_value());
      RC_ASSERT(third->base == first->base);
    }));
  }
}

TEST_CASE("a number keeps its own digits in its own unit") {
  CHECK(shown("0.930", Unit::millimetre, Unit::millimetre) == "0.930 mm");
  CHECK(shown("0.0366", Unit::inch, Unit::inch) == "0.0366 in");
}

TEST_CASE("as few decimals are shown as give the value back") {
  CHECK(shown("0.93", Unit::millimetre, Unit::inch) == "0.0366 in");
  CHECK(shown("0.91", Unit::millimetre, Unit::inch) == "0.03583 in");
  CHECK(shown("25.4", Unit::millimetre, Unit::inch) == "1.0000 in");
  CHECK(shown("13.5", Unit::newton_metre, Unit::pound_foot) == "9.957 lbf·ft");
  CHECK(shown("0.0366", Unit::inch, Unit::millimetre) == "0.93 mm");
  CHECK(shown("-0.12", Unit::millimetre, Unit::inch) == "-0.00472 in");
}

TEST_CASE("a decimal more than can be told apart is taken only where it is the number shown") {
  CHECK(read_number("0.03583", Unit::inch)->base == 910);
  CHECK(read_number("00,03583 in", Unit::millimetre)->base == 910);
  CHECK(read_number("-.03583", Unit::inch)->base == -910);
  CHECK(read_number("0.03582", Unit::inch).error().code == "too_fine");
  CHECK(read_number("0.035830", Unit::inch).error().code == "too_fine");
  CHECK(read_number("0.00000", Unit::inch)->base == 0);
}

TEST_CASE("lengths and torques are shown in the units chosen, all else as it is") {
  CHECK(quantity::unit_shown(Unit::millimetre, imperial) == Unit::inch);
  CHECK(quantity::unit_shown(Unit::thou, imperial) == Unit::inch);
  CHECK(quantity::unit_shown(Unit::newton_metre, imperial) == Unit::pound_foot);
  CHECK(quantity::unit_shown(Unit::inch, {}) == Unit::millimetre);
  CHECK(quantity::unit_shown(Unit::pound_foot, {}) == Unit::newton_metre);
  CHECK(quantity::unit_shown(Unit::degree_celsius, imperial) == Unit::degree_celsius);
  CHECK(quantity::unit_shown(Unit::kilometre, imperial) == Unit::kilometre);
  CHECK(number_in({5, 0, Unit::piece}, Unit::inch) == TypedNumber{5, 0, Unit::piece});
}

TEST_CASE("reckoned lengths get two decimals more in inch") {
  CHECK(quantity::decimals_shown(2, Unit::inch) == 4);
  CHECK(quantity::decimals_shown(3, Unit::millimetre) == 3);
}

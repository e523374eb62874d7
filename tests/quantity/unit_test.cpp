#include <catch2/catch.hpp>

#include "every_unit.h"
#include "shimwright/quantity/typed_number.h"

namespace quantity = shimwright::quantity;
using quantity::Dimension;
using quantity::Unit;

TEST_CASE("every unit is found again by its symbol and has a dimension whose default unit fits") {
  for (const Unit unit : quantity::test::every_unit) {
    CAPTURE(quantity::symbol_of(unit));
    CHECK(quantity::unit_with_symbol(quantity::symbol_of(unit)) == unit);
    const Dimension dimension = quantity::dimension_of(unit);
    CHECK(quantity::dimension_of(quantity::default_unit(dimension)) == dimension);
    CHECK(quantity::dimension_named(quantity::name_of(dimension)) == dimension);
  }
}

TEST_CASE("names that are none are not found") {
  CHECK_FALSE(quantity::unit_with_symbol("MM").has_value());
  CHECK_FALSE(quantity::unit_with_symbol("pcs").has_value());
  CHECK_FALSE(quantity::dimension_named("Length").has_value());
  CHECK_FALSE(quantity::dimension_named("").has_value());
}

TEST_CASE("names and symbols in files stay what they are") {
  CHECK(quantity::name_of(Dimension::length) == "length");
  CHECK(quantity::name_of(Dimension::distance) == "distance");
  CHECK(quantity::symbol_of(Unit::newton_metre) == "N·m");
  CHECK(quantity::symbol_of(Unit::degree_celsius) == "°C");
  CHECK(quantity::symbol_of(Unit::piece).empty());
}

TEST_CASE("the decimals that may be typed stay what they are") {
  CHECK(quantity::most_decimals(Unit::millimetre) == 3);
  CHECK(quantity::most_decimals(Unit::inch) == 4);
  CHECK(quantity::most_decimals(Unit::thou) == 1);
  CHECK(quantity::most_decimals(Unit::piece) == 0);
}

TEST_CASE("the bounds of a dimension") {
  CHECK(quantity::most_base(Dimension::length) == 10'000'000);
  CHECK(quantity::least_base(Dimension::temperature) == -273'150);
  CHECK(quantity::least_base(Dimension::count) == 0);
  CHECK(quantity::least_base(Dimension::distance) == 0);
}

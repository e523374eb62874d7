#include <limits>

#include <catch2/catch.hpp>

#include "shimwright/quantity/typed_number.h"

using shimwright::quantity::digits_of;
using shimwright::quantity::micrometres;
using shimwright::quantity::millimetre_text;
using shimwright::quantity::shortest_text;
using shimwright::quantity::text_of;
using shimwright::quantity::Unit;

TEST_CASE("digits are those typed") {
  CHECK(digits_of({930, 2, Unit::millimetre}) == "0.93");
  CHECK(digits_of({-100, 2, Unit::millimetre}) == "-0.10");
  CHECK(digits_of({-100, 3, Unit::millimetre}) == "-0.100");
  CHECK(digits_of({13500, 1, Unit::newton_metre}) == "13.5");
  CHECK(digits_of({432, 3, Unit::inch}) == "0.017");
  CHECK(digits_of({0, 2, Unit::millimetre}) == "0.00");
  CHECK(digits_of({2, 0, Unit::piece}) == "2");
}

TEST_CASE("digits of what no reader gave are still digits") {
  CHECK(digits_of({930, 99, Unit::millimetre}) == "0.930");
  CHECK(digits_of({930, -1, Unit::millimetre}) == "1");
  CHECK(digits_of({std::numeric_limits<std::int64_t>::min(), 3, Unit::millimetre}) == "-9223372036854775.808");
  CHECK(digits_of({std::numeric_limits<std::int64_t>::max(), 3, Unit::pound_foot}) == "6802810103086437.249");
}

TEST_CASE("a text has the unit, an angle's at the figure, a count's not at all") {
  CHECK(text_of({930, 2, Unit::millimetre}) == "0.93 mm");
  CHECK(text_of({13500, 1, Unit::newton_metre}) == "13.5 N·m");
  CHECK(text_of({90000, 0, Unit::degree}) == "90°");
  CHECK(text_of({90000, 0, Unit::degree_celsius}) == "90 °C");
  CHECK(text_of({2, 0, Unit::piece}) == "2");
}

TEST_CASE("people read a true minus, and a plus where the sign is part of the number") {
  using shimwright::quantity::printed_text_of;
  using shimwright::quantity::signed_text_of;
  CHECK(printed_text_of({-5000, 0, Unit::degree_celsius}) == "−5 °C");
  CHECK(printed_text_of({930, 2, Unit::millimetre}) == "0.93 mm");
  CHECK(signed_text_of({120, 2, Unit::millimetre}) == "+0.12 mm");
  CHECK(signed_text_of({-120, 2, Unit::millimetre}) == "−0.12 mm");
  CHECK(signed_text_of({0, 2, Unit::millimetre}) == "0.00 mm");
  CHECK(signed_text_of({0, 1, Unit::millimetre}) == "0.0 mm");
  CHECK(shimwright::quantity::with_true_minus("").empty());
}

TEST_CASE("millimetres with the decimals asked for") {
  CHECK(millimetre_text(micrometres(930), 3) == "0.930");
  CHECK(millimetre_text(micrometres(930), 5) == "0.93000");
  CHECK(millimetre_text(micrometres(935), 2) == "0.94");
  CHECK(millimetre_text(micrometres(-935), 2) == "-0.94");
  CHECK(millimetre_text(micrometres(934), 2) == "0.93");
  CHECK(millimetre_text(micrometres(500), 0) == "1");
  CHECK(millimetre_text(micrometres(-4), 2) == "0.00");
}

TEST_CASE("the shortest text drops what says nothing") {
  CHECK(shortest_text(200, Unit::millimetre) == "0.20 mm");
  CHECK(shortest_text(205, Unit::millimetre) == "0.205 mm");
  CHECK(shortest_text(13500, Unit::newton_metre) == "13.5 N·m");
  CHECK(shortest_text(100000, Unit::newton_metre) == "100 N·m");
  CHECK(shortest_text(0, Unit::volt) == "0 V");
  CHECK(shortest_text(10, Unit::piece) == "10");
  CHECK(shortest_text(-273150, Unit::degree_celsius) == "-273.15 °C");
}

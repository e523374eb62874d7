#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using shimwright::vehicle::check_digit_for;
using shimwright::vehicle::model_years_for;

using Years = std::vector<int>;

TEST_CASE("the check digit of 49 CFR 565") {
  CHECK(check_digit_for("11111111111111111") == '1');
  CHECK(check_digit_for("1M8GDM9AXKP042788") == 'X');
  CHECK(check_digit_for("TESTVN0020A000123") == '2');
  CHECK(check_digit_for("00000000000000000") == '0');
}

TEST_CASE("the ninth character does not count for itself") {
  CHECK(check_digit_for("1M8GDM9A0KP042788") == check_digit_for("1M8GDM9AZKP042788"));
}

TEST_CASE("what is no VIN still gives some digit") {
  CHECK(check_digit_for("") == '0');
  CHECK(check_digit_for("IOQ-ÿÿ") == '0');
}

TEST_CASE("model years come round every thirty years up to the next one") {
  CHECK(model_years_for('A', 2026) == Years{1980, 2010});
  CHECK(model_years_for('T', 2026) == Years{1996, 2026});
  CHECK(model_years_for('V', 2026) == Years{1997, 2027});
  CHECK(model_years_for('W', 2026) == Years{1998});
  CHECK(model_years_for('9', 2026) == Years{2009});
  CHECK(model_years_for('Y', 2026) == Years{2000});
  CHECK(model_years_for('A', 2039) == Years{1980, 2010, 2040});
  CHECK(model_years_for('A', 1978) == Years{});
}

TEST_CASE("characters that are no year code give no year") {
  for (const char code : {'U', 'Z', '0', 'I', 'O', 'Q', 'a', '-'}) {
    CHECK(model_years_for(code, 2026).empty());
  }
}

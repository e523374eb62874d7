#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using shimwright::vehicle::ChassisNumber;
using shimwright::vehicle::key_of;
using shimwright::vehicle::read_chassis_number;
using shimwright::vehicle::read_vehicle_number;
using shimwright::vehicle::VehicleNumber;

namespace {

std::string read(std::string_view typed, std::string_view reason = "built before 1981") {
  const auto number = read_chassis_number(typed, reason);
  return number ? number->text + " as " + number->key : number.error().code;
}

}  // namespace

TEST_CASE("a chassis number is trimmed and filed under its key") {
  CHECK(read(" hl 71-204b\t") == "hl 71-204b as HL71204B");
  CHECK(read("Ж7") == "Ж7 as Ж7");
  CHECK(read(std::string(32, 'A')) == std::string(32, 'A') + " as " + std::string(32, 'A'));
}

TEST_CASE("a chassis number that cannot be filed is refused") {
  CHECK(read("") == "empty");
  CHECK(read(" \u00A0") == "empty");
  CHECK(read("- -") == "empty");
  CHECK(read(std::string(33, 'A')) == "too_long");
  CHECK(read("A\x07") == "not_printable");
  CHECK(read("A\x7F") == "not_printable");
  CHECK(read("A\nB") == "not_printable");
  CHECK(read("A\xC2\x9F") == "not_printable");
  CHECK(read("A\xFF") == "not_printable");
}

TEST_CASE("a chassis number needs a reason") {
  CHECK(read("HL7", "") == "reason_missing");
  CHECK(read("HL7", " \u3000") == "reason_missing");
  CHECK(read("HL7", "\xFF") == "reason_missing");
  const auto number = read_chassis_number("HL7", " trailer axle ");
  REQUIRE(number.has_value());
  CHECK(number->reason == "trailer axle");
}

TEST_CASE("refused vehicle numbers may be filed as chassis numbers") {
  CHECK(read("TESTVN0020A00012") == "TESTVN0020A00012 as TESTVN0020A00012");
}

TEST_CASE("the key of either kind") {
  CHECK(key_of(VehicleNumber(ChassisNumber{"hl 7", "HL7", "x"})) == "HL7");
  const auto vin = read_vehicle_number("testvn0020a000123", 2026);
  REQUIRE(vin.has_value());
  CHECK(key_of(VehicleNumber(*vin)) == "TESTVN0020A000123");
}

TEST_CASE("a chassis number taken is taken again as it was kept") {
  CHECK(rc::check([] {
    const auto typed = *rc::gen::container<std::string>(
        rc::gen::oneOf(rc::gen::element(' ', '-', 'a', 'B', '7', '/'), rc::gen::arbitrary<char>()));
    const auto number = read_chassis_number(typed, "reason");
    if (number) {
      const auto again = read_chassis_number(number->text, number->reason);
      RC_ASSERT(again.has_value());
      RC_ASSERT(*again == *number);
    }
  }));
}

#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using nlohmann::json;
namespace vehicle = shimwright::vehicle;

TEST_CASE("a vehicle number as JSON has the shape of the contract") {
  const auto number = vehicle::read_vehicle_number("testvnz1kta000123", 2026);
  REQUIRE(number.has_value());
  CHECK(to_json(*number) == json::parse(R"({"typed": "testvnz1kta000123", "kind": "vin", "key": "TESTVNZ1KTA000123",
    "check_digit": {"expected": "2", "given": "K", "fits": false}, "notes": ["check_digit_misfit"],
    "model_years": [1996, 2026]})"));
}

TEST_CASE("a vehicle number without notes and years has empty lists") {
  const auto number = vehicle::read_vehicle_number("TESTVN0020A000123", 2026);
  REQUIRE(number.has_value());
  CHECK(to_json(*number)["notes"] == json::array());
  CHECK(to_json(*number)["model_years"] == json::array());
}

TEST_CASE("a refusal as JSON names a suggestion only where there is one") {
  CHECK(to_json(vehicle::VinRefusal{"x", vehicle::VinFault::length, std::nullopt}) ==
        json::parse(R"({"typed": "x", "kind": "refused", "reason": "length"})"));
  CHECK(to_json(vehicle::VinRefusal{"x", vehicle::VinFault::letters, "Y"}) ==
        json::parse(R"({"typed": "x", "kind": "refused", "reason": "letters", "suggestion": "Y"})"));
}

TEST_CASE("a chassis number as JSON") {
  CHECK(to_json(vehicle::ChassisNumber{"hl 7-1", "HL71", "built before 1981"}) ==
        json::parse(R"({"typed": "hl 7-1", "kind": "chassis", "key": "HL71", "reason": "built before 1981"})"));
}

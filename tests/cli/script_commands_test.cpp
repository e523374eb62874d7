#include <catch2/catch.hpp>

#include "script.h"

using namespace shimwright;

namespace {

Result<cli::ScriptCommand> read(const std::string& text) {
  const auto value = json::parse(text);
  REQUIRE(value);
  return cli::read_script_command(*value, "/commands/3");
}

std::string place_of_fault(const std::string& text) {
  const auto command = read(text);
  return command ? "taken" : command.error().place;
}

}  // namespace

TEST_CASE("a command is read with its time and what is expected of it") {
  const auto command =
      read(R"({"command":"do","by":"MK","step":"hub-out","at":"2026-11-24T10:58+01:00","expect":"refused"})");
  REQUIRE(command);
  CHECK(std::get<job::DoStep>(command->command).step == "hub-out");
  CHECK(command->by == "MK");
  CHECK_FALSE(command->expect_accepted);
  REQUIRE(command->at);
  CHECK(command->at->offset_min == 60);
  CHECK(command->at->at_ms == 1795514280000);
}

TEST_CASE("readings, spots and parts are read one by one") {
  const auto readings = read(
      R"({"command":"read","by":"MK","step":"s","readings":[{"channel":"a","text":"0,5","instrument":"i"},{"channel":"b","text":"1"}]})");
  REQUIRE(readings);
  const auto& entered = std::get<job::EnterReadings>(readings->command).readings;
  REQUIRE(entered.size() == 2);
  CHECK(entered[0].instrument == "i");
  CHECK(entered[1].instrument.empty());
  const auto again = read(R"({"command":"again","by":"MK","step":"s","because":"seated_again","spots":[2,3]})");
  REQUIRE(again);
  CHECK(std::get<job::BeginSeries>(again->command).spots == std::vector<int>{2, 3});
  CHECK(std::get<job::BeginSeries>(again->command).reason == job::SeriesReason::seated_again);
}

TEST_CASE("a command nobody knows and a time that is none say so") {
  const auto unknown = read(R"({"command":"fly","by":"MK"})");
  REQUIRE_FALSE(unknown);
  CHECK(unknown.error().code == "unknown_command");
  for (const char* time : {"soon", "2026-11-24T10:58", "2026-13-24T10:58+00:00", ""}) {
    const auto at = read(R"({"command":"do","by":"MK","step":"hub-out","at":")" + std::string(time) + "\"}");
    REQUIRE_FALSE(at);
    CHECK(at.error().code == "bad_time");
  }
}

TEST_CASE("a fault is named by its place") {
  CHECK(place_of_fault(R"({"by":"MK"})") == "/commands/3/command");
  CHECK(place_of_fault(R"({"command":"fly","by":"MK"})") == "/commands/3/command");
  CHECK(place_of_fault(R"({"command":"do","by":"MK"})") == "/commands/3/step");
  CHECK(place_of_fault(R"({"command":"do","by":"MK","step":"a","step":"b"})") == "/commands/3/step");
  CHECK(place_of_fault(R"({"command":"do","by":"MK","step":7})") == "/commands/3/step");
  CHECK(place_of_fault(R"({"command":"try","by":"MK","step":"s","shim":"1","fit":"firm"})") == "/commands/3/fit");
  CHECK(place_of_fault(R"({"command":"again","by":"MK","step":"s","because":"x"})") == "/commands/3/because");
  CHECK(place_of_fault(R"({"command":"again","by":"MK","step":"s","because":"measure_again","spots":[0]})") ==
        "/commands/3/spots/0");
  CHECK(place_of_fault(R"({"command":"assembly","by":"MK","reason":"r","sides":["left"]})") == "/commands/3/sides");
  CHECK(place_of_fault(R"({"command":"read","by":"MK","step":"s","readings":[{"channel":"a"}]})") ==
        "/commands/3/readings/0/text");
  CHECK(place_of_fault(R"({"command":"note","by":"MK","text":"t","at":"2026-13-01T00:00Z"})") == "/commands/3/at");
}

TEST_CASE("a seal and an addendum hold no digest and no PIN") {
  const auto seal = read(R"({"command":"seal","by":"MK"})");
  REQUIRE(seal);
  CHECK(std::get<job::SealJob>(seal->command).signers.empty());
  CHECK(place_of_fault(R"({"command":"seal","by":"MK","pin":"4711"})") == "/commands/3/pin");
  const auto addendum = read(R"({"command":"addendum","by":"MK","reason":"r","text":"t"})");
  REQUIRE(addendum);
  CHECK(std::get<job::AddAddendum>(addendum->command).text == "t");
  CHECK(place_of_fault(R"({"command":"addendum","by":"MK","text":"t"})") == "/commands/3/reason");
}

TEST_CASE("a time without an offset is no moment") {
  CHECK_FALSE(cli::read_moment("2026-11-24T10:58"));
  CHECK(cli::read_moment("2026-11-24T10:58Z"));
  CHECK(cli::read_moment("2028-02-29T23:59:59-03:30")->offset_min == -210);
  CHECK_FALSE(cli::read_moment("2027-02-29T23:59:59Z"));
}

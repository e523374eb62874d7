#include <fstream>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "shimwright/quantity/typed_number.h"

using nlohmann::json;
using shimwright::quantity::read_number;
using shimwright::quantity::Unit;

namespace {

json what_is_read(const std::string& typed) {
  const auto number = read_number(typed, Unit::millimetre);
  if (!number) {
    return {{"typed", typed}, {"refused", number.error().code}};
  }
  return {{"typed", typed},
          {"um", number->base},
          {"decimals", number->decimals},
          {"unit", shimwright::quantity::symbol_of(number->unit)}};
}

}  // namespace

TEST_CASE("every reading of the vectors is read as it says") {
  std::ifstream file(SHIMWRIGHT_SOURCE_DIR "/tests/quantity/vectors/readings.json");
  const json vectors = json::parse(file, nullptr, false);
  REQUIRE(vectors.is_object());
  REQUIRE(vectors["cases"].size() == 28);
  for (const json& expected : vectors["cases"]) {
    CHECK(what_is_read(expected["typed"]) == expected);
  }
}

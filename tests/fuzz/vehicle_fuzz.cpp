#include "fuzz_target.h"
#include "shimwright/json/utf8.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace vehicle = shimwright::vehicle;
using shimwright::fuzz::require;

namespace {

constexpr int this_year = 2026;

void try_as_vin(std::string_view typed) {
  const auto number = vehicle::read_vehicle_number(typed, this_year);
  if (number) {
    require(number->key.size() == 17, "a key has 17 characters");
    require(vehicle::folded_key(number->key) == number->key, "the key of a key is itself");
    require(!to_json(*number).dump().empty(), "an answer can be written");
    return;
  }
  require(!to_json(number.error()).dump().empty(), "a refusal can be written");
  require(!vehicle::error_of(number.error()).in_english().empty(), "a refusal is a sentence");
  if (const auto& suggestion = number.error().suggestion) {
    const auto suggested = vehicle::read_vehicle_number(*suggestion, this_year);
    require(suggested.has_value() && suggested->key == *suggestion, "a suggestion is a legal number");
  }
}

void try_as_chassis_number(std::string_view typed) {
  const auto number = vehicle::read_chassis_number(typed, "no full number on the plate");
  if (number) {
    require(shimwright::json::is_utf8(number->text), "a chassis number is text");
    require(vehicle::read_chassis_number(number->text, number->reason) == number, "what is kept is read as the same");
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto typed = shimwright::fuzz::text_of(data, size);
  try_as_vin(typed);
  try_as_chassis_number(typed);
  const std::string key = vehicle::folded_key(typed);
  require(vehicle::folded_key(key) == key, "the key of any key is itself");
  return 0;
}

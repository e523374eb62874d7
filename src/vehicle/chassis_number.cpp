#include <algorithm>

#include "folding.h"
#include "shimwright/json/utf8.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::vehicle {

namespace {

constexpr std::size_t most_characters = 32;

bool is_control(std::string_view character) {
  const auto first = static_cast<unsigned char>(character.front());
  const bool ascii_control = first < 0x20 || first == 0x7F;
  // U+0080 to U+009F are the only characters of two bytes that begin so.
  const bool other_control = first == 0xC2 && character.size() == 2 && static_cast<unsigned char>(character[1]) < 0xA0;
  return ascii_control || other_control;
}

bool is_printable(std::string_view text) {
  const auto characters = characters_of(text);
  return json::is_utf8(text) && std::none_of(characters.begin(), characters.end(), is_control);
}

}  // namespace

Result<ChassisNumber> read_chassis_number(std::string_view typed, std::string_view reason) {
  const std::string_view text = trimmed(typed);
  std::string key = folded_key(text);
  if (key.empty()) {
    return refuse("empty", "", SHIMWRIGHT_TEXT("vehicle", "No chassis number is entered yet; type it."));
  }
  if (characters_of(text).size() > most_characters) {
    return refuse("too_long", "",
                  SHIMWRIGHT_TEXT("vehicle", "A chassis number has at most {0} characters; type only the number."),
                  {std::to_string(most_characters)});
  }
  if (!is_printable(text)) {
    return refuse(
        "not_printable", "",
        SHIMWRIGHT_TEXT("vehicle", "The chassis number holds characters that cannot be printed; type it anew."));
  }
  const std::string_view because = trimmed(reason);
  if (because.empty() || !json::is_utf8(because)) {
    return refuse("reason_missing", "",
                  SHIMWRIGHT_TEXT("vehicle", "A number that is no full VIN needs a reason; say why."));
  }
  return ChassisNumber{std::string(text), std::move(key), std::string(because)};
}

const std::string& key_of(const VehicleNumber& number) {
  return std::visit([](const auto& each) -> const std::string& { return each.key; }, number);
}

}  // namespace shimwright::vehicle

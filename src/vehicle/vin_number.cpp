#include <algorithm>

#include "folding.h"
#include "shimwright/json/utf8.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::vehicle {

namespace {

constexpr std::size_t length_of_a_vin = 17;
constexpr std::size_t place_of_check_digit = 8;
constexpr std::size_t place_of_model_year = 9;

std::optional<VinFault> fault_in(std::string_view key) {
  if (characters_of(key).size() != length_of_a_vin) {
    return VinFault::length;
  }
  if (!std::all_of(key.begin(), key.end(), is_legal)) {
    return VinFault::letters;
  }
  if (key.find_first_not_of(key.front()) == std::string_view::npos) {
    return VinFault::placeholder;
  }
  return std::nullopt;
}

std::optional<std::string> suggestion_for(std::string_view key, VinFault fault) {
  if (fault != VinFault::letters) {
    return std::nullopt;
  }
  std::string meant = without_look_alikes(key);
  return fault_in(meant) ? std::nullopt : std::optional(std::move(meant));
}

}  // namespace

tl::expected<VinNumber, VinRefusal> read_vehicle_number(std::string_view typed, int this_year) {
  std::string key = folded_key(typed);
  if (const auto fault = fault_in(key)) {
    return tl::make_unexpected(VinRefusal{json::as_utf8(typed), *fault, suggestion_for(key, *fault)});
  }
  VinNumber number{json::as_utf8(typed),
                   key,
                   CheckDigit{check_digit_for(key), key[place_of_check_digit]},
                   {},
                   model_years_for(key[place_of_model_year], this_year)};
  if (!number.check_digit.fits()) {
    number.notes.push_back(VinNote::check_digit_misfit);
  }
  return number;
}

bool may_be_typed_in_a_vin(std::string_view character) {
  const std::string key = folded_key(character);
  return std::all_of(key.begin(), key.end(), is_legal);
}

std::string_view name_of(VinNote note) {
  switch (note) {
    case VinNote::check_digit_misfit:
      return "check_digit_misfit";
  }
  return {};
}

std::string_view name_of(VinFault fault) {
  switch (fault) {
    case VinFault::length:
      return "length";
    case VinFault::letters:
      return "letters";
    case VinFault::placeholder:
      return "placeholder";
  }
  return {};
}

Message sentence_for(VinNote note) {
  switch (note) {
    case VinNote::check_digit_misfit:
      return {SHIMWRIGHT_TEXT("vehicle",
                              "The check digit does not fit, as on many vehicles whose maker does not use "
                              "it; compare the number with the vehicle once more."),
              {}};
  }
  return {};
}

Error error_of(const VinRefusal& refusal) {
  Error error{std::string(name_of(refusal.reason)), "", {}};
  switch (refusal.reason) {
    case VinFault::length:
      error.message = {SHIMWRIGHT_TEXT("vehicle",
                                       "A VIN has 17 characters and this one has {0}; compare it "
                                       "with the vehicle, or file it as a chassis number with a reason."),
                       {std::to_string(characters_of(folded_key(refusal.typed)).size())}};
      break;
    case VinFault::letters:
      error.message = refusal.suggestion
                          ? Message{SHIMWRIGHT_TEXT("vehicle",
                                                    "A VIN has only the digits and the letters A "
                                                    "to Z without I, O and Q; is {0} meant?"),
                                    {*refusal.suggestion}}
                          : Message{SHIMWRIGHT_TEXT("vehicle",
                                                    "A VIN has only the digits and the letters A "
                                                    "to Z without I, O and Q; compare it with the vehicle."),
                                    {}};
      break;
    case VinFault::placeholder:
      error.message = {SHIMWRIGHT_TEXT("vehicle",
                                       "One character 17 times is no VIN; read the number from the "
                                       "vehicle."),
                       {}};
      break;
  }
  return error;
}

}  // namespace shimwright::vehicle

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <nlohmann/json.hpp>

#include "shimwright/quantity/error.h"

namespace shimwright::vehicle {

/// The ninth character of a VIN as 49 CFR 565.15 computes it. Much of the world does not use it.
struct CheckDigit {
  char expected = '0';
  char given = '0';

  [[nodiscard]] bool fits() const { return expected == given; }

  friend bool operator==(const CheckDigit&, const CheckDigit&) = default;
};

/// What is worth a second look at a VIN that is taken all the same.
enum class VinNote { check_digit_misfit };

/// A vehicle identification number (ISO 3779): 17 letters and digits without I, O and Q.
struct VinNumber {
  std::string typed;  ///< as typed, broken bytes replaced by U+FFFD
  std::string key;    ///< what it is filed under
  CheckDigit check_digit;
  std::vector<VinNote> notes;
  std::vector<int> model_years;  ///< the years its tenth character may stand for, oldest first; may be empty

  friend bool operator==(const VinNumber&, const VinNumber&) = default;
};

/// In the order they are looked for: not 17 characters; a character no VIN has; one character 17 times.
enum class VinFault { length, letters, placeholder };

struct VinRefusal {
  std::string typed;
  VinFault reason = VinFault::length;
  /// What may have been meant, where that is a legal number: of `letters` only, never taken without being asked.
  std::optional<std::string> suggestion;

  friend bool operator==(const VinRefusal&, const VinRefusal&) = default;
};

/// A number that is no VIN and is filed as it stands, since a person said why.
struct ChassisNumber {
  std::string text;  ///< trimmed, as typed
  std::string key;
  std::string reason;

  friend bool operator==(const ChassisNumber&, const ChassisNumber&) = default;
};

using VehicleNumber = std::variant<VinNumber, ChassisNumber>;

/// Reads a VIN as typed: white space and hyphens dropped, ASCII letters in upper case. Model years go up to the one
/// after `this_year`.
[[nodiscard]] tl::expected<VinNumber, VinRefusal> read_vehicle_number(std::string_view typed, int this_year);

/// A chassis number: 1 to 32 printable characters, at least one of which is no space or hyphen. Codes of refusal:
/// `empty`, `too_long`, `not_printable`, `reason_missing`.
[[nodiscard]] Result<ChassisNumber> read_chassis_number(std::string_view typed, std::string_view reason);

/// What a typed number or a part of one is filed and looked for under: white space and hyphens dropped, ASCII letters
/// in upper case, broken bytes replaced by U+FFFD. The key of a key is itself.
[[nodiscard]] std::string folded_key(std::string_view typed);
[[nodiscard]] const std::string& key_of(const VehicleNumber& number);

/// Whether a character (its UTF-8) may stand in a VIN as it is typed: a digit, a letter in either case but I, O and Q,
/// white space and hyphens, which are dropped.
[[nodiscard]] bool may_be_typed_in_a_vin(std::string_view character);

/// The check digit of 17 characters that are legal in a VIN, whatever the ninth is.
[[nodiscard]] char check_digit_for(std::string_view key);
/// The years a tenth character may stand for, from 1980 to the one after `this_year`.
[[nodiscard]] std::vector<int> model_years_for(char code, int this_year);

/// `check_digit_misfit`; `length`, `letters`, `placeholder`.
[[nodiscard]] std::string_view name_of(VinNote note);
[[nodiscard]] std::string_view name_of(VinFault fault);
/// What to tell the person.
[[nodiscard]] Message sentence_for(VinNote note);
/// Code is the name of the reason; the place is empty.
[[nodiscard]] Error error_of(const VinRefusal& refusal);

/// `{typed, kind: "vin", key, check_digit: {expected, given, fits}, notes, model_years}`.
[[nodiscard]] nlohmann::json to_json(const VinNumber& number);
/// `{typed, kind: "refused", reason, suggestion}`, the last one only where there is one.
[[nodiscard]] nlohmann::json to_json(const VinRefusal& refusal);
/// `{typed, kind: "chassis", key, reason}`.
[[nodiscard]] nlohmann::json to_json(const ChassisNumber& number);

}  // namespace shimwright::vehicle

#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <span>
#include <string>

#include "shimwright/job/command.h"

/// What the core may not make itself: ids and salts. Time and chance are handed in, so that a test can fix both.
namespace shimwright::store {

/// Fills the bytes with chance.
using Chance = std::function<void(std::span<std::uint8_t>)>;

/// Chance from the system's own source, good for salts.
[[nodiscard]] Chance system_chance();

/// UUID version 7 (RFC 9562) in its text form: 48 bits of time (UTC, milliseconds), the rest chance. `chance` loses six
/// of its 80 bits to version and variant.
[[nodiscard]] std::string uuid_version_7(std::int64_t at_ms, const std::array<std::uint8_t, 10>& chance);

/// Whether this is the text form of a UUID: 8-4-4-4-12 lower-case hexadecimal digits.
[[nodiscard]] bool is_uuid(const std::string& text);

/// Draws ids and salts.
class IdSource {
 public:
  explicit IdSource(Chance chance = system_chance()) : chance_(std::move(chance)) {}

  [[nodiscard]] std::string id(std::int64_t at_ms);
  /// A personal text with id, salt (32 hexadecimal digits) and digest (record::private_digest).
  [[nodiscard]] job::PrivateText private_text(std::string text, std::int64_t at_ms);

 private:
  Chance chance_;
};

}  // namespace shimwright::store

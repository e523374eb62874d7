#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace shimwright::json {

/// How many bytes the well-formed UTF-8 character at the start of `text` has (Unicode, table 3-7); 0 where there is
/// none.
[[nodiscard]] std::size_t utf8_length(std::string_view text);

[[nodiscard]] bool is_utf8(std::string_view text);

/// `text` with U+FFFD for every byte that belongs to no character, so that it can be written as JSON.
[[nodiscard]] std::string as_utf8(std::string_view text);

/// Adds the character, which must be no surrogate and below 0x110000.
void append_utf8(std::string& text, std::uint32_t character);

}  // namespace shimwright::json

#pragma once

#include <cstddef>
#include <string_view>

/// How names inside a sheet may look.
namespace shimwright::sheet {

/// Of a stage, step, channel, choice or part: 1 to 40 of `a-z`, `0-9` and `-`.
[[nodiscard]] bool is_id(std::string_view text);
/// Of a limit or a value to work to: 1 to 40 of `a-z`, `0-9` and `_`.
[[nodiscard]] bool is_key(std::string_view text);
/// A shim as marked: 1 to 16 printable ASCII characters, no space at either end.
[[nodiscard]] bool is_shim_id(std::string_view text);
/// 8-4-4-4-12 hexadecimal digits, small letters.
[[nodiscard]] bool is_uuid(std::string_view text);
/// Two or three small letters, as ISO 639 has them.
[[nodiscard]] bool is_language(std::string_view text);
/// Nothing but white space.
[[nodiscard]] bool is_blank(std::string_view text);
/// A line feed, a tabulator or another character that does not print.
[[nodiscard]] bool has_control_character(std::string_view text);
/// Characters of a UTF-8 text.
[[nodiscard]] std::size_t character_count(std::string_view text);

}  // namespace shimwright::sheet

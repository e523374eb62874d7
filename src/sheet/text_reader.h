#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/text.h"

namespace shimwright::sheet {

inline constexpr std::size_t longest_line = 200;
inline constexpr std::size_t longest_text = 1000;

/// Nothing for a line a person can read; else `blank`, `control_character` or `too_long`.
[[nodiscard]] Result<void> check_line(const std::string& line, const std::string& place, std::size_t longest);

/// `{"en": "…", "de": "…"}`. Codes: `wrong_type`, `wrong_language`, `repeated_field`, `missing_field` (English) and
/// those of check_line.
[[nodiscard]] Result<Text> read_text(const json::Value& value, const std::string& place);

}  // namespace shimwright::sheet

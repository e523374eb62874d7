#pragma once

#include <string>

#include <nlohmann/json.hpp>

#include "shimwright/quantity/error.h"

namespace shimwright::json {

/// Canonical JSON: no white space, keys sorted by byte, ASCII keys, integers only and below 2^53 in size, strings as
/// shortest UTF-8 escapes. The same value gives the same bytes everywhere, so the bytes can be hashed and signed.
/// Refused (`not_canonical`, the place a JSON pointer): a floating-point number, an integer of 2^53 or more in size, a
/// key that is not ASCII, text that is not UTF-8.
[[nodiscard]] Result<std::string> canonical(const nlohmann::json& value);

}  // namespace shimwright::json

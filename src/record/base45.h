#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shimwright::record {

/// Bytes in the 45 characters of the alphanumeric mode of QR codes (RFC 9285).
[[nodiscard]] std::string base45(std::string_view bytes);
/// Nothing for text that base45() does not write.
[[nodiscard]] std::optional<std::string> from_base45(std::string_view text);

}  // namespace shimwright::record

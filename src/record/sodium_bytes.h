#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

#include <sodium.h>

/// The library takes unsigned bytes; text is the same bytes.
namespace shimwright::record {

[[nodiscard]] inline const unsigned char* unsigned_bytes(std::string_view text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}

[[nodiscard]] inline std::string hexadecimal(const unsigned char* bytes, std::size_t count) {
  std::string text(count * 2 + 1, '\0');
  sodium_bin2hex(text.data(), text.size(), bytes, count);
  text.pop_back();
  return text;
}

/// Lower-case digits of just that many bytes; false for anything else.
template <std::size_t size>
[[nodiscard]] bool from_hexadecimal(std::string_view text, std::array<unsigned char, size>& bytes) {
  std::size_t count = 0;
  return text.size() == size * 2 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos &&
         sodium_hex2bin(bytes.data(), size, text.data(), text.size(), nullptr, &count, nullptr) == 0 && count == size;
}

}  // namespace shimwright::record

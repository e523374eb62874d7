#include "shimwright/store/ids.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <utility>

#include <QRandomGenerator>

#include "shimwright/record/hash.h"

namespace shimwright::store {

namespace {

constexpr std::string_view digits = "0123456789abcdef";

void append_hexadecimal(std::string& text, std::uint8_t byte) {
  text += digits[byte >> 4U];
  text += digits[byte & 0x0FU];
}

}  // namespace

Chance system_chance() {
  return [](std::span<std::uint8_t> bytes) {
    for (std::uint8_t& byte : bytes) {
      byte = static_cast<std::uint8_t>(QRandomGenerator::system()->bounded(256));
    }
  };
}

std::string uuid_version_7(std::int64_t at_ms, const std::array<std::uint8_t, 10>& chance) {
  std::array<std::uint8_t, 16> bytes{};
  auto time = static_cast<std::uint64_t>(at_ms);
  for (std::size_t place = 6; place > 0; --place) {
    bytes.at(place - 1) = static_cast<std::uint8_t>(time & 0xFFU);
    time >>= 8U;
  }
  std::copy(chance.begin(), chance.end(), bytes.begin() + 6);
  bytes[6] = static_cast<std::uint8_t>(0x70U | (bytes[6] & 0x0FU));
  bytes[8] = static_cast<std::uint8_t>(0x80U | (bytes[8] & 0x3FU));
  std::string text;
  for (std::size_t place = 0; place < bytes.size(); ++place) {
    if (place == 4 || place == 6 || place == 8 || place == 10) {
      text += '-';
    }
    append_hexadecimal(text, bytes.at(place));
  }
  return text;
}

bool is_uuid(const std::string& text) {
  constexpr std::string_view shape = "xxxxxxxx-xxxx-xxxx-xxxx-xxxxxxxxxxxx";
  return std::equal(text.begin(), text.end(), shape.begin(), shape.end(), [](char given, char wanted) {
    return wanted == '-' ? given == '-' : digits.find(given) != std::string_view::npos;
  });
}

std::string IdSource::id(std::int64_t at_ms) {
  std::array<std::uint8_t, 10> bytes{};
  chance_(bytes);
  return uuid_version_7(at_ms, bytes);
}

job::PrivateText IdSource::private_text(std::string text, std::int64_t at_ms) {
  std::array<std::uint8_t, 16> bytes{};
  chance_(bytes);
  job::PrivateText made;
  made.id = id(at_ms);
  for (const std::uint8_t byte : bytes) {
    append_hexadecimal(made.salt, byte);
  }
  made.text = std::move(text);
  made.digest = record::private_digest(made.salt, made.text);
  return made;
}

}  // namespace shimwright::store

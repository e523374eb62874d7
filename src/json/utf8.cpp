#include "shimwright/json/utf8.h"

namespace shimwright::json {

namespace {

unsigned byte_at(std::string_view text, std::size_t at) {
  return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U;
}

bool between(unsigned byte, unsigned least, unsigned most) {
  return least <= byte && byte <= most;
}

bool continues(std::string_view text, std::size_t at) {
  return between(byte_at(text, at), 0x80, 0xBF);
}

// The second byte is what keeps out overlong forms, surrogates and characters beyond the last.
bool second_byte_fits(unsigned first, unsigned second) {
  switch (first) {
    case 0xE0:
      return between(second, 0xA0, 0xBF);
    case 0xED:
      return between(second, 0x80, 0x9F);
    case 0xF0:
      return between(second, 0x90, 0xBF);
    case 0xF4:
      return between(second, 0x80, 0x8F);
    default:
      return between(second, 0x80, 0xBF);
  }
}

}  // namespace

std::size_t utf8_length(std::string_view text) {
  if (text.empty()) {
    return 0;
  }
  const unsigned first = byte_at(text, 0);
  if (first < 0x80) {
    return 1;
  }
  if (!between(first, 0xC2, 0xF4) || !second_byte_fits(first, byte_at(text, 1))) {
    return 0;
  }
  if (first < 0xE0) {
    return 2;
  }
  if (!continues(text, 2)) {
    return 0;
  }
  if (first < 0xF0) {
    return 3;
  }
  return continues(text, 3) ? 4 : 0;
}

bool is_utf8(std::string_view text) {
  while (!text.empty()) {
    const std::size_t length = utf8_length(text);
    if (length == 0) {
      return false;
    }
    text.remove_prefix(length);
  }
  return true;
}

std::string as_utf8(std::string_view text) {
  std::string clean;
  while (!text.empty()) {
    const std::size_t length = utf8_length(text);
    clean += length == 0 ? "\uFFFD" : text.substr(0, length);
    text.remove_prefix(length == 0 ? 1 : length);
  }
  return clean;
}

void append_utf8(std::string& text, std::uint32_t character) {
  const auto add = [&text](std::uint32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (character < 0x80) {
    add(character);
  } else if (character < 0x800) {
    add(0xC0U | (character >> 6U));
    add(0x80U | (character & 0x3FU));
  } else if (character < 0x10000) {
    add(0xE0U | (character >> 12U));
    add(0x80U | ((character >> 6U) & 0x3FU));
    add(0x80U | (character & 0x3FU));
  } else {
    add(0xF0U | (character >> 18U));
    add(0x80U | ((character >> 12U) & 0x3FU));
    add(0x80U | ((character >> 6U) & 0x3FU));
    add(0x80U | (character & 0x3FU));
  }
}

}  // namespace shimwright::json

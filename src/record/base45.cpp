#include "base45.h"

#include <cstddef>

namespace shimwright::record {

namespace {

constexpr std::string_view characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

}  // namespace

std::string base45(std::string_view bytes) {
  std::string text;
  for (std::size_t at = 0; at < bytes.size(); at += 2) {
    const bool pair = at + 1 < bytes.size();
    std::size_t number = static_cast<unsigned char>(bytes[at]);
    number = pair ? number * 256 + static_cast<unsigned char>(bytes[at + 1]) : number;
    for (int left = pair ? 3 : 2; left > 0; --left) {
      text += characters[number % 45];
      number /= 45;
    }
  }
  return text;
}

std::optional<std::string> from_base45(std::string_view text) {
  std::string bytes;
  for (std::size_t at = 0; at < text.size(); at += 3) {
    const std::string_view part = text.substr(at, 3);
    std::size_t number = 0;
    for (auto place = part.rbegin(); place != part.rend(); ++place) {
      const auto value = characters.find(*place);
      if (value == std::string_view::npos) {
        return std::nullopt;
      }
      number = number * 45 + value;
    }
    if (part.size() < 2 || number > (part.size() == 3 ? std::size_t{0xFFFF} : std::size_t{0xFF})) {
      return std::nullopt;
    }
    if (part.size() == 3) {
      bytes += static_cast<char>(number / 256);
    }
    bytes += static_cast<char>(number % 256);
  }
  return bytes;
}

}  // namespace shimwright::record

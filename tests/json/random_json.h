#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace shimwright::json::test {

inline constexpr std::int64_t largest_exact = (std::int64_t{1} << 53) - 1;

/// Makes a value out of random bytes, so that rapidcheck has only bytes to make and to shrink.
class RandomJson {
 public:
  explicit RandomJson(const std::vector<std::uint8_t>& bytes) : bytes_(bytes) {}

  /// Any value that has a canonical form, at most `depth` levels deep.
  nlohmann::json value(int depth) {
    switch (below(depth > 0 ? 6 : 4)) {
      case 0:
        return nullptr;
      case 1:
        return below(2) == 1;
      case 2:
        return integer();
      case 3:
        return text();
      case 4:
        return array(depth - 1);
      default:
        return object(depth - 1);
    }
  }

  nlohmann::json object(int depth) {
    nlohmann::json members = nlohmann::json::object();
    for (unsigned left = below(5); left > 0; --left) {
      std::string key = ascii_text();
      members[key] = value(depth);
    }
    return members;
  }

 private:
  nlohmann::json array(int depth) {
    nlohmann::json elements = nlohmann::json::array();
    for (unsigned left = below(5); left > 0; --left) {
      elements.push_back(value(depth));
    }
    return elements;
  }

  std::int64_t integer() {
    std::int64_t number = 0;
    for (unsigned left = below(8); left > 0; --left) {
      number = number * 256 + below(256);
    }
    number = number % (largest_exact + 1);
    return below(2) == 1 ? -number : number;
  }

  /// Characters of one to four bytes, quotes and control characters among them.
  std::string text() {
    static constexpr const char* pieces[] = {"a", "\"", "\\", "/", "\n", "\x01", "\x7f", "µ", "Ω", "€", "𝄞", "0"};
    std::string made;
    for (unsigned left = below(6); left > 0; --left) {
      made += pieces[below(12)];
    }
    return made;
  }

  std::string ascii_text() {
    std::string made;
    for (unsigned left = below(4); left > 0; --left) {
      made += static_cast<char>(below(128));
    }
    return made;
  }

  /// Zero when the bytes have run out, so that every value ends.
  unsigned below(unsigned bound) { return at_ < bytes_.size() ? bytes_[at_++] % bound : 0U; }

  const std::vector<std::uint8_t>& bytes_;
  std::size_t at_ = 0;
};

}  // namespace shimwright::json::test

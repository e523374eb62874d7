#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shimwright::vehicle {

/// The characters of a text, each as its UTF-8.
[[nodiscard]] std::vector<std::string_view> characters_of(std::string_view text);

[[nodiscard]] bool is_white_space(std::string_view character);
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// A character that may stand in a VIN: A to Z without I, O and Q, or a digit.
[[nodiscard]] bool is_legal(char each);

/// A key with what looks like another character put right: O and Q to 0, I to 1, Cyrillic and Greek capitals (and small
/// letters that look like their capital) to Latin.
[[nodiscard]] std::string without_look_alikes(std::string_view key);

}  // namespace shimwright::vehicle

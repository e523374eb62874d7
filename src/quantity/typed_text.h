#pragma once

#include <string>
#include <string_view>

namespace shimwright::quantity {

/// Full-width digits, marks and signs and U+2212 as ASCII, every kind of white space as a space, none at the ends.
[[nodiscard]] std::string folded_and_trimmed(std::string_view typed);

/// ASCII letters in lower case, runs of spaces as one.
[[nodiscard]] std::string in_lower_case(std::string_view text);

[[nodiscard]] bool is_digit(char each);
/// The decimal mark: comma or point.
[[nodiscard]] bool is_mark(char each);
[[nodiscard]] bool is_sign(char each);

}  // namespace shimwright::quantity

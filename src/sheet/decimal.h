#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace shimwright::sheet {

inline constexpr int most_decimal_places = 6;
inline constexpr std::int64_t millionths_of_one = 1'000'000;
/// From here on the shim engine refuses a number: 10 000.
inline constexpr std::int64_t millionths_out_of_range = 10'000 * millionths_of_one;

/// A plain decimal, point or comma as its mark, up to six places, in millionths: `0.003` is 3000. Exact, whatever the
/// locale; nothing for anything else and from 10 000 on.
[[nodiscard]] std::optional<std::int64_t> millionths_from(std::string_view text);

/// The shortest decimal that says it: 3000 is `0.003`.
[[nodiscard]] std::string decimal_text(std::int64_t millionths);

/// Both operands are exact in a double, so the division gives the double nearest to the decimal.
[[nodiscard]] constexpr double as_number(std::int64_t millionths) {
  return static_cast<double>(millionths) / static_cast<double>(millionths_of_one);
}

}  // namespace shimwright::sheet

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace shimwright::store {

/// Where a search stands in a text, in characters of the text as it is shown.
struct FoundMark {
  std::vector<std::size_t> held;      ///< the characters that were sought
  std::vector<std::size_t> forgiven;  ///< of these, the one that differs or the two that are swapped; none: exact
  friend bool operator==(const FoundMark&, const FoundMark&) = default;
};

/// As Store::search() compares, the last such place; nothing where the text does not hold it.
[[nodiscard]] std::optional<FoundMark> found_mark(const std::string& shown, const std::string& sought);

}  // namespace shimwright::store

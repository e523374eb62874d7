#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

namespace shimwright::shim {

/// The names of an enumeration as they stand in files; one table for both directions.
template <class Enumeration, std::size_t count>
class NameTable {
 public:
  using Entry = std::pair<Enumeration, std::string_view>;

  constexpr explicit NameTable(std::array<Entry, count> entries) : entries_(entries) {}

  [[nodiscard]] constexpr std::string_view name_of(Enumeration wanted) const {
    for (const auto& entry : entries_) {
      if (entry.first == wanted) {
        return entry.second;
      }
    }
    return {};
  }

  [[nodiscard]] constexpr std::optional<Enumeration> named(std::string_view name) const {
    for (const auto& entry : entries_) {
      if (entry.second == name) {
        return entry.first;
      }
    }
    return std::nullopt;
  }

 private:
  std::array<Entry, count> entries_;
};

}  // namespace shimwright::shim

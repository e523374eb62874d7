#pragma once

#include <map>
#include <string>
#include <string_view>

namespace shimwright::sheet {

/// A text of a sheet in one or more languages (ISO 639 codes). English is always there.
struct Text {
  std::map<std::string, std::string> by_language;

  /// In that language, else in English.
  [[nodiscard]] const std::string& in(std::string_view language) const;
  [[nodiscard]] const std::string& in_english() const { return in("en"); }

  friend bool operator==(const Text&, const Text&) = default;
};

}  // namespace shimwright::sheet

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"

namespace shimwright::sheet {

/// One value that differs between two issues of a sheet.
struct Difference {
  Message section;
  Message heading;  ///< of the part or row it stands in; blank where it has none
  Message label;
  std::string language;
  std::string unit;
  std::optional<std::string> before;  ///< nothing where there is no such field
  std::optional<std::string> after;
  friend bool operator==(const Difference&, const Difference&) = default;
};

struct Comparison {
  std::vector<Difference> differences;
  std::size_t same = 0;  ///< how many values are the same in both
};

/// Two files side by side, in the order of the later one, then what only the earlier one has. Rows are found again by
/// their names, not by where they stand. What tells issues apart anyway (id, number) is left out.
[[nodiscard]] Comparison compare(SheetKind kind, const std::string& before, const std::string& after);

}  // namespace shimwright::sheet

#pragma once

#include <string>

#include "shimwright/quantity/error.h"

namespace shimwright::sheet {

/// Who did something, and on which day of the calendar there (ISO date).
struct OnDay {
  std::string person;  ///< id; blank where nobody was known
  std::string day;
  friend bool operator==(const OnDay&, const OnDay&) = default;
};

/// Whether a check counts before an issue is used on a real job, and whether it was a second person's: somebody else on
/// the same day or later, or who entered it on a later day. Codes: `check_too_soon`, `nobody`.
[[nodiscard]] Result<bool> check_counts(const OnDay& entered, const OnDay& checked);

}  // namespace shimwright::sheet

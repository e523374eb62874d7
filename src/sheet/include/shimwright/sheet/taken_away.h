#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::sheet {

/// What keeps from harm on a job sheet.
enum class Guard { caution, hold_point };
/// `caution`, `hold_point`.
[[nodiscard]] std::string_view name_of(Guard guard);

/// A caution or hold point that an issue has no longer.
struct TakenAway {
  std::string step;  ///< id of the step it stood at
  Guard guard = Guard::caution;
  std::string text;    ///< English: the hazard of a caution, the title of a step that was a hold point
  std::string reason;  ///< blank while nobody gave one
  friend bool operator==(const TakenAway&, const TakenAway&) = default;
};

/// What stood on `before` and stands on `after` no longer, in the order of `before`, without reasons. A caution whose
/// English words differ counts as another one; a step taken out takes along what stood at it.
[[nodiscard]] std::vector<TakenAway> taken_away(const JobSheet& before, const JobSheet& after);

/// Each with the reason given for it in `reasons`. Code: `no_reason` (the place is the step).
[[nodiscard]] Result<std::vector<TakenAway>> with_reasons(std::vector<TakenAway> lost,
                                                          const std::vector<TakenAway>& reasons);
/// What taken_away() finds, with its reasons.
[[nodiscard]] Result<std::vector<TakenAway>> taken_away_for(const JobSheet& before, const JobSheet& after,
                                                            const std::vector<TakenAway>& reasons);

}  // namespace shimwright::sheet

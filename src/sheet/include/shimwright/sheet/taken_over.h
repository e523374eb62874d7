#pragma once

#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"
#include "shimwright/sheet/taken_away.h"

/// Stages that a job sheet takes over from another one.
namespace shimwright::sheet {

/// The stage of that id out of a job sheet's file, put before the stage at `before` (`/stages/3`). It comes with all
/// its steps, in the languages of the draft; a short name the draft has already gets the lowest free number at its end,
/// also where the stage refers to it. What comes from a demonstration sheet makes the draft one. Codes:
/// `unknown_stage`, `too_many` (stages).
[[nodiscard]] Result<MovedRow> with_stage(const SheetDraft& draft, const std::string& file, const std::string& stage,
                                          const std::string& before);

/// Cautions and hold points that steps came with when they were taken over, and have no longer; without reasons.
[[nodiscard]] std::vector<TakenAway> taken_away_since_taken_over(const SheetDraft& draft);

}  // namespace shimwright::sheet

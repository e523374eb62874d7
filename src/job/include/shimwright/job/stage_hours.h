#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "shimwright/job/state.h"

namespace shimwright::job {

/// Time spent in a stage, as the entries tell it.
struct StageTime {
  std::string stage;  ///< id
  std::int64_t minutes = 0;
};

/// By stage, in the sheet's order, stages without time left out. The time before an entry belongs to that entry's step;
/// while the job lay parked, and beyond two hours without an entry, nobody is taken to have worked on it.
[[nodiscard]] std::vector<StageTime> stage_hours(const JobState& state);

}  // namespace shimwright::job

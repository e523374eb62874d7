#pragma once

#include <vector>

#include "shimwright/job/state.h"

namespace shimwright::job {

/// A job before its first entry.
[[nodiscard]] JobState begin(Sheets sheets);

/// What an entry makes of a job. Total: whatever was once stored is taken, never refused; what has no effect any more
/// (an unknown step of an old sheet) only joins the trace.
[[nodiscard]] JobState evolve(JobState state, const Entry& entry);

[[nodiscard]] JobState fold(Sheets sheets, const std::vector<Entry>& entries);

}  // namespace shimwright::job

#pragma once

#include "shimwright/job/state.h"

namespace shimwright::job {

/// The first assembly whose answers still count for this step: an answer given before is on the record, but asked
/// again.
[[nodiscard]] int round_start(const JobState& state, const sheet::Step& step);

}  // namespace shimwright::job

#pragma once

#include <optional>
#include <string>

#include "shimwright/bench/workbench.h"

namespace shimwright::bench {

/// What was written at this step in the latest other job on the same gearbox type: to be taken over by one key where
/// words repeat, never for a reading. Looks at the latest twenty jobs.
[[nodiscard]] Result<std::optional<std::string>> written_in_last_job(const Workbench& bench,
                                                                     const std::string& step_id);

}  // namespace shimwright::bench

#pragma once

#include <string>
#include <vector>

#include "shimwright/record/record.h"

namespace shimwright::record {

/// The record in plain sentences, in English, for the command line: the result, which shims were fitted and why, what
/// deviates and what was not measured. One sentence or two per element.
[[nodiscard]] std::vector<std::string> summary(const Record& record);

}  // namespace shimwright::record

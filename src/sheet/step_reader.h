#pragma once

#include <string>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::sheet {

/// One step of a stage, its own fields only; what hangs on other steps is for check_rules.
[[nodiscard]] Result<Step> read_step(const json::Value& value, const std::string& place);

}  // namespace shimwright::sheet

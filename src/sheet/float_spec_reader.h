#pragma once

#include <string>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::sheet {

/// The section `float` of a side. Codes beyond those of the fields: `limits_order`, `outside_limits`, `repeated_angle`.
[[nodiscard]] Result<FloatSpec> read_float_spec(const json::Value& value, const std::string& place);

}  // namespace shimwright::sheet

#pragma once

#include <string>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::sheet {

/// The section `lower` or `upper`. Codes beyond those of the fields: `repeated_shim`, `wrong_method`, `unknown_shim`,
/// `bin_order`, `repeated_id` (a constant), and those of read_float_spec.
[[nodiscard]] Result<SideSpec> read_side_spec(const json::Value& value, const std::string& place);

}  // namespace shimwright::sheet

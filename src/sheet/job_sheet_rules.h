#pragma once

#include "shimwright/quantity/error.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::sheet {

/// The rules over several fields or steps. The first fault in the order of the sheet; the place is the JSON pointer in
/// its file. Codes: `repeated_id`, `missing_field` (a side), `wrong_role`, `repeated_role`, `wrong_method`,
/// `repeated_measurement`, `unknown_step`, `unknown_channel`, `wrong_order`, `wrong_dimension`, `no_signature`.
[[nodiscard]] Result<void> check_rules(const JobSheet& sheet);

}  // namespace shimwright::sheet

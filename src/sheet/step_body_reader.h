#pragma once

#include <string_view>

#include "fields.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::sheet {

/// What a step of that kind asks for. Refused as `unknown_field`: a field that only another kind has; as
/// `missing_field`: one this kind needs; `unknown_word`: no such kind; `repeated_id`, `no_accepted_choice`,
/// `wrong_instrument`.
[[nodiscard]] StepBody read_step_body(Fields& step, std::string_view kind);

}  // namespace shimwright::sheet

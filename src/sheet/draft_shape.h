#pragma once

#include "shimwright/json/value.h"
#include "shimwright/sheet/draft.h"

namespace shimwright::sheet {

/// Whether a file from outside has lists, groups and texts by language where a sheet has them, so that a form can be
/// drawn of it. What they hold is judged field by field. Codes: `wrong_format` (it names none), `wrong_type`,
/// `unknown_field` (a name that drafts keep for themselves).
[[nodiscard]] Result<void> check_shape(const json::Value& file);

}  // namespace shimwright::sheet

#pragma once

#include <vector>

#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/taken_away.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

/// Every stage and step of a job sheet, with what holds it and what it warns of, below what stands on the page.
void add_job_sheet_values(widgets::Scroll& page, const sheet::JobSheet& sheet);
/// What the issue lost against the one before, and why.
void add_losses(widgets::Scroll& page, const std::vector<sheet::TakenAway>& lost);

}  // namespace shimwright::workshop

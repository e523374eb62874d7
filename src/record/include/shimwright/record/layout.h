#pragma once

#include <vector>

#include "shimwright/record/page.h"
#include "shimwright/record/record.h"

namespace shimwright::record {

/// The printed record: the result first, then what it stands on and the places for signatures; details follow on
/// further pages. Rows are never cut; each page says which job and which page of how many. The same record, paper and
/// measure give the same pages.
[[nodiscard]] std::vector<Page> lay_out(const Record& record, PaperSize paper, const TextMeasure& measure);

}  // namespace shimwright::record

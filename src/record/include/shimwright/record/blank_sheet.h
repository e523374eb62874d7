#pragma once

#include <string>
#include <vector>

#include "shimwright/record/page.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::record {

/// Whose paper it is.
struct PaperHead {
  std::string workshop_name;
  std::string workshop_address;  ///< one line
};

/// The job sheet on paper, for a day without the machine: every step with a box to tick, its cautions, and lines for
/// what it asks. Texts in that language, else in English. No step is cut by a page's end.
[[nodiscard]] std::vector<Page> lay_out_blank_sheet(const sheet::JobSheet& sheet, const PaperHead& head,
                                                    const std::string& language, PaperSize paper,
                                                    const TextMeasure& measure);

}  // namespace shimwright::record

#pragma once

#include <functional>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/record/page.h"
#include "shimwright/sheet/job_sheet.h"

namespace shimwright::record {

/// Whose paper it is.
struct PaperHead {
  std::string workshop_name;
  std::string workshop_address;  ///< one line
};

/// What it is written in: the sheet's own texts, and the words of the paper around them.
struct PaperLanguage {
  std::string code = "en";
  std::function<std::string(const Message&)> say = [](const Message& message) { return message.in_english(); };
};

/// The job sheet on paper, for a day without the machine: every step with a box to tick, its cautions, and lines for
/// what it asks. Texts the sheet lacks in that language are in English. No step is cut by a page's end.
[[nodiscard]] std::vector<Page> lay_out_blank_sheet(const sheet::JobSheet& sheet, const PaperHead& head,
                                                    const PaperLanguage& language, PaperSize paper,
                                                    const TextMeasure& measure);

}  // namespace shimwright::record

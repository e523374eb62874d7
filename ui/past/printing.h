#pragma once

#include <memory>
#include <vector>

#include <QPrinter>

#include "page_run.h"
#include "shimwright/past/record_ways.h"
#include "shimwright/print/fonts.h"
#include "shimwright/record/record.h"
#include "shimwright/record/shift_slip.h"
#include "shimwright/store/backup.h"

namespace shimwright::past {

/// Writes the record to that file, in any thread; gives whether it came to its end and was not stopped before. Code:
/// `cannot_write`.
[[nodiscard]] Result<bool> write_to_file(const record::Record& record, const std::string& path, record::PaperSize paper,
                                         const print::Fonts& fonts, const store::BackupWatch& watch);

/// A printer set up for a record, before a person is asked.
[[nodiscard]] std::unique_ptr<QPrinter> printer_for(const record::Record& record, record::PaperSize paper);
/// The steps that print the record, or the pages of it the person chose, on the paper the printer was set to; on
/// another size than A4 and Letter it is laid out for `paper`. The fonts must outlive the steps.
[[nodiscard]] PageSteps steps_to_printer(std::unique_ptr<QPrinter> printer, const record::Record& record,
                                         record::PaperSize paper, const print::Fonts& fonts);

/// A printer set up for the slip of a job, and the steps that print it on A5 whatever was chosen: a slip is cut to size
/// more easily than it is enlarged.
[[nodiscard]] std::unique_ptr<QPrinter> printer_for_slip(const record::ShiftSlip& slip);
[[nodiscard]] PageSteps slip_to_printer(std::unique_ptr<QPrinter> printer, const record::ShiftSlip& slip,
                                        const print::Fonts& fonts);

}  // namespace shimwright::past

#pragma once

#include <string>

#include "shimwright/record/page.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/store/store.h"

namespace shimwright::workshop {

/// Writes the sheet as a PDF to fill in by hand, with the workshop's name at its head. Codes: those of
/// print::write_pdf() and store::Registers::workshop().
[[nodiscard]] Result<void> save_blank_sheet(store::Store& store, const sheet::JobSheet& sheet, const std::string& path,
                                            record::PaperSize paper);

}  // namespace shimwright::workshop

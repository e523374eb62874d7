#pragma once

#include <string>

#include "shimwright/print/pdf_writing.h"
#include "shimwright/quantity/error.h"
#include "shimwright/record/page.h"
#include "shimwright/record/record.h"

namespace shimwright::print {

/// Writes the record as a PDF with its fonts embedded. The file appears under its name when it is complete and synced,
/// never half; an older one of that name is replaced then. Needs a QGuiApplication, no screen and no network.
/// Refused: `font_missing`, `file_in_the_way` (anything but a PDF), `cannot_write`; the place is the path.
[[nodiscard]] Result<void> write_pdf(const record::Record& record, const std::string& path,
                                     record::PaperSize paper = record::PaperSize::a4);
/// The same for pages of another kind. Codes: `file_in_the_way`, `cannot_write`.
[[nodiscard]] Result<void> write_pdf(Document document, const std::string& path, record::PaperSize paper,
                                     const Fonts& fonts);

}  // namespace shimwright::print

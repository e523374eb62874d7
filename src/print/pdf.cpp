#include "shimwright/print/pdf.h"

#include "shimwright/print/pdf_writing.h"

namespace shimwright::print {

Result<void> write_pdf(const record::Record& record, const std::string& path, record::PaperSize paper) {
  const auto fonts = load_fonts();
  if (!fonts) {
    return tl::make_unexpected(fonts.error());
  }
  auto writing = PdfWriting::begin(record, path, paper, *fonts);
  if (!writing) {
    return tl::make_unexpected(writing.error());
  }
  while ((*writing)->pages_drawn() < (*writing)->page_count()) {
    if (auto drawn = (*writing)->next_page(); !drawn) {
      return drawn;
    }
  }
  return (*writing)->finish();
}

}  // namespace shimwright::print

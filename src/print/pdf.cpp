#include "shimwright/print/pdf.h"

#include <utility>

namespace shimwright::print {

Result<void> write_pdf(const record::Record& record, const std::string& path, record::PaperSize paper) {
  const auto fonts = load_fonts();
  if (!fonts) {
    return tl::make_unexpected(fonts.error());
  }
  return write_pdf(document_of(record, paper, *fonts), path, paper, *fonts);
}

Result<void> write_pdf(Document document, const std::string& path, record::PaperSize paper, const Fonts& fonts) {
  auto writing = PdfWriting::begin(std::move(document), path, paper, fonts);
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

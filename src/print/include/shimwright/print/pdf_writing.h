#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QPdfWriter>
#include <QSaveFile>

#include "shimwright/print/fonts.h"
#include "shimwright/print/page_by_page.h"
#include "shimwright/quantity/error.h"
#include "shimwright/record/page.h"
#include "shimwright/record/record.h"

namespace shimwright::print {

/// Writes a record as a PDF page by page, as write_pdf() does in one go. The file appears under its name with finish();
/// given up before, it leaves nothing behind, and an older file of that name as it was.
class PdfWriting {
 public:
  /// The fonts must outlive it. Code: `cannot_write`.
  [[nodiscard]] static Result<std::unique_ptr<PdfWriting>> begin(const record::Record& record, const std::string& path,
                                                                 record::PaperSize paper, const Fonts& fonts);
  ~PdfWriting();
  PdfWriting(const PdfWriting&) = delete;
  PdfWriting& operator=(const PdfWriting&) = delete;

  [[nodiscard]] int page_count() const { return drawing_.count(); }
  [[nodiscard]] int pages_drawn() const { return drawing_.drawn(); }
  /// There must be a page not drawn yet. Code: `cannot_write`.
  [[nodiscard]] Result<void> next_page();
  /// After the last page, once. Code: `cannot_write`.
  [[nodiscard]] Result<void> finish();

 private:
  PdfWriting(const record::Record& record, const std::string& path, record::PaperSize paper, const Fonts& fonts);
  [[nodiscard]] tl::unexpected<Error> cannot_write();

  std::string path_;
  QSaveFile file_;
  QPdfWriter writer_;
  PageByPage drawing_;
  bool finished_ = false;
};

}  // namespace shimwright::print

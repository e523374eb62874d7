#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QByteArray>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "shimwright/print/fonts.h"
#include "shimwright/print/page_by_page.h"
#include "shimwright/quantity/error.h"
#include "shimwright/record/page.h"
#include "shimwright/record/record.h"

namespace shimwright::print {

/// What is laid out on paper and how it is called.
struct Document {
  std::string title;
  std::vector<record::Page> pages;
};
/// What a printer or a PDF knows that paper by.
[[nodiscard]] QPageSize page_size(record::PaperSize paper);

/// Nothing lies there, an empty file, or one that begins with these bytes: an older file of that kind.
[[nodiscard]] bool is_free_for(const std::string& path, const QByteArray& begins);
/// Whether a PDF may be written there: nothing lies there, or an older PDF. Code: `file_in_the_way`.
[[nodiscard]] Result<void> check_pdf_place(const std::string& path);

[[nodiscard]] Document document_of(const record::Record& record, record::PaperSize paper, const Fonts& fonts);

/// Writes a document as a PDF page by page, as write_pdf() does in one go. The file appears under its name with
/// finish(); given up before, it leaves nothing behind, and an older file of that name as it was.
class PdfWriting {
 public:
  /// The fonts must outlive it. Codes: `file_in_the_way`, `cannot_write`.
  [[nodiscard]] static Result<std::unique_ptr<PdfWriting>> begin(Document document, const std::string& path,
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
  PdfWriting(Document document, const std::string& path, record::PaperSize paper, const Fonts& fonts);
  [[nodiscard]] tl::unexpected<Error> cannot_write();

  std::string path_;
  QSaveFile file_;
  QPdfWriter writer_;
  PageByPage drawing_;
  bool finished_ = false;
};

}  // namespace shimwright::print

#include "printing.h"

#include <QCoreApplication>
#include <QMarginsF>
#include <QPageSize>
#include <algorithm>
#include <utility>

#include "shimwright/print/page_by_page.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/print/pdf_writing.h"
#include "shimwright/record/layout.h"
#include "shimwright/widgets/say.h"

namespace shimwright::past {

namespace {

/// A print under way; given up before its end, the printer is told so.
class Printing {
 public:
  Printing(std::unique_ptr<QPrinter> printer, std::vector<record::Page> pages, const print::Fonts& fonts)
      : printer_(std::move(printer)), drawing_(*printer_, std::move(pages), fonts) {}
  ~Printing() {
    if (!finished_) {
      printer_->abort();
    }
  }
  Printing(const Printing&) = delete;
  Printing& operator=(const Printing&) = delete;

  [[nodiscard]] Result<void> next() { return drawing_.draw_next() ? Result<void>() : fails(); }
  [[nodiscard]] Result<void> finish() {
    finished_ = drawing_.finish();
    return finished_ ? Result<void>() : fails();
  }

 private:
  static tl::unexpected<Error> fails() {
    const QString text = QCoreApplication::translate(
        "past", "The printer does not take the pages. Look at the printer, or save the record as PDF.");
    return refuse("printer_fails", "", widgets::plain(text));
  }

  std::unique_ptr<QPrinter> printer_;
  print::PageByPage drawing_;
  bool finished_ = false;
};

/// Those the person chose, counted from 1; none chosen: all.
std::vector<record::Page> chosen_pages(const QPrinter& printer, std::vector<record::Page> pages) {
  const int count = static_cast<int>(pages.size());
  if (printer.fromPage() < 1 || printer.fromPage() > count) {
    return pages;
  }
  const int last = printer.toPage() < printer.fromPage() ? count : std::min(printer.toPage(), count);
  return {pages.begin() + (printer.fromPage() - 1), pages.begin() + last};
}

record::PaperSize paper_in(const QPrinter& printer, record::PaperSize otherwise) {
  switch (printer.pageLayout().pageSize().id()) {
    case QPageSize::A4:
      return record::PaperSize::a4;
    case QPageSize::Letter:
      return record::PaperSize::letter;
    default:
      return otherwise;
  }
}

PageSteps steps_for(std::unique_ptr<QPrinter> printer, std::vector<record::Page> laid_out, const print::Fonts& fonts) {
  // The pages have their margins already.
  printer->setFullPage(true);
  auto pages = chosen_pages(*printer, std::move(laid_out));
  const int count = static_cast<int>(pages.size());
  const auto printing = std::make_shared<Printing>(std::move(printer), std::move(pages), fonts);
  return {count, [printing] { return printing->next(); }, [printing] { return printing->finish(); }};
}

}  // namespace

Result<bool> write_to_file(const record::Record& record, const std::string& path, record::PaperSize paper,
                           const print::Fonts& fonts, const store::BackupWatch& watch) {
  auto writing = print::PdfWriting::begin(print::document_of(record, paper, fonts), path, paper, fonts);
  if (!writing) {
    return tl::make_unexpected(writing.error());
  }
  const int pages = (*writing)->page_count();
  while ((*writing)->pages_drawn() < pages) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return false;
    }
    if (watch.progress) {
      watch.progress((*writing)->pages_drawn() + 1, pages);
    }
    if (auto drawn = (*writing)->next_page(); !drawn) {
      return tl::make_unexpected(drawn.error());
    }
  }
  if (watch.stop != nullptr && watch.stop->load()) {
    return false;
  }
  if (auto finished = (*writing)->finish(); !finished) {
    return tl::make_unexpected(finished.error());
  }
  return true;
}

std::unique_ptr<QPrinter> printer_for(const record::Record& record, record::PaperSize paper) {
  auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(print::page_size(paper));
  printer->setDocName(QCoreApplication::translate("past", "Record of job %1").arg(widgets::qt(record.job.number)));
  return printer;
}

PageSteps steps_to_printer(std::unique_ptr<QPrinter> printer, const record::Record& record, record::PaperSize paper,
                           const print::Fonts& fonts) {
  const print::FontMeasure measure(fonts);
  auto pages = record::lay_out(record, paper_in(*printer, paper), measure);
  return steps_for(std::move(printer), std::move(pages), fonts);
}

std::unique_ptr<QPrinter> printer_for_slip(const record::ShiftSlip& slip) {
  auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(print::page_size(record::PaperSize::a5));
  printer->setDocName(QCoreApplication::translate("past", "Slip of job %1").arg(widgets::qt(slip.number)));
  return printer;
}

PageSteps slip_to_printer(std::unique_ptr<QPrinter> printer, const record::ShiftSlip& slip, const print::Fonts& fonts) {
  return steps_for(std::move(printer), record::lay_out_shift_slip(slip, print::FontMeasure(fonts)), fonts);
}

}  // namespace shimwright::past

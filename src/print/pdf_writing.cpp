#include "shimwright/print/pdf_writing.h"

#include <QFile>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <utility>

#include "shimwright/print/page_painter.h"
#include "shimwright/record/layout.h"

namespace shimwright::print {

namespace {

void set_up(QPdfWriter& writer, const std::string& title, record::PaperSize paper) {
  writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);  // for keeping: fonts and colours inside, nothing active
  writer.setResolution(1200);
  writer.setPageSize(page_size(paper));
  writer.setPageOrientation(QPageLayout::Portrait);
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setCreator(QStringLiteral("Shimwright"));
  writer.setTitle(QString::fromStdString(title));
}

}  // namespace

QPageSize page_size(record::PaperSize paper) {
  switch (paper) {
    case record::PaperSize::letter:
      return QPageSize(QPageSize::Letter);
    case record::PaperSize::a5:
      return QPageSize(QPageSize::A5);
    case record::PaperSize::a4:
      break;
  }
  return QPageSize(QPageSize::A4);
}

bool is_free_for(const std::string& path, const QByteArray& begins) {
  QFile there(QString::fromStdString(path));
  return !there.exists() || there.size() == 0 ||
         (there.open(QIODevice::ReadOnly) && there.read(begins.size()) == begins);
}

Result<void> check_pdf_place(const std::string& path) {
  if (is_free_for(path, "%PDF-")) {
    return {};
  }
  return refuse(
      "file_in_the_way", path,
      SHIMWRIGHT_TEXT("print", "Something other than a PDF lies there and is not written over; choose another name."));
}

Document document_of(const record::Record& record, record::PaperSize paper, const Fonts& fonts) {
  return {"Clutch pack job record " + record.job.number, record::lay_out(record, paper, FontMeasure(fonts))};
}

PdfWriting::PdfWriting(Document document, const std::string& path, record::PaperSize paper, const Fonts& fonts)
    : path_(path),
      file_(QString::fromStdString(path)),
      writer_(&file_),
      drawing_(writer_, std::move(document.pages), fonts) {
  set_up(writer_, document.title, paper);
}

PdfWriting::~PdfWriting() {
  if (!finished_ && file_.isOpen()) {
    // Before the writer ends its file: what it still writes then goes nowhere.
    file_.cancelWriting();
  }
}

Result<std::unique_ptr<PdfWriting>> PdfWriting::begin(Document document, const std::string& path,
                                                      record::PaperSize paper, const Fonts& fonts) {
  if (auto free = check_pdf_place(path); !free) {
    return tl::make_unexpected(free.error());
  }
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  auto writing = std::unique_ptr<PdfWriting>(new PdfWriting(std::move(document), path, paper, fonts));
  if (!writing->file_.open(QIODevice::WriteOnly)) {
    return writing->cannot_write();
  }
  return writing;
}

Result<void> PdfWriting::next_page() {
  if (!drawing_.draw_next()) {
    return cannot_write();
  }
  return {};
}

Result<void> PdfWriting::finish() {
  if (!drawing_.finish() || !file_.commit()) {
    return cannot_write();
  }
  finished_ = true;
  return {};
}

tl::unexpected<Error> PdfWriting::cannot_write() {
  return refuse(
      "cannot_write", path_,
      SHIMWRIGHT_TEXT("print", "The record cannot be written here ({0}); choose another folder or make room."),
      {file_.errorString().toStdString()});
}

}  // namespace shimwright::print

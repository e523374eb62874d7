#include "shimwright/print/pdf.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "shimwright/print/page_painter.h"
#include "shimwright/record/layout.h"

namespace shimwright::print {

namespace {

tl::unexpected<Error> cannot_write(const std::string& path, const QString& why) {
  return refuse(
      "cannot_write", path,
      SHIMWRIGHT_TEXT("print", "The record cannot be written here ({0}); choose another folder or make room."),
      {why.toStdString()});
}

void set_up(QPdfWriter& writer, const record::Record& record, record::PaperSize paper) {
  writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);  // for keeping: fonts and colours inside, nothing active
  writer.setResolution(1200);
  writer.setPageSize(QPageSize(paper == record::PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter));
  writer.setPageOrientation(QPageLayout::Portrait);
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setCreator(QStringLiteral("Shimwright"));
  writer.setTitle(QStringLiteral("Clutch pack job record %1").arg(QString::fromStdString(record.job.number)));
}

}  // namespace

Result<void> write_pdf(const record::Record& record, const std::string& path, record::PaperSize paper) {
  const auto fonts = load_fonts();
  if (!fonts) {
    return tl::make_unexpected(fonts.error());
  }
  const FontMeasure measure(*fonts);
  const auto pages = record::lay_out(record, paper, measure);
  QSaveFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::WriteOnly)) {
    return cannot_write(path, file.errorString());
  }
  {
    QPdfWriter writer(&file);
    set_up(writer, record, paper);
    if (!draw_pages(writer, pages, *fonts)) {
      file.cancelWriting();
      return cannot_write(path, file.errorString());
    }
  }
  if (!file.commit()) {
    return cannot_write(path, file.errorString());
  }
  return {};
}

}  // namespace shimwright::print

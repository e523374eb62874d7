#include "shimwright/print/pdf.h"

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <catch2/catch.hpp>

#include "sample_job.h"
#include "sealed_sample.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/record/layout.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::PaperSize;

namespace {

/// What a tool of poppler-utils says about the file.
QString said_by(const QString& tool, const QStringList& arguments) {
  QProcess process;
  process.start(tool, arguments);
  REQUIRE(process.waitForFinished());
  REQUIRE(process.exitStatus() == QProcess::NormalExit);
  REQUIRE(process.exitCode() == 0);
  return QString::fromUtf8(process.readAllStandardOutput());
}

QString text_of(const QString& path) {
  return said_by("pdftotext", {"-layout", path, "-"});
}

int page_count(const QString& path) {
  const QRegularExpression pages("Pages:\\s+(\\d+)");
  return pages.match(said_by("pdfinfo", {path})).captured(1).toInt();
}

/// A record written into a folder of its own.
class Written {
 public:
  explicit Written(const Bench& bench, PaperSize paper = PaperSize::a4) : path(folder.filePath("record.pdf")) {
    const auto written = print::write_pdf(record_of(bench), path.toStdString(), paper);
    INFO((written ? std::string() : written.error().in_english()));
    REQUIRE(written);
  }

  QTemporaryDir folder;
  QString path;
};

}  // namespace

TEST_CASE("a finished job gives a PDF with every digit as text") {
  const Written file(finished_job());
  const QString text = text_of(file.path);
  for (const char* digits : {"1.702", "1.799", "1.601", "1.952", "1.751", "0.93", "0.055", "9.5 N·m", "10.0 N·m",
                             "6.31 mm", "TESTVN009TA030417", "121400 km", "−0.10 mm"}) {
    INFO(digits);
    CHECK(text.contains(QString::fromUtf8(digits)));
  }
  CHECK(text.contains("Both discs free within limits at the second assembly."));
  CHECK(page_count(file.path) >= 1);
  CHECK(page_count(file.path) <= 3);
}

TEST_CASE("demonstration values are said on each page") {
  const Written file(long_job());
  for (int page = 1; page <= page_count(file.path); ++page) {
    const QString number = QString::number(page);
    const QString text = said_by("pdftotext", {"-f", number, "-l", number, "-raw", file.path, "-"});
    CHECK(text.contains("DEMONSTRATION VALUES"));
  }
}

TEST_CASE("fonts are embedded, and only the built-in type is there") {
  const Written file(finished_job());
  const QStringList lines = said_by("pdffonts", {file.path}).split('\n', Qt::SkipEmptyParts).mid(2);
  REQUIRE(lines.size() == 2);
  for (const QString& line : lines) {
    CHECK(line.contains("OpenSans"));
    CHECK(line.contains(QRegularExpression("yes\\s+\\w+\\s+yes\\s+\\d+\\s+\\d+$")));  // embedded, and readable as text
  }
}

TEST_CASE("paper sizes") {
  CHECK(said_by("pdfinfo", {Written(open_job()).path}).contains("(A4)"));
  const Written letter(open_job(), PaperSize::letter);
  CHECK(said_by("pdfinfo", {letter.path}).contains("612 x 792 pts (letter)"));
  CHECK(said_by("pdfinfo", {letter.path}).contains("Clutch pack job record 2041"));
}

TEST_CASE("a record that cannot be written leaves nothing behind") {
  QTemporaryDir folder;
  const auto refused = print::write_pdf(record_of(open_job()), folder.filePath("no/such/place.pdf").toStdString());
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == "cannot_write");
  CHECK(refused.error().place == folder.filePath("no/such/place.pdf").toStdString());
  CHECK(QDir(folder.path()).isEmpty());
}

TEST_CASE("a record replaces the older one of its name") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.pdf");
  REQUIRE(print::write_pdf(record_of(open_job()), path.toStdString()));
  const QString before = text_of(path);
  REQUIRE(print::write_pdf(record_of(finished_job()), path.toStdString()));
  CHECK(text_of(path) != before);
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 1);
}

namespace {

/// The number of the page with the code, and the code.
std::pair<QString, record::Code> code_in(const std::vector<record::Page>& pages) {
  for (std::size_t at = 0; at < pages.size(); ++at) {
    for (const record::Element& element : pages[at].elements) {
      if (const auto* code = std::get_if<record::Code>(&element)) {
        return {QString::number(at + 1), *code};
      }
    }
  }
  return {};
}

/// How many squares differ on a page drawn with 10 pixels a millimetre.
int squares_other_than(const record::Code& code, const QImage& page) {
  int count = 0;
  const double square = code.box.width_mm / code.side;
  std::size_t at = 0;
  for (int row = 0; row < code.side; ++row) {
    for (int column = 0; column < code.side; ++column) {
      const double x = code.box.x_mm + square * (column + 0.5);
      const double y = code.box.y_mm + square * (row + 0.5);
      const int grey = page.pixelColor(static_cast<int>(x * 10), static_cast<int>(y * 10)).lightness();
      count += (grey < 128) == code.dark[at++] ? 0 : 1;
    }
  }
  return count;
}

}  // namespace

TEST_CASE("a sealed record gives a PDF whose code is square for square that of the seal, and whose seal can be read") {
  const record::Record record = sealed_record(true);
  QTemporaryDir folder;
  const QString path = folder.filePath("record.pdf");
  REQUIRE(print::write_pdf(record, path.toStdString()));
  const QString text = said_by("pdftotext", {"-raw", path, "-"}).simplified();
  for (const std::string& words :
       {record.seal->groups, record.addenda.front().groups, std::string("0.1 l of oil topped up"),
        std::string("Technician M. Kell, MK, 24 Nov 2026 16:05 +00:00"), std::string("Reprint: printed again")}) {
    INFO(words);
    CHECK(text.contains(QString::fromStdString(words)));
  }
  CHECK_FALSE(text.contains("draft"));
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const auto pages = record::lay_out(record, PaperSize::a4, print::FontMeasure(*fonts));
  const auto [number, code] = code_in(pages);
  said_by("pdftoppm",
          {"-png", "-gray", "-r", "254", "-singlefile", "-f", number, "-l", number, path, folder.filePath("page")});
  CHECK(code.side > 0);
  CHECK(squares_other_than(code, QImage(folder.filePath("page.png"))) == 0);
}

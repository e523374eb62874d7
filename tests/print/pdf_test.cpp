#include "shimwright/print/pdf.h"

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <catch2/catch.hpp>

#include "sample_job.h"

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

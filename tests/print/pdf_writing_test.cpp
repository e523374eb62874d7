#include "shimwright/print/pdf_writing.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::unique_ptr<print::PdfWriting> begun(const QString& path, const print::Fonts& fonts) {
  auto writing = print::PdfWriting::begin(print::document_of(record_of(long_job()), record::PaperSize::a4, fonts),
                                          path.toStdString(), record::PaperSize::a4, fonts);
  REQUIRE(writing);
  return std::move(*writing);
}

QByteArray content_of(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

TEST_CASE("a record written page by page lies there when it is finished, not before") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  QTemporaryDir folder;
  const QString path = folder.filePath("record.pdf");
  auto writing = begun(path, *fonts);
  REQUIRE(writing->page_count() > 3);
  while (writing->pages_drawn() < writing->page_count()) {
    REQUIRE(writing->next_page());
    CHECK_FALSE(QFile::exists(path));
  }
  REQUIRE(writing->finish());
  CHECK(content_of(path).startsWith("%PDF"));
  CHECK(content_of(path).trimmed().endsWith("%%EOF"));
}

TEST_CASE("a record given up leaves nothing behind, and the older file as it was") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  QTemporaryDir folder;
  const QString path = folder.filePath("record.pdf");
  begun(path, *fonts).reset();
  CHECK(QDir(folder.path()).isEmpty());

  QFile older(path);
  REQUIRE(older.open(QIODevice::WriteOnly));
  older.write("%PDF-older");
  older.close();
  auto writing = begun(path, *fonts);
  REQUIRE(writing->next_page());
  writing.reset();
  CHECK(content_of(path) == "%PDF-older");
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 1);
}

TEST_CASE("anything but an older PDF is not written over") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  QTemporaryDir folder;
  const QString path = folder.filePath("workshop.shimwright");
  CHECK(print::check_pdf_place(path.toStdString()));
  for (const QByteArray& content :
       {QByteArray("SQLite format 3"), QByteArray("%PD"), QByteArray("Dear Sir or Madam")}) {
    QFile there(path);
    REQUIRE(there.open(QIODevice::WriteOnly));
    there.write(content);
    there.close();
    const auto writing =
        print::PdfWriting::begin(print::document_of(record_of(long_job()), record::PaperSize::a4, *fonts),
                                 path.toStdString(), record::PaperSize::a4, *fonts);
    REQUIRE_FALSE(writing);
    CHECK(writing.error().code == "file_in_the_way");
    CHECK(content_of(path) == content);
  }
}

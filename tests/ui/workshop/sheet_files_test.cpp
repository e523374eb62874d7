#include "sheet_files.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

std::string code_of_reading(const QString& path) {
  const auto read = workshop::read_sheet_file(path);
  return read ? "read" : read.error().code;
}

}  // namespace

TEST_CASE("the file of a sheet is written whole and read back byte for byte") {
  const QTemporaryDir folder;
  const std::string bytes = "{\"format\":\"x\"}\n\xC3\xA4";
  REQUIRE(workshop::write_sheet_file(folder.filePath("sheet.json"), bytes));
  CHECK(workshop::read_sheet_file(folder.filePath("sheet.json")) == bytes);
}

TEST_CASE("a file that is not there or far too large for a sheet is refused before it is read") {
  const QTemporaryDir folder;
  CHECK(code_of_reading(folder.filePath("none.json")) == "file_unreadable");
  CHECK(code_of_reading(folder.path()) == "file_unreadable");
  QFile large(folder.filePath("large.json"));
  REQUIRE(large.open(QIODevice::WriteOnly));
  REQUIRE(large.resize(qint64{17} * 1024 * 1024));
  CHECK(code_of_reading(large.fileName()) == "file_too_large");
}

TEST_CASE("where the file of a sheet cannot be written that is said, and nothing is left") {
  const QTemporaryDir folder;
  const auto written = workshop::write_sheet_file(folder.filePath("no/such/folder/sheet.json"), "{}");
  REQUIRE_FALSE(written);
  CHECK(written.error().code == "file_unwritten");
  CHECK_FALSE(QFile::exists(folder.filePath("no")));
}

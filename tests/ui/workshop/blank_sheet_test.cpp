#include "blank_sheet.h"

#include <QFile>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

sheet::JobSheet first_sheet(test::UiBench& bench) {
  const auto sheets = bench.store().registers().job_sheets();
  REQUIRE(sheets);
  auto sheet = sheet::read_job_sheet(sheets->front().json);
  REQUIRE(sheet);
  return *sheet;
}

}  // namespace

TEST_CASE("a job sheet is written as a PDF to fill in by hand") {
  test::UiBench bench;
  const QString path = bench.file("blank.pdf");
  REQUIRE(workshop::save_blank_sheet(bench.store(), first_sheet(bench), path.toStdString(), record::PaperSize::a4));
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  const QByteArray content = file.readAll();
  CHECK(content.startsWith("%PDF"));
  CHECK(content.count("/Type /Page\n") >= 5);
}

TEST_CASE("where it cannot be written, that is said and nothing lies there") {
  test::UiBench bench;
  const auto saved = workshop::save_blank_sheet(
      bench.store(), first_sheet(bench), bench.file("no/such/folder.pdf").toStdString(), record::PaperSize::letter);
  REQUIRE_FALSE(saved);
  CHECK(saved.error().code == "cannot_write");
}

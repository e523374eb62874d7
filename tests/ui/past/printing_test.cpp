#include "printing.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "qt/warning_guard.h"
#include "shimwright/store/job_record.h"
#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("a printer gets the record page by page, on the paper it was set to") {
  test::UiBench bench;
  const auto record = store::record_of(bench.store(), bench.go_to("large-gauge-fit"));
  REQUIRE(record);
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  auto printer = past::printer_for(*record, record::PaperSize::letter);
  CHECK(printer->pageLayout().pageSize().id() == QPageSize::Letter);
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(bench.file("print.pdf"));
  {
    const auto steps = past::steps_to_printer(std::move(printer), *record, record::PaperSize::letter, *fonts);
    REQUIRE(steps.pages >= 1);
    for (int page = 0; page < steps.pages; ++page) {
      CHECK(steps.next());
    }
    CHECK(steps.finish());
  }
  QFile file(bench.file("print.pdf"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll().startsWith("%PDF"));
}

TEST_CASE("of the record only the pages a person chose are printed") {
  test::UiBench bench;
  const auto record = store::record_of(bench.store(), bench.go_to(""));
  REQUIRE(record);
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  auto printer = past::printer_for(*record, record::PaperSize::a4);
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(bench.file("print.pdf"));
  printer->setFromTo(2, 2);
  CHECK(past::steps_to_printer(std::move(printer), *record, record::PaperSize::a4, *fonts).pages == 1);
}

TEST_CASE("a printer that does not take the pages is told") {
  test::UiBench bench;
  const auto record = store::record_of(bench.store(), bench.go_to("large-gauge-fit"));
  REQUIRE(record);
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  auto printer = past::printer_for(*record, record::PaperSize::a4);
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(bench.file("no/such/folder/print.pdf"));
  const test::ExpectedWarning warning("QPainter::begin(): Returned false");
  const auto steps = past::steps_to_printer(std::move(printer), *record, record::PaperSize::a4, *fonts);
  const auto printed = steps.next();
  REQUIRE_FALSE(printed);
  CHECK(printed.error().code == "printer_fails");
}

TEST_CASE("a file is written page by page, and stopped before its end it leaves nothing and an older one as it was") {
  test::UiBench bench;
  const auto record = store::record_of(bench.store(), bench.go_to("large-gauge-fit"));
  REQUIRE(record);
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const std::string path = bench.file("kept.pdf").toStdString();
  std::atomic<bool> stop = true;
  const auto stopped = past::write_to_file(*record, path, record::PaperSize::a4, *fonts, {&stop, {}});
  REQUIRE(stopped);
  CHECK_FALSE(*stopped);
  CHECK_FALSE(QFile::exists(bench.file("kept.pdf")));
  stop = false;
  std::vector<std::int64_t> pages;
  const store::BackupWatch watch{&stop, [&](std::int64_t page, std::int64_t /*of_all*/) { pages.push_back(page); }};
  const auto written = past::write_to_file(*record, path, record::PaperSize::a4, *fonts, watch);
  REQUIRE(written);
  CHECK(*written);
  REQUIRE_FALSE(pages.empty());
  CHECK(pages.front() == 1);
  const qint64 size = QFileInfo(bench.file("kept.pdf")).size();
  const store::BackupWatch stops{&stop, [&](std::int64_t page, std::int64_t of_all) { stop = page == of_all; }};
  const auto late = past::write_to_file(*record, path, record::PaperSize::letter, *fonts, stops);
  REQUIRE(late);
  CHECK_FALSE(*late);
  CHECK(QFileInfo(bench.file("kept.pdf")).size() == size);
  const auto nowhere =
      past::write_to_file(*record, path + "/no/kept.pdf", record::PaperSize::a4, *fonts, store::BackupWatch());
  REQUIRE_FALSE(nowhere);
  CHECK(nowhere.error().code == "cannot_write");
}

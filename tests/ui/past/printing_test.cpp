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

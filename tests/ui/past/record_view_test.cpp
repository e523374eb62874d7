#include "shimwright/past/record_view.h"

#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPrinter>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>

#include "page_column.h"
#include "shimwright/store/seal.h"
#include "shimwright/widgets/style.h"
#include "ui_bench.h"
#include "worked.h"

using namespace shimwright;

namespace {

struct RecordBench {
  explicit RecordBench(const std::string& until = "")
      : job(bench.go_to(until)),
        view(bench.store(), {[this](const QString& suggested) {
                               suggestion = suggested;
                               return file;
                             },
                             [this](QPrinter& printer) {
                               printer.setOutputFormat(QPrinter::PdfFormat);
                               printer.setOutputFileName(file);
                               return !file.isEmpty();
                             },
                             record::PaperSize::a4}) {
    view.resize(1000, 640);
    view.show_job(job);
    view.show();
    REQUIRE(QTest::qWaitForWindowActive(&view));
  }

  void press(const char* name) const {
    auto* button = view.findChild<QAbstractButton*>(name);
    REQUIRE(button != nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
  }
  [[nodiscard]] QString text(const char* name) const { return view.findChild<QLabel*>(name)->text(); }
  [[nodiscard]] QScrollBar* scroll() const { return view.findChild<QScrollArea*>("pages")->verticalScrollBar(); }
  [[nodiscard]] bool stop_shown() const { return view.findChild<QAbstractButton*>("button-stop")->isVisible(); }

  test::UiBench bench;
  QString file;
  QString suggestion;
  std::string job;
  past::RecordView view;
};

}  // namespace

TEST_CASE("the record is turned page by page with keys and buttons") {
  RecordBench record;
  CHECK(record.text("page-place").startsWith("page 1 of "));
  CHECK(record.scroll()->maximum() > 0);
  QTest::keyClick(&record.view, Qt::Key_PageDown);
  const int once = record.scroll()->value();
  CHECK(once > 0);
  record.press("button-page-down");
  CHECK(record.scroll()->value() > once);
  record.press("button-page-up");
  CHECK(record.scroll()->value() == once);
  QTest::keyClick(&record.view, Qt::Key_End);
  CHECK(record.scroll()->value() == record.scroll()->maximum());
  CHECK_FALSE(record.text("page-place").startsWith("page 1 of "));
  QTest::keyClick(&record.view, Qt::Key_Home);
  CHECK(record.scroll()->value() == 0);
}

TEST_CASE("saved as PDF, it is said where; the window is usable meanwhile") {
  RecordBench record;
  record.file = record.bench.file("out/kept.pdf");
  QDir().mkpath(record.bench.file("out"));
  record.press("button-save-pdf");
  CHECK(record.suggestion.endsWith(".pdf"));
  CHECK(record.stop_shown());
  CHECK_FALSE(QFile::exists(record.file));
  record.press("button-zoom");
  REQUIRE(QTest::qWaitFor([&] { return !record.stop_shown(); }));
  CHECK(QFile::exists(record.file));
  CHECK(record.text("record-result").contains("kept.pdf"));
}

TEST_CASE("stopped, nothing lies there") {
  RecordBench record;
  record.file = record.bench.file("out/kept.pdf");
  QDir().mkpath(record.bench.file("out"));
  record.press("button-save-pdf");
  REQUIRE(record.stop_shown());
  record.press("button-stop");
  test::wait_for_work(record.view);
  CHECK_FALSE(record.stop_shown());
  // A machine that was faster than the finger has written all of it; anything between is none.
  const bool stopped = record.text("record-result").contains("Stopped");
  CHECK(stopped == QDir(record.bench.file("out")).isEmpty());
  CHECK((stopped || record.text("record-result").startsWith("Saved: ")));
}

TEST_CASE("another record is shown while one is written: nothing of it is said there, and nothing half lies about") {
  RecordBench record;
  record.file = record.bench.file("out/kept.pdf");
  QDir().mkpath(record.bench.file("out"));
  record.press("button-save-pdf");
  record.view.show_job(record.bench.go_to("large-gauge-fit"));
  CHECK_FALSE(record.stop_shown());
  test::wait_for_work(record.view);
  CHECK(record.text("record-result").isEmpty());
  const auto there = QDir(record.bench.file("out")).entryList(QDir::Files);
  CHECK((there.isEmpty() || there == QStringList{"kept.pdf"}));
  record.press("button-save-pdf");
  test::wait_for_work(record.view);
  CHECK(record.text("record-result").contains("kept.pdf"));
}

TEST_CASE("thrown away while it writes and while it reads photos, the page waits and nothing half lies about") {
  test::UiBench bench;
  const std::string job = bench.go_to("");
  QDir().mkpath(bench.file("out"));
  for (const char* name : {"button-save-pdf", "button-photos"}) {
    past::RecordView view(bench.store(), {[&](const QString&) { return bench.file("out/kept.pdf"); },
                                          [](QPrinter&) { return false; }, record::PaperSize::a4});
    view.show_job(job);
    view.findChild<QAbstractButton*>(name)->click();
    CHECK_FALSE(test::at_rest(view));
  }
  QCoreApplication::processEvents();
  const auto there = QDir(bench.file("out")).entryList(QDir::Files);
  CHECK((there.isEmpty() || there == QStringList{"kept.pdf"}));
}

TEST_CASE("a file that cannot be written is said in place, and no file chosen changes nothing") {
  RecordBench record;
  record.press("button-save-pdf");
  CHECK(record.text("record-result").isEmpty());
  record.file = record.bench.file("no/such/folder/kept.pdf");
  record.press("button-save-pdf");
  test::wait_for_work(record.view);
  CHECK(record.text("record-result").contains("cannot be written"));
  CHECK_FALSE(record.stop_shown());
}

TEST_CASE("printing goes page by page to the printer that was chosen") {
  RecordBench record;
  record.press("button-print");
  CHECK_FALSE(record.stop_shown());
  record.file = record.bench.file("print.pdf");
  record.press("button-print");
  CHECK(record.text("record-result").startsWith("Printing page 1 of"));
  REQUIRE(QTest::qWaitFor([&] { return !record.stop_shown(); }));
  CHECK(QFile::exists(record.file));
  CHECK(record.text("record-result") == "Handed to the printer.");
}

TEST_CASE("a job under way has a slip for the next shift, a finished one has none") {
  RecordBench under_way("large-gauge-fit");
  under_way.file = under_way.bench.file("slip.pdf");
  under_way.press("button-slip");
  REQUIRE(QTest::qWaitFor([&] { return !under_way.stop_shown(); }));
  CHECK(QFile::exists(under_way.file));
  CHECK(under_way.text("record-result") == "Handed to the printer.");
  const RecordBench finished;
  CHECK(finished.view.findChild<QAbstractButton*>("button-slip")->isHidden());
}

TEST_CASE("photos come on pages of their own when they are wanted, and go again") {
  RecordBench record;
  auto* photos = record.view.findChild<QAbstractButton*>("button-photos");
  REQUIRE_FALSE(photos->isHidden());
  const auto pages = [&] { return record.text("page-place").section(' ', -1).toInt(); };
  const int without = pages();
  photos->click();
  CHECK(record.text("record-result") == "The photos are being read.");
  CHECK_FALSE(record.view.findChild<QAbstractButton*>("button-save-pdf")->isEnabled());
  CHECK(pages() == without);
  test::wait_for_work(record.view);
  CHECK(record.text("record-result").isEmpty());
  CHECK(pages() > without);
  photos->click();
  photos->click();
  photos->click();  // what was being read is wanted no more
  test::wait_for_work(record.view);
  CHECK(pages() == without);
  CHECK(record.view.findChild<QAbstractButton*>("button-save-pdf")->isEnabled());
  photos->click();
  test::wait_for_work(record.view);
  CHECK(pages() > without);
  record.file = record.bench.file("with-photos.pdf");
  record.press("button-save-pdf");
  REQUIRE(QTest::qWaitFor([&] { return !record.stop_shown(); }));
  const auto with_photos = QFileInfo(record.file).size();
  photos->click();
  CHECK(pages() == without);
  record.file = record.bench.file("without.pdf");
  record.press("button-save-pdf");
  REQUIRE(QTest::qWaitFor([&] { return !record.stop_shown(); }));
  CHECK(with_photos > QFileInfo(record.file).size());
}

TEST_CASE("Escape and Back go back") {
  RecordBench record("large-gauge-fit");
  int backs = 0;
  QObject::connect(&record.view, &past::RecordView::back, [&] { ++backs; });
  record.press("button-back");
  QTest::keyClick(&record.view, Qt::Key_Escape);
  CHECK(backs == 2);
}

TEST_CASE("a job that is not there is said so, and there is nothing to save") {
  RecordBench record("large-gauge-fit");
  record.view.show_job("01930000-0000-7000-8000-000000001000");
  CHECK_FALSE(record.text("record-result").isEmpty());
  CHECK_FALSE(record.view.findChild<QAbstractButton*>("button-save-pdf")->isEnabled());
  CHECK_FALSE(record.view.findChild<QAbstractButton*>("button-print")->isEnabled());
}

TEST_CASE("the bar fits a width of 850 pixels") {
  RecordBench record("large-gauge-fit");
  CHECK(record.view.minimumSizeHint().width() <= 850);
  record.view.resize(850, 640);
  for (const QAbstractButton* each : record.view.findChildren<QAbstractButton*>()) {
    if (each->isVisible()) {
      INFO(each->text().toStdString());
      CHECK(each->width() >= each->sizeHint().width());
      CHECK(each->height() >= widgets::pixels::target);
    }
  }
}

TEST_CASE("what is printed after sealing is the first print once, and after an addendum or later a reprint") {
  test::UiBench bench("01-smooth-day");
  const std::string job = bench.go_to("");
  const QString file = bench.file("sealed.pdf");
  past::RecordWays ways{[&](const QString&) { return file; }, [](QPrinter&) { return false; }, record::PaperSize::a4};
  ways.seal.by = [&] { return store::By{bench.workbench().person().id, bench.workbench().now()}; };
  ways.seal.rules.cost = {1, 8192};
  ways.seal.folder = [] { return std::string(); };
  past::RecordView view(bench.store(), ways);
  view.resize(1000, 640);
  view.show_job(job);
  view.show();
  REQUIRE(QTest::qWaitForWindowActive(&view));
  const auto fill = [&](const char* name, const char* text) {
    auto* field = view.findChild<QLineEdit*>(name);
    REQUIRE(field != nullptr);
    QTest::keyClicks(field, text);
  };
  const auto press = [&](const char* name) {
    auto* button = view.findChild<QAbstractButton*>(name);
    REQUIRE(button != nullptr);
    button->click();
    test::wait_for_work(view);
  };
  const auto says_reprint = [&] {
    const auto& pages = view.findChild<past::PageColumn*>()->pages();
    return std::any_of(pages.begin(), pages.end(), [](const record::Page& page) {
      return std::any_of(page.elements.begin(), page.elements.end(), [](const record::Element& each) {
        const auto* run = std::get_if<record::TextRun>(&each);
        return run != nullptr && run->text.find("eprint") != std::string::npos;
      });
    });
  };
  const auto save = [&] { press("button-save-pdf"); };
  for (const char* field : {"field-pin-1", "field-pin-1-again", "field-pin-2", "field-pin-2-again"}) {
    fill(field, "2580");
  }
  press("button-seal");
  CHECK_FALSE(says_reprint());
  save();
  CHECK(says_reprint());

  view.show_job(job);
  test::wait_for_work(view);
  CHECK(says_reprint());
  press("button-addendum");
  fill("field-addendum-reason", "found later");
  fill("field-addendum-text", "0.1 l of oil topped up");
  fill("field-pin-1", "2580");
  if (view.findChild<QLineEdit*>("field-pin-1-again") != nullptr) {
    fill("field-pin-1-again", "2580");
  }
  press("button-sign-addendum");
  CHECK(store::signed_record_of(bench.store(), job)->addenda.size() == 1);
  CHECK(says_reprint());
}

#include "shimwright/past/past_jobs.h"

#include <QLineEdit>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/store/ids.h"
#include "shimwright/store/job_in_hand.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

/// Two jobs: the script's, which is open, and a smooth one that was signed.
struct PastBench {
  test::UiBench bench{"02-bearing-not-home"};
  std::string job = bench.go_to("large-gauge-fit");
  past::PastJobs page{bench.store()};
  QLineEdit* field = page.findChild<QLineEdit*>("field-search");
  std::string number = bench.workbench().state().opened->number;
  std::string vehicle = bench.workbench().state().opened->vehicle_key;

  PastBench() {
    page.resize(1000, 640);
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    field->setFocus();
  }

  [[nodiscard]] QList<QAbstractButton*> rows() const {
    QList<QAbstractButton*> shown;
    for (QAbstractButton* each : page.findChildren<QAbstractButton*>()) {
      if (each->objectName().startsWith("result-") && each->isVisible()) {
        shown << each;
      }
    }
    return shown;
  }
  [[nodiscard]] QString above() const { return page.findChild<QLabel*>("above-results")->text(); }
};

/// One more job on the sheets of this one.
void open_like(test::UiBench& bench, const job::Opened& opened, const std::string& number) {
  store::IdSource ids;
  const store::By by{bench.workbench().person().id, bench.workbench().now()};
  auto begun = store::JobInHand::begin(bench.store(), ids.id(by.moment.at_ms), opened.sheet_hash, opened.spec_hash);
  REQUIRE(begun);
  job::OpenJob open;
  open.number = number;
  open.vehicle_typed = opened.vehicle_key;
  const auto context = begun->context(by, opened.vehicle_key);
  REQUIRE(context);
  REQUIRE(begun->execute(open, *context));
}

}  // namespace

TEST_CASE("a blank field shows the latest jobs") {
  PastBench past;
  REQUIRE(past.rows().size() == 1);
  CHECK(past.rows().front()->objectName() == QString::fromStdString("result-" + past.number));
  CHECK(past.above() == "The latest jobs");
}

TEST_CASE("the end of a vehicle number finds its job as one types, exactly or with one fault") {
  PastBench past;
  const QString end = QString::fromStdString(past.vehicle).right(6);
  QTest::keyClicks(past.field, end);
  REQUIRE(past.rows().size() == 1);
  CHECK(past.rows().front()->accessibleName().contains("exact"));
  past.field->clear();
  QTest::keyClicks(past.field, end.left(3) + (end.at(3) == '9' ? '8' : '9') + end.mid(4));
  REQUIRE(past.rows().size() == 1);
  CHECK(past.rows().front()->accessibleName().contains("one character differs"));
}

TEST_CASE("nothing found is said, and what to do") {
  PastBench past;
  QTest::keyClicks(past.field, "ZZZZZZ");
  CHECK(past.rows().isEmpty());
  CHECK(past.above().contains("No job has this"));
}

TEST_CASE("down goes into the results, Enter opens the record, up and Escape come back") {
  PastBench past;
  std::string opened;
  QObject::connect(&past.page, &past::PastJobs::open_record, [&](const std::string& job) { opened = job; });
  QTest::keyClick(past.field, Qt::Key_Down);
  QAbstractButton* const row = past.rows().front();
  CHECK(row->hasFocus());
  QTest::keyClick(row, Qt::Key_Return);
  CHECK(opened == past.job);
  QTest::keyClick(row, Qt::Key_Up);
  CHECK(past.field->hasFocus());
  QTest::keyClick(past.field, Qt::Key_Down);
  QTest::keyClick(row, Qt::Key_Escape);
  CHECK(past.field->hasFocus());
}

TEST_CASE("an open job can be taken up beside its row") {
  PastBench past;
  std::string taken;
  QObject::connect(&past.page, &past::PastJobs::take_up, [&](const std::string& job) { taken = job; });
  QTest::keyClick(past.field, Qt::Key_Down);
  QTest::keyClick(past.rows().front(), Qt::Key_Right);
  auto* button = past.page.findChild<QAbstractButton*>(QString::fromStdString("button-take-up-" + past.number));
  REQUIRE(button != nullptr);
  CHECK(button->hasFocus());
  QTest::keyClick(button, Qt::Key_Return);
  CHECK(taken == past.job);
}

TEST_CASE("for the vehicle of a closed job a new one is begun") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("");
  REQUIRE(bench.workbench().state().closed);
  const std::string number = bench.workbench().state().opened->number;
  past::PastJobs page(bench.store());
  std::string vehicle;
  QObject::connect(&page, &past::PastJobs::new_job_for, [&](const std::string& key) { vehicle = key; });
  page.show();
  auto* button = page.findChild<QAbstractButton*>(QString::fromStdString("button-new-job-" + number));
  REQUIRE(button != nullptr);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(vehicle == bench.workbench().state().opened->vehicle_key);
}

TEST_CASE("what was typed on the first page is looked for here") {
  PastBench past;
  past.page.search("ZZZZ");
  CHECK(past.field->text() == "ZZZZ");
  CHECK(past.field->hasFocus());
  CHECK(past.rows().isEmpty());
}

TEST_CASE("the vehicle of a result is reached by keys and by click") {
  PastBench past;
  std::string vehicle;
  QObject::connect(&past.page, &past::PastJobs::open_vehicle, [&](const std::string& key) { vehicle = key; });
  QTest::keyClick(past.field, Qt::Key_Down);
  QTest::keyClick(past.rows().front(), Qt::Key_Right);
  QTest::keyClick(past.page.focusWidget(), Qt::Key_Right);
  auto* button = past.page.findChild<QAbstractButton*>(QString::fromStdString("button-vehicle-" + past.number));
  REQUIRE(button != nullptr);
  REQUIRE(button->hasFocus());
  QTest::keyClick(button, Qt::Key_Return);
  CHECK(vehicle == past.vehicle);
  vehicle.clear();
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(vehicle == past.vehicle);
  QTest::keyClick(button, Qt::Key_Left);
  QTest::keyClick(past.page.focusWidget(), Qt::Key_Left);
  CHECK(past.rows().front()->hasFocus());
}

TEST_CASE("jobs behind a figure are shown until something is typed or Escape is pressed") {
  PastBench past;
  past.page.show_jobs("Nov 2026", {past.job});
  CHECK(past.above() == "Nov 2026: 1");
  CHECK(past.rows().size() == 1);
  past.page.refresh();
  CHECK(past.above() == "Nov 2026: 1");
  QTest::keyClick(past.field, Qt::Key_Escape);
  CHECK(past.above() == "The latest jobs");
  past.page.show_jobs("Pack off again", {});
  CHECK(past.above() == "Pack off again: 0");
  CHECK(past.rows().isEmpty());
  QTest::keyClicks(past.field, "TEST");
  past.field->clear();
  CHECK(past.above() == "The latest jobs");
}

TEST_CASE("of many jobs behind a figure the first are shown, and how many there are is said") {
  PastBench past;
  past.page.show_jobs("All", std::vector<std::string>(80, past.job));
  CHECK(past.above() == "All: the first 50 of 80 jobs");
  CHECK(past.rows().size() == 50);
}

TEST_CASE("a number typed on the number pad is opened by its Enter, and its arrows move") {
  PastBench past;
  std::string opened;
  QObject::connect(&past.page, &past::PastJobs::open_record, [&](const std::string& job) { opened = job; });
  QTest::keyClicks(past.field, QString::fromStdString(past.vehicle).right(6), Qt::KeypadModifier);
  QTest::keyClick(past.field, Qt::Key_Down, Qt::KeypadModifier);
  CHECK(past.rows().front()->hasFocus());
  QTest::keyClick(past.rows().front(), Qt::Key_Up, Qt::KeypadModifier);
  QTest::keyClick(past.field, Qt::Key_Enter, Qt::KeypadModifier);
  CHECK(opened == past.job);
}

TEST_CASE("of many jobs the first are shown, it is said that there are more, and they are one key away") {
  PastBench past;
  const job::Opened opened = *past.bench.workbench().state().opened;
  for (int each = 0; each < 20; ++each) {
    open_like(past.bench, opened, "XQXQ" + std::to_string(10 + each));
  }
  QTest::keyClicks(past.field, "xqxq");
  auto* more = past.page.findChild<QAbstractButton*>("button-more");
  REQUIRE(more != nullptr);
  QCoreApplication::processEvents();
  CHECK(more->isVisible());
  CHECK(past.rows().size() == 12);
  CHECK(past.above().startsWith("The first 12 jobs"));
  more->setFocus();
  QTest::keyClick(more, Qt::Key_Return);
  QCoreApplication::processEvents();
  CHECK(past.rows().size() == 20);
  CHECK(past.rows().at(12)->hasFocus());
  CHECK_FALSE(more->isVisible());
  CHECK(past.above() == "20 jobs have it");
  QTest::keyClicks(past.field, "1");
  CHECK(past.rows().size() == 12);
}

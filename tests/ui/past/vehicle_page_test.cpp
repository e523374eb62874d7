#include "shimwright/past/vehicle_page.h"

#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <catch2/catch.hpp>

#include "earlier_job.h"
#include "float_chart.h"
#include "life_row.h"
#include "ui_bench.h"
#include "vehicle_parts.h"
#include "worked.h"

using namespace shimwright;

namespace {

/// Two jobs on one vehicle: a smooth one, and one that is open.
struct VehicleBench {
  test::UiBench bench{"01-smooth-day"};
  std::string closed = bench.go_to("");
  std::string open = bench.go_to("engine-held");
  std::string vehicle = bench.workbench().state().opened->vehicle_key;
  QString chosen;
  past::VehiclePage page{bench.store(), {[this](const QString& suggestion) {
                           suggested = suggestion;
                           return chosen;
                         }}};
  QString suggested;

  VehicleBench() {
    page.resize(1000, 700);
    page.show_vehicle(vehicle);
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    test::wait_for_work(page);
    QCoreApplication::processEvents();
  }
  [[nodiscard]] QList<past::LifeRow*> rows() const {
    QList<past::LifeRow*> shown;
    for (auto* each : page.findChildren<past::LifeRow*>()) {
      if (each->isVisible()) {
        shown << each;
      }
    }
    return shown;
  }
  [[nodiscard]] QAbstractButton* button(const char* name) const {
    auto* found = page.findChild<QAbstractButton*>(QLatin1String(name));
    REQUIRE(found != nullptr);
    return found;
  }
  [[nodiscard]] QString texts() const {
    QStringList all;
    for (const auto* each : page.findChildren<QLabel*>()) {
      if (each->isVisible()) {
        all << each->text();
      }
    }
    return all.join('\n');
  }
  [[nodiscard]] QString result() const { return page.findChild<QLabel*>("export-result")->text(); }
};

}  // namespace

TEST_CASE("a vehicle's jobs stand there, the latest first, each with all that is known of it") {
  VehicleBench it;
  REQUIRE(it.rows().size() == 2);
  CHECK(it.page.findChild<QLabel*>("vehicle-title")->text() == "TESTVN006MA021188");
  const QString said = it.rows().back()->accessibleName();
  for (const char* part : {"Job 2040", "20 Nov 2026", "98640 km", "closed", "shims large ", "final float: lower 0."}) {
    INFO(part);
    CHECK(said.contains(part));
  }
  CHECK(it.rows().front()->accessibleName().contains("no float yet"));
  CHECK(it.texts().contains("Unit D7"));
}

TEST_CASE("each job's record is opened with Enter, and arrows go from job to job") {
  VehicleBench it;
  std::string opened;
  QObject::connect(&it.page, &past::VehiclePage::open_record, [&](const std::string& job) { opened = job; });
  it.rows().front()->setFocus();
  QTest::keyClick(it.rows().front(), Qt::Key_Down);
  CHECK(it.rows().back()->hasFocus());
  QTest::keyClick(it.rows().back(), Qt::Key_Return);
  CHECK(opened == it.closed);
  QTest::keyClick(it.rows().back(), Qt::Key_Up);
  CHECK(it.rows().front()->hasFocus());
  QTest::mouseClick(it.rows().front(), Qt::LeftButton);
  CHECK(opened == it.open);
}

TEST_CASE("Escape leads back, and a new job for the vehicle is one key away") {
  VehicleBench it;
  int left = 0;
  std::string begun;
  QObject::connect(&it.page, &past::VehiclePage::back, [&] { ++left; });
  QObject::connect(&it.page, &past::VehiclePage::new_job_for, [&](const std::string& key) { begun = key; });
  it.page.setFocus();
  QTest::keyClick(it.page.focusWidget(), Qt::Key_Escape);
  CHECK(left == 1);
  it.button("button-new-job")->setFocus();
  QTest::keyClick(it.button("button-new-job"), Qt::Key_Return);
  CHECK(begun == it.vehicle);
}

TEST_CASE("the chart and the table say the same numbers") {
  VehicleBench it;
  const auto history = store::vehicle_history(it.bench.store(), it.vehicle);
  REQUIRE(history);
  for (const auto& [side, name] :
       {std::pair(sheet::Side::lower, "chart-lower"), std::pair(sheet::Side::upper, "chart-upper")}) {
    const auto points = past::chart_points(*history, side);
    REQUIRE_FALSE(points.empty());
    const auto* chart = it.page.findChild<past::FloatChart*>(name);
    CHECK(chart->places().size() == points.size());
    for (const past::ChartPoint& each : points) {
      CHECK(it.texts().contains(QString::number(each.mm, 'f', 3)));
      CHECK(each.x_text == "98640 km");
    }
  }
}

TEST_CASE("without an odometer the days are the places of the points") {
  VehicleBench it;
  auto history = store::vehicle_history(it.bench.store(), it.vehicle);
  REQUIRE(history);
  for (store::JobOfVehicle& each : history->jobs) {
    each.life.odometer.reset();
  }
  for (const past::ChartPoint& each : past::chart_points(*history, sheet::Side::lower)) {
    CHECK(each.x_text == "20 Nov 2026");
  }
}

TEST_CASE("two jobs are compared, what differs is marked, and Escape leads back to the whole life") {
  VehicleBench it;
  it.button("button-compare")->setFocus();
  QTest::keyClick(it.button("button-compare"), Qt::Key_Return);
  QCoreApplication::processEvents();
  CHECK(it.texts().contains("readings differ"));
  CHECK(it.texts().contains("not there"));
  CHECK(it.rows().isEmpty());
  // No job is compared with itself.
  for (const char* other : {"button-later-first", "button-earlier-second"}) {
    QTest::keyClick(it.button(other), Qt::Key_Return);
    CHECK_FALSE(it.page.findChild<QLabel*>("comparison-result")->text().startsWith("0 of "));
  }
  QTest::keyClick(it.button("button-only-different"), Qt::Key_Return);
  CHECK_FALSE(it.page.findChild<QLabel*>("comparison-result")->text().startsWith("0 of "));
  it.button("button-compare")->setFocus();
  QTest::keyClick(it.button("button-compare"), Qt::Key_Escape);
  QCoreApplication::processEvents();
  CHECK(it.rows().size() == 2);
}

TEST_CASE("the measurements go to a file while the window is used, and a file in the way is told") {
  VehicleBench it;
  it.chosen = it.bench.file("vehicle.csv");
  QTest::mouseClick(it.button("button-export-csv"), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return it.button("button-export-csv")->isEnabled(); }, 60000));
  CHECK(it.suggested.endsWith("vehicle-TESTVN006MA021188.csv"));
  CHECK(it.result().startsWith("Saved: "));
  QFile file(it.chosen);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll().contains("TESTVN006MA021188"));
  QTest::mouseClick(it.button("button-export-json"), Qt::LeftButton);
  CHECK(it.result().contains("not written over"));
}

TEST_CASE("an export that is stopped leaves nothing") {
  VehicleBench it;
  it.chosen = it.bench.file("stopped.csv");
  QTest::mouseClick(it.button("button-export-csv"), Qt::LeftButton);
  QTest::mouseClick(it.button("button-stop"), Qt::LeftButton);
  CHECK(it.result().startsWith("Stopped"));
  CHECK_FALSE(QFile::exists(it.chosen));
}

TEST_CASE("a vehicle without jobs is shown as such, and nothing can be compared") {
  test::UiBench bench("01-smooth-day");
  past::VehiclePage page(bench.store(), {[](const QString&) { return QString(); }});
  page.show_vehicle("TESTVN117TB118822");
  test::wait_for_work(page);
  CHECK_FALSE(page.findChild<QAbstractButton*>("button-compare")->isEnabled());
  CHECK(page.findChildren<past::LifeRow*>().isEmpty());
}

TEST_CASE("the wear of a pack that was fitted here and found again is told in plain sentences") {
  test::UiBench bench("02-bearing-not-home");
  const std::string before = test::fit_the_pack_before(bench);
  bench.go_to("lower-float", 6);
  past::VehiclePage page(bench.store(), {[](const QString&) { return QString(); }});
  page.resize(1000, 700);
  page.show_vehicle("TESTVN009TA030417");
  page.show();
  REQUIRE(QTest::qWaitForWindowActive(&page));
  test::wait_for_work(page);
  QStringList said;
  for (const auto* each : page.findChildren<QLabel*>()) {
    said << each->text();
  }
  const QString all = said.join('\n').replace(QChar::Nbsp, ' ');
  CHECK(
      all.contains("Pack 22-0931, upper disc: 0.502 mm final in job 1588, 0.667 mm as found in job 2041 after "
                   "33250 km. That is 0.165 mm more"));
  CHECK(all.indexOf("Pack 22-0931, lower disc") < all.indexOf("Pack 22-0931, upper disc"));
  const auto* chart = page.findChild<past::FloatChart*>("chart-upper");
  CHECK(chart->accessibleDescription().contains("job 1588, 88150 km: as found"));
  CHECK(chart->accessibleDescription().contains("job 2041, 121400 km: as found"));
}

TEST_CASE("what was signed says so, with its addenda") {
  store::JobOfVehicle job;
  job.life.sealed = true;
  job.seal = record::SealStanding::holds;
  CHECK(past::state_words(job) == "signed");
  job.life.addenda = 1;
  CHECK(past::state_words(job) == "signed, 1 addendum");
  job.life.addenda = 2;
  CHECK(past::state_words(job) == "signed, 2 addenda");
  job.seal = record::SealStanding::key_unknown;
  CHECK(past::state_words(job) == "signed with a key not known here");
  job.seal = record::SealStanding::changed;
  CHECK(past::state_words(job) == "the seal does not hold");
  job.life.sealed = false;
  job.seal.reset();
  job.summary.standing = store::JobStanding::parked;
  job.summary.waits_for = "ring set";
  CHECK(past::state_words(job) == "waits for ring set");
}

TEST_CASE("the page is gone through by its keys, and the focus stays on it") {
  VehicleBench it;
  auto* scroll = it.page.findChild<QScrollArea*>()->verticalScrollBar();
  it.page.setFocus();
  QTest::keyClick(it.page.focusWidget(), Qt::Key_End);
  CHECK(scroll->sliderPosition() == scroll->maximum());
  QTest::keyClick(it.page.focusWidget(), Qt::Key_PageUp);
  CHECK(scroll->sliderPosition() < scroll->maximum());
  QTest::keyClick(it.page.focusWidget(), Qt::Key_Home);
  CHECK(scroll->sliderPosition() == 0);
  it.rows().front()->setFocus();
  it.button("button-compare")->click();
  CHECK(it.button("button-compare")->hasFocus());
}

TEST_CASE("older jobs than are shown are said to be there") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("engine-held");
  bench.go_to("engine-held");
  past::VehiclePage page(bench.store(), {[](const QString&) { return QString(); }, 1});
  page.show_vehicle("TESTVN006MA021188");
  test::wait_for_work(page);
  CHECK(page.findChildren<past::LifeRow*>().size() == 1);
  const auto* older = page.findChild<QLabel*>("vehicle-older");
  CHECK_FALSE(older->isHidden());
  CHECK(older->text().contains("not shown here: 1."));
}

TEST_CASE(
    "while a vehicle's jobs are read that is said, nothing of the one before stands there, and only the last counts") {
  VehicleBench it;
  const auto* reading = it.page.findChild<QLabel*>("vehicle-reading");
  CHECK_FALSE(reading->isVisible());
  it.page.show_vehicle("TESTVN117TB118822");
  CHECK(reading->isVisible());
  CHECK(it.page.findChild<QLabel*>("vehicle-title")->text() == "TESTVN117TB118822");
  CHECK(it.rows().isEmpty());
  CHECK_FALSE(it.button("button-compare")->isEnabled());
  CHECK_FALSE(it.texts().contains("No pack was measured"));
  it.page.show_vehicle(it.vehicle);
  CHECK_FALSE(test::at_rest(it.page));
  test::wait_for_work(it.page);
  QCoreApplication::processEvents();
  CHECK_FALSE(reading->isVisible());
  CHECK(it.rows().size() == 2);
  CHECK(it.button("button-compare")->isEnabled());
  it.page.refresh();
  CHECK(reading->isVisible());
  CHECK(it.rows().size() == 2);
  CHECK_FALSE(it.rows().front()->isEnabled());
  test::wait_for_work(it.page);
  QCoreApplication::processEvents();
  CHECK(it.rows().front()->isEnabled());
}

TEST_CASE("thrown away while it reads, the page waits for it and nothing comes afterwards") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("engine-held");
  {
    past::VehiclePage page(bench.store(), {[](const QString&) { return QString(); }});
    page.show_vehicle("TESTVN006MA021188");
    CHECK_FALSE(test::at_rest(page));
  }
  QCoreApplication::processEvents();
}

TEST_CASE("a store that is gone is said in the place of the vehicle's jobs") {
  VehicleBench it;
  REQUIRE(QFile::rename(QString::fromStdString(it.bench.store().path()), it.bench.file("elsewhere")));
  it.page.show_vehicle(it.vehicle);
  test::wait_for_work(it.page);
  CHECK(it.page.findChild<QLabel*>("vehicle-refused")->isVisible());
  CHECK(it.page.findChild<QLabel*>("vehicle-refused")->text().contains("no store"));
  CHECK(it.rows().isEmpty());
  REQUIRE(QFile::rename(it.bench.file("elsewhere"), QString::fromStdString(it.bench.store().path())));
}

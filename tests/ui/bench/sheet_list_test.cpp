#include "sheet_list.h"

#include <QTest>
#include <catch2/catch.hpp>

#include "job_words.h"
#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("the sheet shows every stage and the steps of the one that is open, each by mark and word") {
  test::UiBench rig;
  rig.go_to("large-gauge-fit");
  QWidget window;
  bench::SheetList list(&window);
  window.resize(260, 700);
  list.resize(252, 700);
  window.show();
  list.show_state(rig.workbench().state(), "large-gauge-fit", "en");
  int stages = 0;
  for (const auto* row : list.findChildren<bench::SheetRow*>()) {
    stages += row->objectName().startsWith("stage-") ? 1 : 0;
    CHECK(row->sizeHint().height() >= 48);
    CHECK_FALSE(row->accessibleName().isEmpty());
    CHECK_FALSE(row->accessibleDescription().isEmpty());
  }
  CHECK(stages == 12);
  CHECK(list.findChild<bench::SheetRow*>("step-large-gauge-fit") != nullptr);
  CHECK(list.findChild<bench::SheetRow*>("step-large-depth") == nullptr);
  CHECK(list.findChild<bench::SheetRow*>("step-small-gauge-fit") == nullptr);
}

TEST_CASE("a step is wanted by click and by key, a stage likewise") {
  test::UiBench rig;
  rig.go_to("large-gauge-fit");
  bench::SheetList list(nullptr);
  list.resize(252, 900);
  list.show();
  REQUIRE(QTest::qWaitForWindowActive(&list));
  list.show_state(rig.workbench().state(), "large-gauge-fit", "en");
  std::string step;
  std::string stage;
  QObject::connect(&list, &bench::SheetList::step_wanted, [&](const std::string& id) { step = id; });
  QObject::connect(&list, &bench::SheetList::stage_wanted, [&](const std::string& id) { stage = id; });
  auto* row = list.findChild<bench::SheetRow*>("step-large-temperature");
  REQUIRE(row != nullptr);
  QTest::mouseClick(row, Qt::LeftButton);
  CHECK(step == "large-temperature");
  auto* first = list.findChild<bench::SheetRow*>("stage-receive");
  REQUIRE(first != nullptr);
  first->setFocus();
  QTest::keyClick(first, Qt::Key_Return);
  CHECK(stage == "receive");
}

TEST_CASE("the step in hand is in sight, also where its stage has only now been opened") {
  test::UiBench rig;
  rig.go_to("large-gauge-fit");
  bench::SheetList list(nullptr);
  list.resize(252, 650);
  list.show();
  REQUIRE(QTest::qWaitForWindowActive(&list));
  list.show_state(rig.workbench().state(), "complaint-when", "en");
  QCoreApplication::processEvents();
  list.show_state(rig.workbench().state(), "sign-technician", "en");
  const auto in_sight = [&] {
    auto* row = list.findChild<bench::SheetRow*>("step-sign-technician");
    return row != nullptr && !row->visibleRegion().isEmpty();
  };
  CHECK(QTest::qWaitFor(in_sight, 2000));
}

TEST_CASE("a stage that was begun keeps its count while all of it is asked again") {
  test::UiBench rig("04-parked-at-the-wrong-moment");
  rig.go_to("pack-lowered");
  REQUIRE(rig.workbench().send(job::TakeUp{}));
  const job::JobState& state = rig.workbench().state();
  bench::SheetList list(nullptr);
  list.show_state(state, "large-shim-laid", "en");
  const auto* stage = state.sheets.job->stage_of("large-shim-laid");
  REQUIRE(stage != nullptr);
  const auto* row = list.findChild<bench::SheetRow*>(QString::fromStdString("stage-" + stage->id));
  REQUIRE(row != nullptr);
  CHECK(row->accessibleDescription().contains(QString(" of %1").arg(bench::progress_of(state, *stage).asked)));
}

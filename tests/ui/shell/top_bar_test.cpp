#include "shimwright/shell/top_bar.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;
using test::named;

TEST_CASE("places are there, and give way to the job") {
  shell::TopBar bar;
  bar.set_demo_workshop(true);
  bar.show_place(shell::PageName::past_jobs);
  CHECK(named<QPushButton>(bar, "button-past-jobs")->isChecked());
  CHECK_FALSE(named<QPushButton>(bar, "button-bench")->isChecked());
  CHECK_FALSE(named(bar, "mark-demo-workshop")->isHidden());
  bar.show_job({"Job 2041", "VIN TESTVN009TA030417", "VIN ends 30417", "Spec sheet D7, issue 2", true});
  CHECK(named(bar, "button-bench")->isHidden());
  CHECK(named(bar, "mark-demo-workshop")->isHidden());
  CHECK_FALSE(named(bar, "mark-demonstration")->isHidden());
  CHECK(named<QLabel>(bar, "heading-job")->text() == "Job 2041");
  bar.show_job({"Job 2041", "", "", "", false});
  CHECK(named(bar, "mark-demonstration")->isHidden());
}

TEST_CASE("the name leads from a job to the bench") {
  shell::TopBar bar;
  QSignalSpy spy(&bar, &shell::TopBar::place_wanted);
  bar.show_job({"Job 2041", "", "", "", false});
  test::press(bar, "button-name");
  REQUIRE(spy.count() == 1);
  CHECK(spy.at(0).at(0).value<shell::PageName>() == shell::PageName::home);
}

TEST_CASE("in a narrow window places, demonstration mark and person stay") {
  shell::TopBar bar;
  bar.set_person("MK");
  bar.show_job(
      {"Job 2041", "VIN TESTVN009TA030417 · 121400 km", "VIN ends 30417 · 121400 km", "Spec sheet D7, issue 2", true});
  bar.resize(683, 50);
  bar.show();
  CHECK_FALSE(named(bar, "heading-spec")->isVisible());
  CHECK(named(bar, "heading-job")->isVisible());
  CHECK(named(bar, "mark-demonstration")->isVisible());
  bar.show_place(shell::PageName::home);
  CHECK_FALSE(named(bar, "button-name")->isVisible());
  CHECK(named(bar, "button-workshop")->isVisible());
  bar.resize(1366, 50);
  CHECK(named(bar, "button-name")->isVisible());
}

TEST_CASE("the whole vehicle number stands there to be compared, and its end where there is no room") {
  shell::TopBar bar;
  bar.set_person("MK");
  bar.show();
  bar.resize(1366, 50);
  bar.show_job(
      {"Job 2041", "VIN TESTVN009TA030417 · 121400 km", "VIN ends 30417 · 121400 km", "Spec sheet D7, issue 2", true});
  CHECK(named<QLabel>(bar, "heading-vehicle")->text().startsWith("VIN TESTVN009TA030417"));
  CHECK(named(bar, "heading-spec")->isVisible());
  int width = 1366;
  while (width > 700 && !named<QLabel>(bar, "heading-vehicle")->text().startsWith("VIN ends")) {
    bar.resize(--width, 50);
  }
  CHECK(named(bar, "heading-vehicle")->isVisible());
  CHECK(named(bar, "heading-spec")->isVisible());
  bar.resize(1366, 50);
  CHECK(named<QLabel>(bar, "heading-vehicle")->text().startsWith("VIN TESTVN009TA030417"));
}

TEST_CASE("what is pressed is high enough for a glove") {
  shell::TopBar bar;
  bar.set_person("MK");
  for (const auto* button : bar.findChildren<QPushButton*>()) {
    INFO(button->objectName().toStdString());
    CHECK(button->sizeHint().height() >= 48);
    CHECK(button->sizeHint().width() >= 48);
  }
}

TEST_CASE("who is at the bench is said in full where there is room, else by initials") {
  shell::TopBar bar;
  bar.set_demo_workshop(true);
  bar.set_person("MK");
  bar.show_place(shell::PageName::home);
  const auto* person = named<QPushButton>(bar, "button-person");
  for (const auto& [width, said] : {std::pair{1366, "At the bench: MK"}, {560, "MK"}, {1366, "At the bench: MK"}}) {
    bar.resize(width, 50);
    bar.show();
    CHECK(person->text().toStdString() == said);
    CHECK(person->accessibleName() == "At the bench: MK");
    CHECK(person->geometry().right() < width);
  }
}

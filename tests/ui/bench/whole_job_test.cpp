#include <QLocale>
#include <QTest>
#include <catch2/catch.hpp>

#include "script_by_keys.h"

using namespace shimwright;

namespace {

/// The job screen alone in a window of the smallest size it is made for.
struct JobScreen {
  test::UiBench rig;
  test::Hands hands;
  bench::JobPage page;
  test::KeyTechnician technician;

  explicit JobScreen(const std::string& script)
      : rig(script),
        page(rig.workbench(), hands.surroundings(), nullptr),
        technician(page, page, rig.workbench(), hands) {
    rig.go_to(first_step(script));
    page.resize(1366, 718);
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    page.show_job();
  }

  static std::string first_step(const std::string& /*script*/) { return "complaint-read-back"; }

  void do_all(const std::string& script) {
    test::do_script_by_keys(rig, technician, test::demo_script(script),
                            {[this](const std::string& initials) {
                               for (const store::Person& each : rig.workbench().persons()) {
                                 if (each.initials == initials) {
                                   rig.workbench().set_person(each);
                                 }
                               }
                             },
                             [this] { page.show_job(); }});
  }
};

/// The same job replayed from its script, without a screen.
job::JobState replayed(const std::string& script) {
  test::UiBench rig(script);
  rig.go_to("");
  return rig.workbench().state();
}

void check_same(const job::JobState& by_keys, const job::JobState& by_script) {
  CHECK(by_keys.closed);
  CHECK(by_keys.assembly == by_script.assembly);
  CHECK(by_keys.shims == by_script.shims);
  for (const auto& [step, state] : by_script.steps) {
    INFO(step);
    CHECK(by_keys.step(step).index() == state.index());
  }
}

}  // namespace

TEST_CASE("a whole job with a wrong first shim is done by keys alone, in every locale") {
  for (const char* name : {"en_US", "de_DE", "fr_FR"}) {
    INFO(name);
    QLocale::setDefault(QLocale(QString::fromLatin1(name)));
    JobScreen screen("02-bearing-not-home");
    screen.do_all("02-bearing-not-home");
    check_same(screen.rig.workbench().state(), replayed("02-bearing-not-home"));
  }
  QLocale::setDefault(QLocale::c());
}

TEST_CASE("a smooth job is done by keys alone") {
  JobScreen screen("01-smooth-day");
  screen.do_all("01-smooth-day");
  check_same(screen.rig.workbench().state(), replayed("01-smooth-day"));
}

TEST_CASE("a job by depth, with a sum on the border, is done by keys alone") {
  JobScreen screen("03-sum-on-the-border");
  screen.do_all("03-sum-on-the-border");
  check_same(screen.rig.workbench().state(), replayed("03-sum-on-the-border"));
}

TEST_CASE("a job parked at the wrong moment is done by keys alone") {
  JobScreen screen("04-parked-at-the-wrong-moment");
  screen.do_all("04-parked-at-the-wrong-moment");
  check_same(screen.rig.workbench().state(), replayed("04-parked-at-the-wrong-moment"));
}

// Every screen of the real window on the smallest screen: what can be pressed or typed into is large enough, has a
// name, is reached by Tab and shows when it has the focus.
#include <QAbstractButton>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QSettings>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "earlier_job.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/shell/main_window.h"
#include "shimwright/shell/start_window.h"
#include "shimwright/widgets/keypad.h"
#include "shimwright/widgets/shim_rows.h"
#include "shimwright/widgets/strip.h"
#include "window_bench.h"
#include "worked.h"

using namespace shimwright;

namespace {

constexpr int least_caps = 31;  // 7 mm at 112 dots per inch

template <class Parent>
bool lies_in(const QWidget* widget) {
  for (const QWidget* above = widget->parentWidget(); above != nullptr; above = above->parentWidget()) {
    if (qobject_cast<const Parent*>(above) != nullptr) {
      return true;
    }
  }
  return false;
}

/// What a person presses or types into, as the window shows it now.
std::vector<QWidget*> targets_of(const QWidget& window) {
  std::vector<QWidget*> targets;
  for (QWidget* each : window.findChildren<QWidget*>()) {
    const bool kind = qobject_cast<QAbstractButton*>(each) != nullptr || qobject_cast<QLineEdit*>(each) != nullptr ||
                      qobject_cast<QComboBox*>(each) != nullptr || qobject_cast<QPlainTextEdit*>(each) != nullptr;
    if (kind && each->isVisible() && each->isEnabled() && !lies_in<QComboBox>(each)) {
      targets.push_back(each);
    }
  }
  return targets;
}

/// Its rows are walked by Up and Down, and the keypad's keys go to the field that has the focus.
bool needs_no_tab(const QWidget* target) {
  return lies_in<widgets::ShimRows>(target) || lies_in<widgets::Keypad>(target);
}

std::string name_of(const QWidget* widget) {
  return widget->metaObject()->className() + std::string(" ") + widget->objectName().toStdString();
}

std::string spoken_name(QWidget* widget) {
  QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
  return spoken == nullptr ? std::string() : spoken->text(QAccessible::Name).toStdString();
}

/// Presses Tab until it has come round; gives what had the focus on the way.
std::set<const QWidget*> walk_by_tab(QWidget& window) {
  std::set<const QWidget*> seen;
  for (int step = 0; step < 250; ++step) {
    const QPointer<QWidget> here = window.focusWidget();
    const QImage focused = here == nullptr ? QImage() : here->grab().toImage();
    QTest::keyClick(here == nullptr ? &window : here.data(), Qt::Key_Tab);
    QCoreApplication::processEvents();
    const bool rests =
        qobject_cast<bench::StepPage*>(here.data()) != nullptr;  // a scanner's Enter presses nothing there
    if (here != nullptr && !rests && here->isVisible() && here != window.focusWidget() && !seen.count(here)) {
      INFO("has the focus: " << name_of(here));
      CHECK(focused != here->grab().toImage());
    }
    if (here != nullptr && !seen.insert(here).second) {
      return seen;
    }
  }
  FAIL_CHECK("Tab does not come round");
  return seen;
}

void look_over(QWidget& window, const std::string& screen) {
  test::wait_for_work(window);  // what is read beside it is not to arrive in the middle of a look
  test::settle();
  INFO("screen: " << screen);
  CHECK(window.size() == test::smallest_screen);
  const std::vector<QWidget*> targets = targets_of(window);
  CHECK_FALSE(targets.empty());
  for (QWidget* each : targets) {
    INFO("target: " << name_of(each));
    CHECK(each->height() >= widgets::pixels::target);
    CHECK(each->width() >= widgets::pixels::target);
    CHECK_FALSE(spoken_name(each).empty());
  }
  for (const auto* strip : window.findChildren<widgets::Strip*>()) {
    if (strip->isVisible()) {
      CHECK(strip->cap_height() >= least_caps);
    }
  }
  const std::set<const QWidget*> seen = walk_by_tab(window);
  for (QWidget* each : targets_of(window)) {
    INFO("target: " << name_of(each));
    CHECK((needs_no_tab(each) || seen.count(each) == 1));
  }
}

void look_over_steps(test::WindowBench& it, const std::vector<const char*>& steps) {
  auto* page = it.window->findChild<bench::JobPage*>();
  REQUIRE(page != nullptr);
  for (const char* step : steps) {
    page->show_step(step);
    REQUIRE(page->step_id() == step);
    look_over(*it.window, step);
  }
}

}  // namespace

TEST_CASE("walk over the places") {
  test::WindowBench it;
  const std::string job = it.bench.go_to("lower-float");
  it.open();
  look_over(*it.window, "home");
  REQUIRE(it.window->go(shell::PageName::new_job));
  look_over(*it.window, "new job");
  REQUIRE(it.window->go(shell::PageName::past_jobs));
  look_over(*it.window, "past jobs");
  REQUIRE(it.window->go(shell::PageName::record, job));
  look_over(*it.window, "record");
  REQUIRE(it.window->go(shell::PageName::workshop));
  QStringList sections;
  for (const auto* each : it.window->findChildren<QAbstractButton*>()) {
    if (each->objectName().startsWith("section-")) {
      sections << each->objectName();
    }
  }
  CHECK(sections.size() >= 5);
  for (const QString& section : sections) {
    it.window->findChild<QAbstractButton*>(section)->click();
    look_over(*it.window, section.toStdString());
  }
  QTest::keyClick(it.window.get(), Qt::Key_Comma, Qt::ControlModifier);
  look_over(*it.window, "settings");
  QTest::keyClick(it.window.get(), Qt::Key_F9);
  look_over(*it.window, "who is at the bench");
}

TEST_CASE("walk over a vehicle, its jobs compared, and the figures of the workshop") {
  test::WindowBench it;
  test::fit_the_pack_before(it.bench);
  it.bench.go_to("lower-float");
  it.open();
  REQUIRE(it.window->go(shell::PageName::vehicle, it.bench.workbench().state().opened->vehicle_key));
  look_over(*it.window, "vehicle");
  test::press(*it.window, "button-compare");
  look_over(*it.window, "compared");
  REQUIRE(it.window->go(shell::PageName::workshop));
  it.window->findChild<QAbstractButton*>("section-figures")->click();
  auto* read = it.window->findChild<QAbstractButton*>("button-read-figures");
  REQUIRE(QTest::qWaitFor([&] { return read->isEnabled(); }, 60000));
  look_over(*it.window, "figures");
}

TEST_CASE("walk over the windows without a store") {
  const test::Dressed dressed(widgets::Scheme::light);
  QTemporaryDir folder;
  shell::Settings settings(test::settings_file(folder.filePath("settings.ini")));
  shell::StartWindow window(settings);
  window.first()->set_offer("/data/workshop.shimwright", true);
  window.show_first();
  window.resize(test::smallest_screen);
  REQUIRE(QTest::qWaitForWindowActive(&window));
  look_over(window, "first start");
  window.hindrance()->show_hindrance(Error{"locked", "", Message{"Somebody writes in this store.", {}}},
                                     "/data/workshop.shimwright", store::LockHolder{});
  window.show_hindrance();
  look_over(window, "hindrance");
}

TEST_CASE("walk over the steps of a job") {
  test::WindowBench it;
  const std::string job = it.bench.go_to("lower-float", 6);
  it.open();
  REQUIRE(it.window->go(shell::PageName::job, job));
  look_over(*it.window, "as it is taken up");
  look_over_steps(it, {"vehicle-number", "complaint-when", "complaint-gears", "received-photos", "battery-off",
                       "odometer", "press-peak", "new-pack", "large-gauge-fit", "lower-float", "upper-float",
                       "teach-in-lower", "sign-technician"});
  test::press(*it.window, "button-more");
  look_over(*it.window, "more");
  test::press(*it.window, "button-park");
  look_over(*it.window, "parking");
  QTest::keyClick(it.window->focusWidget(), Qt::Key_Escape);
  QTest::keyClick(it.window->focusWidget(), Qt::Key_F4);
  look_over(*it.window, "keypad");
}

TEST_CASE("walk over a step that asks for depths") {
  test::WindowBench it("03-sum-on-the-border");
  const std::string job = it.bench.go_to("small-depth", 3);
  it.open();
  REQUIRE(it.window->go(shell::PageName::job, job));
  look_over_steps(it, {"small-temperature", "small-depth"});
}

// What only the whole job screen shows: what is asked over what is below, the strip, and where the focus is.
#include "shimwright/bench/job_page.h"

#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>

#include "foot_bar.h"
#include "key_technician.h"
#include "sheet_list.h"
#include "stand_box.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

/// The job screen alone, as wide as the smallest screen and as high as the window leaves it.
struct JobScreen {
  test::UiBench rig;
  test::Hands hands;
  bench::JobPage page;

  explicit JobScreen(const std::string& step, std::size_t further = 0,
                     const std::string& script = "02-bearing-not-home")
      : rig(script), page(rig.workbench(), hands.surroundings(), nullptr) {
    rig.go_to(step, further);
    page.resize(1366, 718);
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    page.show_job();
    settle();
  }
  /// As one comes to it from another step.
  void come_to(const std::string& step) {
    page.show_step(state().sheets.job->stages.front().steps.front().id);
    page.show_step(step);
    settle();
  }
  static void settle() {
    for (int round = 0; round < 4; ++round) {
      test::settle_toolkit();
    }
  }
  [[nodiscard]] const job::JobState& state() { return rig.workbench().state(); }
  [[nodiscard]] std::size_t entries() { return state().entries.size(); }
  void key(Qt::Key pressed, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus == nullptr ? &page : focus, pressed, modifiers);
    settle();
  }
  template <class Widget = QPushButton>
  [[nodiscard]] Widget* shown(const char* name) {
    for (auto* each : page.findChildren<Widget*>(QLatin1String(name))) {
      if (each->isVisible()) {
        return each;
      }
    }
    return nullptr;
  }
  void press(const char* name) {
    auto* button = shown(name);
    INFO(name);
    REQUIRE(button != nullptr);
    button->click();
    settle();
  }
  [[nodiscard]] widgets::StripText strip() { return page.findChild<widgets::Strip*>("strip")->text(); }
  [[nodiscard]] QStringList words() {
    QStringList all;
    for (const auto* each : page.findChildren<QLabel*>()) {
      if (each->isVisible()) {
        all << each->text();
      }
    }
    return all;
  }
};

}  // namespace

TEST_CASE("the main key answers the question that is open, and nothing below it") {
  JobScreen screen("odometer");
  screen.come_to("odometer");
  auto* reading = QApplication::focusWidget();
  QTest::keyClicks(reading, "121400");
  auto* take = screen.shown("button-take");
  REQUIRE(take != nullptr);
  CHECK(take->isEnabled());
  screen.press("button-note");
  CHECK_FALSE(take->isEnabled());
  const std::size_t before = screen.entries();
  screen.key(Qt::Key_Return, Qt::ControlModifier);  // no words yet: nothing is kept
  CHECK(screen.entries() == before);
  QTest::keyClicks(QApplication::focusWidget(), "glass of the instrument is cracked");
  screen.key(Qt::Key_Return, Qt::ControlModifier);
  REQUIRE(screen.entries() == before + 1);
  CHECK(std::holds_alternative<job::Noted>(screen.state().entries.back().body));
  CHECK(screen.shown("button-take")->isEnabled());
  screen.key(Qt::Key_Return, Qt::ControlModifier);
  CHECK(std::holds_alternative<job::Read>(screen.state().entries.back().body));
}

TEST_CASE("while one of several is asked for, the main key keeps nothing, and leaving out comes last") {
  JobScreen screen("odometer");
  screen.come_to("odometer");
  QTest::keyClicks(QApplication::focusWidget(), "121400");
  screen.press("button-more");
  const std::size_t before = screen.entries();
  screen.key(Qt::Key_Return, Qt::ControlModifier);
  CHECK(screen.entries() == before);
  QStringList picks;
  for (const auto* each : screen.page.findChildren<QPushButton*>()) {
    if (each->isVisible() && each->objectName().startsWith("button-pick-")) {
      picks << each->objectName();
    }
  }
  REQUIRE_FALSE(picks.empty());
  CHECK(picks.last() == "button-pick-reason");
  CHECK(QApplication::focusWidget()->objectName() == picks.first());
}

TEST_CASE("a sealed job says so on the strip, promises no seal and has nothing to go on to") {
  JobScreen screen("");
  CHECK(screen.strip().large.startsWith("Sealed, 24 Nov "));
  CHECK(screen.strip().small.startsWith("by "));
  CHECK(screen.shown("button-banner") == nullptr);
  CHECK(screen.shown<QLabel>("signing-says") == nullptr);
  CHECK(QApplication::focusWidget()->objectName() == "button-record");
  const std::size_t before = screen.entries();
  screen.come_to("press-peak");
  CHECK(screen.strip().mark != widgets::Mark::none);  // the verdict of that step stays
  CHECK(screen.entries() == before);
}

TEST_CASE("a job can be parked at a step that holds it") {
  JobScreen screen("press-peak");
  screen.come_to("press-peak");
  QTest::keyClicks(QApplication::focusWidget(), "13,5");
  screen.key(Qt::Key_Return);
  REQUIRE(std::holds_alternative<job::Held>(screen.state().step("press-peak")));
  CHECK(screen.shown("button-park") != nullptr);
  CHECK(screen.shown("button-reason") != nullptr);
  CHECK(screen.shown("button-back-off") != nullptr);
}

TEST_CASE("what may have moved is to be looked at again: on the strip, and counted in place of being listed twice") {
  JobScreen screen("small-shim-laid", 8, "04-parked-at-the-wrong-moment");
  REQUIRE(std::holds_alternative<job::Unproven>(screen.state().step(screen.page.step_id())));
  CHECK(screen.strip().large.startsWith("Look again: "));
  CHECK(screen.words().join(' ').contains("4 steps may have moved while the job lay and are asked again."));
}

TEST_CASE("wherever one comes to, the focus is seen and Enter and Space keep nothing") {
  for (const char* step : {"vehicle-number", "complaint-gears", "high-voltage", "battery-off", "pack-faces",
                           "large-gauge-fit", "sign-technician", "teach-in-lower", "new-pack"}) {
    INFO(step);
    JobScreen screen(step);
    screen.come_to(step);
    const QWidget* focus = QApplication::focusWidget();
    REQUIRE(focus != nullptr);
    CHECK(focus->isVisible());
    CHECK(focus != screen.page.page());
    CHECK_FALSE(focus->size().isEmpty());
    const std::size_t before = screen.entries();
    screen.key(Qt::Key_Return);
    screen.key(Qt::Key_Space);
    CHECK(screen.entries() == before);
  }
}

TEST_CASE("however small the window, the field that is typed into is in sight") {
  const auto& [step, script] = GENERATE(table<const char*, const char*>({{"complaint-when", "02-bearing-not-home"},
                                                                         {"odometer", "02-bearing-not-home"},
                                                                         {"lower-float", "02-bearing-not-home"},
                                                                         {"teach-in-lower", "02-bearing-not-home"},
                                                                         {"large-depth", "03-sum-on-the-border"}}));
  INFO(step);
  JobScreen screen(step, 0, script);
  screen.page.resize(683, 333);
  JobScreen::settle();
  screen.come_to(step);
  screen.key(Qt::Key_7);
  const QWidget* field = QApplication::focusWidget();
  REQUIRE(field != nullptr);
  INFO(field->objectName().toStdString());
  REQUIRE((qobject_cast<const QLineEdit*>(field) != nullptr || qobject_cast<const QPlainTextEdit*>(field) != nullptr));
  CHECK(field->visibleRegion().boundingRect() == field->rect());
}

TEST_CASE("a parked job has the focus on what it waits for, not on taking it up") {
  JobScreen screen("small-shim-laid", 4, "04-parked-at-the-wrong-moment");
  REQUIRE(screen.state().parked);
  CHECK(qobject_cast<bench::StandBox*>(QApplication::focusWidget()) != nullptr);
  const std::size_t before = screen.entries();
  screen.key(Qt::Key_Return);
  CHECK(screen.entries() == before);
}

TEST_CASE("the stamp of a depth is in sight with all depths, at the smallest screen") {
  for (const auto& [step, further] : {std::pair{"large-depth", 0}, {"large-depth", 3}, {"small-depth", 3}}) {
    INFO(step << " " << further);
    JobScreen screen(step, static_cast<std::size_t>(further), "03-sum-on-the-border");
    screen.come_to(step);
    auto* stamp = screen.shown<QLineEdit>("field-stamp");
    REQUIRE(stamp != nullptr);
    CHECK(stamp->visibleRegion().boundingRect() == stamp->rect());
  }
}

TEST_CASE("between a verdict on a float and what to do stands nothing else") {
  JobScreen screen("lower-float", 6, "01-smooth-day");
  screen.come_to("lower-float");
  const auto* title = screen.state().sheets.job->find("lower-float");
  REQUIRE(title != nullptr);
  CHECK(screen.strip().mark == widgets::Mark::within);
  CHECK_FALSE(screen.words().contains(QString::fromStdString(title->title.in("en"))));
  CHECK_FALSE(screen.words().contains(QString::fromStdString(title->text.in("en"))));
}

TEST_CASE("the last entry is told with its parts set apart from the commas of its title") {
  JobScreen screen("oil-drained");
  CHECK(screen.words().join(' ').contains(QRegularExpression(QString::fromUtf8("Last: .* · [A-Z]{2} · "))));
}

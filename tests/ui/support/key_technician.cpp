#include "key_technician.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>
#include <concepts>
#include <variant>

#include "shimwright/job/standing.h"
#include "shimwright/widgets/say.h"

namespace shimwright::test {

using widgets::qt;

void settle_toolkit() {
  QCoreApplication::processEvents();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

bench::Surroundings Hands::surroundings() {
  return {[this](int, std::function<void()> call) { waiting_.push_back(std::move(call)); }, [this] { return photo_; }};
}

void Hands::pause() {
  for (const auto& call : std::exchange(waiting_, {})) {
    call();
  }
}

bench::JobPage* KeyTechnician::page() const {
  return page_ != nullptr ? page_ : window_->findChild<bench::JobPage*>();
}

std::string KeyTechnician::step_id() const {
  const bench::JobPage* shown = page();
  return shown == nullptr ? std::string() : shown->step_id();
}

void KeyTechnician::key(Qt::Key pressed, Qt::KeyboardModifiers modifiers) {
  QWidget* focus = QApplication::focusWidget();
  QTest::keyClick(focus == nullptr ? window_ : focus, pressed, modifiers);
  settle_toolkit();
}

void KeyTechnician::type(const std::string& text) {
  for (const QChar each : qt(text)) {
    QWidget* focus = QApplication::focusWidget();
    REQUIRE(focus != nullptr);
    QKeyEvent down(QEvent::KeyPress, 0, Qt::NoModifier, QString(each));
    QApplication::sendEvent(focus, &down);
  }
}

bool KeyTechnician::shows(const QString& name) const {
  const auto* found = window_->findChild<QWidget*>(name);
  return found != nullptr && found->isVisible() && found->isEnabled();
}

void KeyTechnician::tab_to(const QString& name) {
  constexpr int longest_way = 200;
  QStringList way;
  for (int tabs = 0; tabs < longest_way; ++tabs) {
    const QWidget* focus = QApplication::focusWidget();
    way.append(focus == nullptr ? QStringLiteral("nothing") : focus->objectName());
    if (focus != nullptr && focus->objectName() == name) {
      return;
    }
    key(Qt::Key_Tab);
  }
  FAIL("no Tab leads to " << name.toStdString() << " at step " << step_id() << ", only to "
                          << way.mid(std::max<qsizetype>(0, way.size() - 60)).join(QLatin1Char(' ')).toStdString());
}

void KeyTechnician::tab_and_press(const QString& name) {
  tab_to(name);
  key(Qt::Key_Return);
}

void KeyTechnician::digit(int number, const QString& /*button*/) {
  key(static_cast<Qt::Key>(Qt::Key_0 + number));
  hands_->pause();
  settle_toolkit();
}

void KeyTechnician::fill(const QString& name, const std::string& text) {
  tab_to(name);
  key(Qt::Key_A, Qt::ControlModifier);
  if (text.empty()) {
    key(Qt::Key_Delete);
  } else {
    type(text);
  }
}

void KeyTechnician::pick_shim(const std::string& text) {
  type(text);
  key(Qt::Key_Return);
}

void KeyTechnician::more(const QString& pick) {
  tab_and_press(QStringLiteral("button-more"));
  tab_and_press(QStringLiteral("button-pick-") + pick);
}

/// What there is no room for in the foot stands under More.
void KeyTechnician::press_in_foot(const QString& name) {
  if (shows(QStringLiteral("button-") + name)) {
    tab_and_press(QStringLiteral("button-") + name);
  } else {
    more(name);
  }
}

void KeyTechnician::answer(const std::string& text) {
  fill(QStringLiteral("field-ask"), text);
  enter();
  tab_and_press(QStringLiteral("button-ask-yes"));
}

void KeyTechnician::go_to(const std::string& step) {
  if (step_id() != step && shows(QStringLiteral("button-next"))) {
    main_key();
  }
  if (step_id() == step) {
    return;
  }
  const QString row = qt("step-" + step);
  if (!shows(row)) {
    for (const sheet::Stage& stage : bench_->state().sheets.job->stages) {
      for (const sheet::Step& each : stage.steps) {
        if (each.id == step) {
          tab_and_press(qt("stage-" + stage.id));
        }
      }
    }
  }
  if (step_id() != step) {
    tab_and_press(row);
  }
  REQUIRE(step_id() == step);
}

void KeyTechnician::keep(const job::Command& command, const std::string& shim_to_come, const QString& photo) {
  shim_to_come_ = shim_to_come;
  hands_->set_photo(photo);
  std::visit(
      [this](const auto& each) {
        if constexpr (requires {
                        { each.step } -> std::convertible_to<std::string>;
                      }) {
          go_to(each.step);
        }
        (*this)(each);
      },
      command);
}

void KeyTechnician::operator()(const job::DoStep& /*command*/) {
  main_key();
}

void KeyTechnician::operator()(const job::CheckStep& command) {
  if (command.in_order && command.finding.empty()) {
    digit(1, QStringLiteral("button-in-order"));
    return;
  }
  fill(QStringLiteral("field-finding"), command.finding);
  tab_and_press(command.in_order ? QStringLiteral("button-in-order") : QStringLiteral("button-not-in-order"));
}

void KeyTechnician::operator()(const job::ChooseAnswer& command) {
  tab_and_press(qt("button-" + command.choice));
}

void KeyTechnician::operator()(const job::EnterReadings& command) {
  for (const job::TypedReading& each : command.readings) {
    fill(qt("field-" + each.channel), each.text);
  }
  main_key();
}

void KeyTechnician::operator()(const job::EnterPeak& command) {
  const auto* step = bench_->state().sheets.job->find(command.step);
  REQUIRE(step != nullptr);
  fill(qt("field-" + std::get<sheet::PeakStep>(step->body).channel.id), command.reading.text);
  enter();
}

/// What is renewed already is only put right.
void KeyTechnician::tick_parts(const job::FitParts& command) {
  const auto& listed = std::get<sheet::PartStep>(bench_->state().sheets.job->find(command.step)->body).parts;
  const auto missing = job::parts_to_renew(bench_->state(), *bench_->state().sheets.job->find(command.step));
  for (const job::PartFitted& part : command.parts) {
    if (std::find(missing.begin(), missing.end(), part.part) != missing.end()) {
      const auto at = std::find(listed.begin(), listed.end(), part.part) - listed.begin();
      digit(static_cast<int>(at) + 1, qt("button-tick-" + part.part));
    }
  }
}

void KeyTechnician::operator()(const job::FitParts& command) {
  tick_parts(command);
  for (const job::PartFitted& part : command.parts) {
    const QString field = qt("field-" + part.part);
    if (!part.number.empty()) {
      fill(field + QStringLiteral("-number"), part.number);
    }
    fill(field + QStringLiteral("-quantity"), std::to_string(part.quantity));
    if (!part.batch.empty()) {
      fill(field + QStringLiteral("-batch"), part.batch);
    }
  }
  main_key();
}

void KeyTechnician::operator()(const job::AddPhoto& command) {
  if (!shows(QStringLiteral("field-caption"))) {
    press_in_foot(QStringLiteral("photo"));
    return;
  }
  fill(QStringLiteral("field-caption"), command.caption);
  if (shows(QStringLiteral("button-choose-picture"))) {
    tab_and_press(QStringLiteral("button-choose-picture"));
  } else {
    main_key();
  }
}

void KeyTechnician::operator()(const job::WriteText& command) {
  fill(QStringLiteral("field-text"), command.text);
  main_key();
}

void KeyTechnician::operator()(const job::TryShim& command) {
  pick_shim(command.shim);
  switch (command.fit) {
    case job::Fit::tight:
      digit(1, QStringLiteral("button-tight"));
      break;
    case job::Fit::snug:
      digit(2, QStringLiteral("button-snug"));
      break;
    case job::Fit::loose:
      digit(3, QStringLiteral("button-loose"));
      break;
  }
}

void KeyTechnician::operator()(const job::EnterDepths& command) {
  for (std::size_t at = 0; at < command.readings.size(); ++at) {
    const QString field = QStringLiteral("field-depth-%1").arg(at + 1);
    if (!shows(field)) {
      tab_and_press(QStringLiteral("button-more-places"));
    }
    fill(field, command.readings[at]);
  }
  fill(QStringLiteral("field-reference"), command.reference);
  if (!command.stamp.empty()) {
    fill(QStringLiteral("field-stamp"), command.stamp);
  }
  main_key();
}

void KeyTechnician::operator()(const job::EnterFloatRun& command) {
  const QString spot = QStringLiteral("button-spot-%1").arg(command.spot);
  const auto* button = window_->findChild<QPushButton*>(spot);
  REQUIRE(button != nullptr);
  if (!button->isChecked()) {
    tab_and_press(spot);
  }
  fill(QStringLiteral("field-rest"), command.rest);
  enter();
  type_number(command.lifted);
  enter();
  type_number(command.zero_after);
  enter();
  // The fields may be gone with it: the focus stays on the page all the same.
  const QWidget* here = window_->focusWidget();
  REQUIRE(here != nullptr);
  INFO(here->objectName().toStdString());
  CHECK(window_->findChild<bench::StepPage*>()->isAncestorOf(here));
}

void KeyTechnician::operator()(const job::BeginSeries& command) {
  if (!command.spots.empty()) {
    const QString spot = QStringLiteral("button-spot-%1").arg(command.spots.front());
    if (shows(spot)) {
      tab_and_press(spot);
    }
    press_in_foot(QStringLiteral("spot-again-%1").arg(command.spots.front()));
    return;
  }
  tab_and_press(command.reason == job::SeriesReason::seated_again ? QStringLiteral("button-seat-again")
                                                                  : QStringLiteral("button-measure-again"));
}

void KeyTechnician::operator()(const job::Confirm& command) {
  tab_and_press(qt("button-confirm-" + command.question));
}

void KeyTechnician::operator()(const job::ChooseShim& command) {
  for (const QString& name :
       {QStringLiteral("button-take"), QStringLiteral("button-take-shim"), qt("button-take-" + command.shim)}) {
    const auto* button = window_->findChild<QPushButton*>(name);
    if (button != nullptr && button->isVisible() && button->text().contains(qt(command.shim))) {
      tab_and_press(name);
      if (shows(QStringLiteral("field-ask"))) {
        answer(command.reason);
      }
      return;
    }
  }
  if (shows(QStringLiteral("button-another-shim")) && !shows(QStringLiteral("button-tight"))) {
    tab_and_press(QStringLiteral("button-another-shim"));
    tab_and_press(qt("button-shim-" + command.shim));
  } else {
    pick_shim(command.shim);
    tab_and_press(QStringLiteral("button-take-other"));
  }
  if (shows(QStringLiteral("field-ask"))) {
    answer(command.reason);
  }
}

void KeyTechnician::operator()(const job::TryTeachIn& command) {
  for (const job::TypedAttemptValue& each : command.values) {
    fill(qt("field-" + each.channel + "-before"), each.before);
    fill(qt("field-" + each.channel + "-after"), each.after);
  }
  if (!command.completed) {
    fill(QStringLiteral("field-code"), command.code);
    fill(QStringLiteral("field-reason"), command.reason);
  }
  tab_and_press(command.completed ? QStringLiteral("button-completed") : QStringLiteral("button-aborted"));
}

void KeyTechnician::operator()(const job::Sign& /*command*/) {
  main_key();
}

}  // namespace shimwright::test

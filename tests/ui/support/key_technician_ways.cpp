// What is no answer to a step: deviations, withdrawals, notes, parking, the next assembly.
#include "key_technician.h"

#include "shimwright/widgets/say.h"

namespace shimwright::test {

using widgets::qt;

void KeyTechnician::operator()(const job::Deviate& command) {
  if (shows(QStringLiteral("button-reason"))) {
    tab_and_press(QStringLiteral("button-reason"));
  } else {
    more(QStringLiteral("reason"));
  }
  answer(command.reason);
}

void KeyTechnician::operator()(const job::SayNotRequired& command) {
  tab_and_press(QStringLiteral("button-not-required"));
  answer(command.reason);
}

void KeyTechnician::operator()(const job::Withdraw& command) {
  more(QStringLiteral("take-back"));
  tab_and_press(QStringLiteral("button-pick-%1").arg(command.entry));
  answer(command.reason);
}

void KeyTechnician::operator()(const job::Note& command) {
  if (command.step) {
    go_to(*command.step);
  }
  press_in_foot(QStringLiteral("note"));
  answer(command.text);
}

void KeyTechnician::operator()(const job::Park& command) {
  if (shows(QStringLiteral("button-park"))) {
    tab_and_press(QStringLiteral("button-park"));
  } else {
    more(QStringLiteral("park"));
  }
  fill(QStringLiteral("field-waits-for"), command.waits_for);
  enter();
  type(command.due);
  enter();
  tab_and_press(QStringLiteral("button-ask-yes"));
}

void KeyTechnician::operator()(const job::TakeUp& /*command*/) {
  tab_and_press(QStringLiteral("button-take-up"));
}

void KeyTechnician::operator()(const job::HandOver& command) {
  const QString initials = bench_->initials_of(command.to);
  if (shows(QStringLiteral("button-hand-over"))) {
    tab_and_press(QStringLiteral("button-hand-over"));
  } else {
    more(QStringLiteral("hand-over"));
  }
  tab_and_press(QStringLiteral("button-pick-") + initials);
  answer(command.remark.empty() ? "nothing to add" : command.remark);
}

void KeyTechnician::operator()(const job::BeginAssembly& command) {
  tab_and_press(QStringLiteral("button-change-shim"));
  tab_and_press(qt("button-shim-" + shim_to_come_));
  if (shows(QStringLiteral("field-ask"))) {
    answer(command.reason);
  }
}

}  // namespace shimwright::test

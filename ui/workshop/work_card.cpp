#include "work_card.h"

#include <QProgressBar>
#include <algorithm>
#include <utility>

#include "flow_row.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "widgets_away.h"

namespace shimwright::workshop {

using widgets::child_of;

WorkCard::WorkCard(const QString& heading, const QString& name, QWidget* parent)
    : Box(heading, QString(), "card", parent), name_(name), work_(child_of<widgets::BackgroundWork>(this)) {
  connect(work_, &widgets::BackgroundWork::came_to, this, [this](qint64 step, qint64 of_all) {
    progress_->setRange(0, static_cast<int>(of_all));
    progress_->setValue(static_cast<int>(step));
  });
}

widgets::Button* WorkCard::add_button(const QString& text, const QString& name, widgets::Button::Kind kind) {
  if (row_ == nullptr) {
    row_ = child_of<FlowRow>(this);
    body()->addWidget(row_);
  }
  auto* button = child_of<widgets::Button>(row_, text, kind);
  button->setObjectName(name);
  row_->add(button);
  connect(button, &QAbstractButton::clicked, this, [this] { asked_ = true; });
  buttons_.push_back(button);
  return button;
}

void WorkCard::switch_off(widgets::Button* button) {
  button->setEnabled(false);
  buttons_.erase(std::remove(buttons_.begin(), buttons_.end(), button), buttons_.end());
}

widgets::Text* WorkCard::add_text(const QString& text, const char* part) {
  auto* added = child_of<widgets::Text>(this, text, part);
  body()->addWidget(added);
  return added;
}

void WorkCard::add_progress() {
  row_ = nullptr;  // buttons to come stand below what was told
  auto* row = widgets::lay_in<QHBoxLayout>(body(), 12);
  stop_ = child_of<widgets::Button>(this, tr("Stop"));
  stop_->setObjectName(QStringLiteral("button-stop-%1").arg(name_));
  row->addWidget(stop_);
  progress_ = child_of<QProgressBar>(this);
  progress_->setAccessibleName(tr("Progress"));
  row->addWidget(progress_, 1);
  outcome_ = add_text(QString());
  outcome_->setObjectName(QStringLiteral("%1-result").arg(name_));
  connect(stop_, &QAbstractButton::clicked, this, [this] {
    stop_->setEnabled(false);
    tell(tr("Stopping at the next step."), true);
    work_->stop();
  });
  show_run(false);
  outcome_->hide();
}

void WorkCard::run(const QString& saying, widgets::BackgroundWork::Work work) {
  if (work_->runs()) {
    return;
  }
  show_run(true);
  tell(saying, true);
  work_->begin([this, work = std::move(work)](const store::BackupWatch& watch) {
    return [this, outcome = work(watch)] {
      show_run(false);
      outcome();
    };
  });
}

void WorkCard::tell(const QString& text, bool good) {
  widgets::set_part(outcome_, good ? "strong" : "error");
  outcome_->setText(text);
  outcome_->show();
  // What a person asked for is told to that person; what began by itself scrolls nothing away.
  if (asked_) {
    bring_into_sight(*outcome_);
  }
  asked_ = asked_ && !stop_->isHidden();
}

void WorkCard::tell_refused(const Error& error) {
  tell(widgets::say(error), false);
}

void WorkCard::show_run(bool runs) {
  const bool stop_had_focus = stop_->hasFocus();
  progress_->setRange(0, 0);
  progress_->setVisible(runs);
  stop_->setVisible(runs);
  stop_->setEnabled(true);
  // What begins by itself leaves the focus where it is.
  const auto focused =
      std::find_if(buttons_.begin(), buttons_.end(), [](const auto* each) { return each->hasFocus(); });
  const bool was_pressed = runs && focused != buttons_.end();
  pressed_ = was_pressed ? *focused : pressed_;
  for (widgets::Button* each : buttons_) {
    each->setEnabled(!runs);
  }
  if (was_pressed) {
    stop_->setFocus();
  } else if (stop_had_focus && pressed_ != nullptr) {
    pressed_->setFocus();
  }
}

}  // namespace shimwright::workshop

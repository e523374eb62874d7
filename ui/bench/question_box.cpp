#include "question_box.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;

QuestionBox::QuestionBox(QWidget* parent) : QFrame(parent), outer_(widgets::lay<QVBoxLayout>(this)) {
  widgets::set_part(this, "question");
  outer_->setContentsMargins(18, 10, 18, 10);
  hide();
}

void QuestionBox::show_state(const job::StepState& state) {
  const auto* held = std::get_if<job::Held>(&state);
  const std::vector<job::Question> questions = held == nullptr ? std::vector<job::Question>{} : held->questions;
  setVisible(!questions.empty());
  if (questions == shown_) {
    return;
  }
  shown_ = questions;
  if (content_ != nullptr) {
    content_->hide();
    content_->deleteLater();
  }
  content_ = child_of<QWidget>(this);
  outer_->addWidget(content_);
  auto* column = widgets::lay<QVBoxLayout>(content_, 10);
  for (const job::Question& each : questions) {
    auto* row = widgets::lay_in<QHBoxLayout>(column, 14);
    row->addWidget(child_of<widgets::Text>(content_, widgets::say(each.message)), 1);
    auto* button = child_of<Button>(content_, tr("It is right as it stands"));
    button->setObjectName(widgets::qt("button-confirm-" + each.code));
    connect(button, &Button::clicked, this, [this, code = each.code] { emit confirmed(code); });
    row->addWidget(button, 0, Qt::AlignVCenter);
  }
  content_->show();
}

}  // namespace shimwright::bench

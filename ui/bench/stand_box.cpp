#include "stand_box.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::child_of;

StandBox::StandBox(QWidget* parent)
    : QFrame(parent),
      heading_(child_of<widgets::Text>(this, QString(), "strong")),
      text_(child_of<widgets::Text>(this, QString())),
      button_(child_of<widgets::Button>(this, QString())) {
  widgets::set_part(this, "notice");
  auto* row = widgets::lay<QHBoxLayout>(this, 18);
  row->setContentsMargins(16, 8, 10, 8);
  auto* words = widgets::lay_in<QVBoxLayout>(row);
  row->setStretch(0, 1);
  words->setSpacing(2);
  words->addWidget(heading_);
  words->addWidget(text_);
  row->addWidget(button_, 0, Qt::AlignVCenter);
  button_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  connect(button_, &widgets::Button::clicked, this, &StandBox::pressed);
}

void StandBox::show_words(const QString& heading, const QString& text) {
  heading_->setText(heading);
  heading_->setVisible(!heading.isEmpty());
  text_->setText(text);
}

void StandBox::show_button(const QString& name, const QString& text) {
  button_->setObjectName(name);
  button_->set_action_text(text);
}

}  // namespace shimwright::bench

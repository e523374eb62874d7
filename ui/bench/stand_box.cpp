#include "stand_box.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::child_of;

StandBox::StandBox(QWidget* parent)
    : QFrame(parent),
      heading_(child_of<widgets::Text>(this, QString(), "strong")),
      text_(child_of<widgets::Text>(this, QString())),
      plain_(child_of<widgets::Button>(this, QString())),
      main_(child_of<widgets::Button>(this, QString(), widgets::Button::Kind::main)) {
  widgets::set_part(this, "notice");
  auto* row = widgets::lay<QHBoxLayout>(this, 18);
  row->setContentsMargins(16, 8, 10, 8);
  auto* words = widgets::lay_in<QVBoxLayout>(row);
  row->setStretch(0, 1);
  words->setSpacing(2);
  words->addWidget(heading_);
  words->addWidget(text_);
  for (widgets::Button* button : {plain_, main_}) {
    button->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    row->addWidget(button, 0, Qt::AlignVCenter);
    connect(button, &widgets::Button::clicked, this, &StandBox::pressed);
  }
}

void StandBox::show_words(const QString& heading, const QString& text) {
  heading_->setText(heading);
  heading_->setVisible(!heading.isEmpty());
  text_->setText(text);
  setAccessibleName(heading.isEmpty() ? text : heading);
}

void StandBox::show_button(const QString& name, const QString& text, bool main) {
  widgets::Button* shown = main ? main_ : plain_;
  shown->setObjectName(name);
  shown->set_action_text(text);
  plain_->setVisible(!main);
  main_->setVisible(main);
}

void StandBox::hide_button() {
  plain_->hide();
  main_->hide();
}

}  // namespace shimwright::bench

#include "shimwright/shell/choice_row.h"

#include <algorithm>

#include "shimwright/widgets/child.h"

namespace shimwright::shell {

ChoiceRow::ChoiceRow(const QString& title, const std::vector<Choice>& choices, QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 6);
  column->addWidget(widgets::child_of<widgets::Text>(this, title, "strong"));
  auto* row = widgets::lay_in<QHBoxLayout>(column, 10);
  for (const Choice& each : choices) {
    auto* button = widgets::child_of<widgets::Button>(this, each.text);
    button->setObjectName(QStringLiteral("button-") + each.name);
    button->setCheckable(true);
    connect(button, &QPushButton::clicked, this, [this, name = each.name] {
      set_chosen(name);
      emit chosen(name);
    });
    row->addWidget(button);
    buttons_.emplace_back(each.name, button);
  }
  row->addStretch();
}

bool ChoiceRow::offers(const QString& name) const {
  return std::any_of(buttons_.begin(), buttons_.end(), [&name](const auto& each) { return each.first == name; });
}

void ChoiceRow::set_chosen(const QString& name) {
  for (const auto& [each, button] : buttons_) {
    button->setChecked(each == name);
  }
}

}  // namespace shimwright::shell

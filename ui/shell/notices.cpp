#include "shimwright/shell/notices.h"

#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

Notices::Notices(QWidget* parent) : QWidget(parent), column_(widgets::lay<QVBoxLayout>(this, 6)) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

QHBoxLayout* Notices::add_bar(const QString& matter, const QString& sentence) {
  clear(matter);
  auto* bar = widgets::child_of<QFrame>(this);
  bar->setObjectName(QStringLiteral("notice-") + matter);
  bar->setAccessibleName(sentence);
  widgets::set_part(bar, "notice");
  auto* row = widgets::lay<QHBoxLayout>(bar, 12);
  row->setContentsMargins(16, 4, 10, 4);
  row->addWidget(widgets::child_of<widgets::Text>(bar, sentence), 1);
  column_->addWidget(bar);
  bars_[matter] = bar;
  return row;
}

void Notices::tell(const QString& matter, const QString& sentence, bool stays) {
  if (stays) {
    add_bar(matter, sentence)->setContentsMargins(16, 10, 16, 10);
    show_bar(matter);
    return;
  }
  offer(matter, sentence, tr("Understood"), {});
}

void Notices::offer(const QString& matter, const QString& sentence, const QString& action, std::function<void()> act) {
  auto* row = add_bar(matter, sentence);
  auto* button = widgets::child_of<widgets::Button>(row->parentWidget(), action);
  button->setObjectName(QStringLiteral("button-notice-") + matter);
  connect(button, &QPushButton::clicked, this, [this, matter, act = std::move(act)] {
    clear(matter);
    if (act) {
      act();
    }
  });
  row->addWidget(button);
  show_bar(matter);
}

void Notices::show_bar(const QString& matter) {
  bars_[matter]->show();
  column_->setContentsMargins(20, 8, 20, 8);
}

void Notices::clear(const QString& matter) {
  const auto found = bars_.find(matter);
  if (found != bars_.end()) {
    found->second->hide();
    // Out of the window at once: it may be pressed and told anew before it is deleted.
    found->second->setParent(nullptr);
    found->second->deleteLater();
    bars_.erase(found);
    if (bars_.empty()) {
      column_->setContentsMargins(0, 0, 0, 0);
    }
  }
}

}  // namespace shimwright::shell

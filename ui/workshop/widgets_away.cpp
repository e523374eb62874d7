#include "widgets_away.h"

#include <QLayout>
#include <memory>

#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

void empty_column(QWidget& holder) {
  while (const auto item = std::unique_ptr<QLayoutItem>(holder.layout()->takeAt(0))) {
    if (QWidget* const widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

namespace {

widgets::Scroll* page_of(const QWidget& what) {
  for (QWidget* above = what.parentWidget(); above != nullptr; above = above->parentWidget()) {
    if (auto* page = qobject_cast<widgets::Scroll*>(above)) {
      return page;
    }
  }
  return nullptr;
}

}  // namespace

void show_form(QWidget& form) {
  // Forms come up below the heading of their page.
  if (widgets::Scroll* const page = page_of(form)) {
    page->show_top();
    page->show_child(form.focusWidget() != nullptr ? form.focusWidget() : &form);
  }
}

void bring_into_sight(QWidget& what) {
  if (widgets::Scroll* const page = page_of(what)) {
    page->show_child(&what);
  }
}

}  // namespace shimwright::workshop

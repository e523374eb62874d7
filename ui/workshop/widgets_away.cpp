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

void show_form(QWidget& form) {
  for (QWidget* above = form.parentWidget(); above != nullptr; above = above->parentWidget()) {
    if (auto* page = qobject_cast<widgets::Scroll*>(above)) {
      page->show_child(&form);
    }
  }
}

}  // namespace shimwright::workshop

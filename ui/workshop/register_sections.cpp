#include "register_sections.h"

#include <QLayoutItem>
#include <memory>

#include "natural_text.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;

}  // namespace

void clear(widgets::Scroll& page) {
  // Laid out at once when it is shown again, instead of piece by piece under the eyes.
  page.content()->hide();
  while (const auto item = std::unique_ptr<QLayoutItem>(page.column()->takeAt(0))) {
    if (QWidget* const widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

void add_heading(widgets::Scroll& page, const QString& text, bool demonstration) {
  page.column()->addSpacing(8);
  static_cast<void>(add_heading_line(page.content(), page.column(), text, demonstration));
}

void add_text(widgets::Scroll& page, const QString& text) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), text, "soft"));
}

void end_page(widgets::Scroll& page) {
  page.column()->addStretch(1);
  page.content()->show();
}

}  // namespace shimwright::workshop

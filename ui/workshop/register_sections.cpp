#include "register_sections.h"

#include <QLayoutItem>
#include <algorithm>
#include <memory>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;

constexpr int heading_beside_mark = 480;  // from this width on it wraps

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
  auto* line = child_of<QWidget>(page.content());
  auto* row = widgets::lay<QHBoxLayout>(line, 14);
  row->setContentsMargins(0, 8, 0, 0);
  auto* heading = child_of<widgets::Text>(line, text, "heading");
  row->addWidget(heading, demonstration ? 0 : 1);
  if (demonstration) {
    heading->ensurePolished();
    heading->setMinimumWidth(std::min(heading_beside_mark, heading->fontMetrics().horizontalAdvance(text) + 4));
    row->addWidget(widgets::demonstration_mark(line));
    row->addStretch(1);
  }
  page.column()->addWidget(line);
}

void add_text(widgets::Scroll& page, const QString& text) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), text, "soft"));
}

void end_page(widgets::Scroll& page) {
  page.column()->addStretch(1);
  page.content()->show();
}

}  // namespace shimwright::workshop

#include "natural_text.h"

#include <QRegularExpression>
#include <algorithm>

#include "flow_row.h"
#include "shimwright/widgets/child.h"

namespace shimwright::workshop {

int widest_word(const QLabel& label) {
  static const QRegularExpression between(QStringLiteral("[ \n]"));
  int widest = 0;
  for (const QString& word : label.text().split(between)) {
    widest = std::max(widest, label.fontMetrics().horizontalAdvance(word));
  }
  return widest;
}

QSize NaturalText::sizeHint() const {
  ensurePolished();
  return {fontMetrics().horizontalAdvance(text()) + 4, fontMetrics().height()};
}

QSize NaturalText::minimumSizeHint() const {
  ensurePolished();
  return {widest_word(*this) + 4, fontMetrics().height()};
}

NaturalText* add_heading_line(QWidget* parent, QBoxLayout* into, const QString& text, bool demonstration) {
  auto* line = widgets::child_of<FlowRow>(parent);
  auto* heading = widgets::child_of<NaturalText>(line, text, "heading");
  line->add(heading);
  if (demonstration) {
    auto* beside = widgets::child_of<QWidget>(line);
    // In the middle of the heading's line.
    beside->setFixedHeight(heading->sizeHint().height());
    widgets::lay<QVBoxLayout>(beside)->addWidget(widgets::demonstration_mark(beside), 0, Qt::AlignVCenter);
    line->add(beside);
  }
  into->addWidget(line);
  return heading;
}

}  // namespace shimwright::workshop

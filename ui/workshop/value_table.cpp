#include "value_table.h"

#include <QGridLayout>
#include <algorithm>
#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

constexpr int row_height = 40;

/// No word or number is broken: `0.` over `001` would be read wrongly.
int widest_word(const QLabel& label) {
  int widest = 0;
  for (const QString& word : label.text().split(QLatin1Char(' '))) {
    widest = std::max(widest, label.fontMetrics().horizontalAdvance(word));
  }
  return widest;
}

}  // namespace

ValueTable::ValueTable(std::vector<Column> columns, QWidget* parent)
    : QFrame(parent), columns_(std::move(columns)), grid_(widgets::child_of<QGridLayout>(this)) {
  widgets::set_part(this, "card");
  grid_->setContentsMargins(20, 6, 20, 8);
  grid_->setHorizontalSpacing(18);
  grid_->setVerticalSpacing(0);
  int at = 0;
  for (const Column& each : columns_) {
    grid_->addWidget(widget_of(Cell(each.title, "small"), each), 0, at);
    grid_->setColumnStretch(at, each.share);
    ++at;
  }
  grid_->setRowMinimumHeight(0, 34);
}

void ValueTable::add_rule() {
  auto* rule = widgets::child_of<QFrame>(this);
  widgets::set_part(rule, "rule");
  rule->setFixedHeight(1);
  grid_->addWidget(rule, 2 * rows_ + 1, 0, 1, static_cast<int>(columns_.size()));
}

void ValueTable::add_row(const std::vector<Cell>& cells) {
  add_rule();
  const int row = 2 * rows_ + 2;
  const std::size_t count = std::min(cells.size(), columns_.size());
  for (std::size_t at = 0; at < count; ++at) {
    grid_->addWidget(widget_of(cells[at], columns_[at]), row, static_cast<int>(at));
  }
  grid_->setRowMinimumHeight(row, row_height);
  ++rows_;
}

QWidget* ValueTable::widget_of(const Cell& cell, const Column& column) {
  auto* text = widgets::child_of<widgets::Text>(this, cell.text, cell.part);
  text->setAlignment((column.figures ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  text->ensurePolished();
  text->setMinimumWidth(widest_word(*text) + 2);
  if (!cell.mark) {
    return text;
  }
  auto* holder = widgets::child_of<QWidget>(this);
  auto* row = widgets::lay<QHBoxLayout>(holder, 8);
  row->addWidget(widgets::child_of<widgets::MarkView>(holder, *cell.mark, 18));
  row->addWidget(text, 1);
  return holder;
}

}  // namespace shimwright::workshop

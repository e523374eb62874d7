#include "value_table.h"

#include <QGridLayout>
#include <algorithm>
#include <memory>
#include <utility>

#include "natural_text.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

constexpr int row_height = 30;
constexpr int head_height = 28;
constexpr int row_room = 5;  ///< above and below a row, to its line
constexpr int column_gap = 18;
constexpr int side_margin = 20;
constexpr int side_margin_of_blocks = 14;
constexpr int good_width = 150;  // narrower than that a longer text is no line but a pile of words
constexpr int mark_width = 18;
constexpr int mark_gap = 8;

void take_all(QGridLayout& grid) {
  while (grid.count() > 0) {
    const std::unique_ptr<QLayoutItem> taken(grid.takeAt(0));
  }
}

}  // namespace

ValueTable::ValueTable(std::vector<Column> columns, QWidget* parent)
    : QFrame(parent), columns_(std::move(columns)), grid_(widgets::child_of<QGridLayout>(this)) {
  widgets::set_part(this, "card");
  grid_->setSizeConstraint(QLayout::SetNoConstraint);
  grid_->setHorizontalSpacing(column_gap);
  grid_->setVerticalSpacing(row_room);
  for (const Column& each : columns_) {
    heads_.push_back(shown(Cell(each.title, "small")));
  }
  least_widths_.resize(columns_.size(), 0);
  good_widths_.resize(columns_.size(), 0);
  lay_out();
}

void ValueTable::add_row(const std::vector<Cell>& cells) {
  Row row{widgets::child_of<QFrame>(this), {}};
  widgets::set_part(row.rule, "rule");
  row.rule->setFixedHeight(1);
  bool is_new_column = false;
  const std::size_t count = std::min(cells.size(), columns_.size());
  for (std::size_t at = 0; at < count; ++at) {
    Shown cell = shown(cells[at]);
    cell.title = widgets::child_of<widgets::Text>(this, columns_[at].title, "small");
    if (cell.says_something) {
      is_new_column = is_new_column || least_widths_[at] == 0;
      const int mark = cells[at].mark ? mark_width + mark_gap : 0;
      const int natural = cell.text->fontMetrics().horizontalAdvance(cell.text->text()) + mark;
      good_widths_[at] = std::max(good_widths_[at], std::min(natural, good_width));
      least_widths_[at] =
          std::max({least_widths_[at], heads_[at].text->minimumWidth(), cell.text->minimumWidth() + mark});
    }
    row.cells.push_back(cell);
  }
  rows_.push_back(std::move(row));
  if (in_blocks_ || is_new_column) {
    lay_out();
  } else {
    lay_row(rows_.size() - 1);
  }
}

ValueTable::Shown ValueTable::shown(const Cell& cell) {
  Shown made;
  made.says_something = !cell.text.isEmpty() || cell.mark;
  made.text = widgets::child_of<widgets::Text>(this, cell.text, cell.part);
  made.text->ensurePolished();
  // No word or number is broken: `0.` over `001` would be read wrongly.
  made.text->setMinimumWidth(widest_word(*made.text) + 2);
  made.widget = made.text;
  if (cell.mark) {
    made.widget = widgets::child_of<QWidget>(this);
    auto* row = widgets::lay<QHBoxLayout>(made.widget, mark_gap);
    row->addWidget(widgets::child_of<widgets::MarkView>(made.widget, *cell.mark, mark_width));
    row->addWidget(made.text, 1);
  }
  return made;
}

int ValueTable::width_side_by_side() const {
  const auto columns = std::count_if(least_widths_.begin(), least_widths_.end(), [](int each) { return each > 0; });
  int width = 0;
  for (std::size_t at = 0; at < columns_.size(); ++at) {
    width += std::max(least_widths_[at], good_widths_[at]);
  }
  return width + column_gap * std::max(0, static_cast<int>(columns) - 1) + 2 * side_margin;
}

QSize ValueTable::minimumSizeHint() const {
  int title = 0;
  int text = 0;
  for (std::size_t at = 1; at < columns_.size(); ++at) {
    title = least_widths_[at] > 0 ? std::max(title, heads_[at].text->minimumWidth()) : title;
    text = std::max(text, least_widths_[at]);
  }
  const int first = least_widths_.empty() ? 0 : least_widths_.front();
  return {std::max(first, title + column_gap + text) + 2 * side_margin_of_blocks, grid_->totalMinimumSize().height()};
}

void ValueTable::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  if (in_blocks_ != (width() < width_side_by_side())) {
    in_blocks_ = !in_blocks_;
    lay_out();
  }
}

void ValueTable::lay_out() {
  take_all(*grid_);
  for (int row = 0; row < grid_->rowCount(); ++row) {
    grid_->setRowMinimumHeight(row, 0);
  }
  const int margin = in_blocks_ ? side_margin_of_blocks : side_margin;
  grid_->setContentsMargins(margin, row_room, margin, row_room);
  in_blocks_ ? lay_in_blocks() : lay_side_by_side();
  updateGeometry();
}

void ValueTable::lay_side_by_side() {
  for (int at = 0; at < static_cast<int>(columns_.size()); ++at) {
    const bool used = rows_.empty() || least_widths_[static_cast<std::size_t>(at)] > 0;
    const Column& column = columns_[static_cast<std::size_t>(at)];
    const Shown& head = heads_[static_cast<std::size_t>(at)];
    grid_->setColumnStretch(at, used ? column.share : 0);
    head.widget->setVisible(used);
    head.text->setAlignment((column.figures ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    grid_->addWidget(head.widget, 0, at);
  }
  grid_->setRowMinimumHeight(0, head_height);
  for (std::size_t row = 0; row < rows_.size(); ++row) {
    lay_row(row);
  }
}

void ValueTable::lay_row(std::size_t number) {
  const Row& row = rows_[number];
  const int line = 1 + 2 * static_cast<int>(number);
  row.rule->show();
  grid_->addWidget(row.rule, line, 0, 1, static_cast<int>(columns_.size()));
  for (int at = 0; at < static_cast<int>(row.cells.size()); ++at) {
    const Shown& cell = row.cells[static_cast<std::size_t>(at)];
    const bool figures = columns_[static_cast<std::size_t>(at)].figures;
    cell.text->setAlignment((figures ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    cell.title->hide();
    cell.widget->setVisible(least_widths_[static_cast<std::size_t>(at)] > 0);
    grid_->addWidget(cell.widget, line + 1, at);
  }
  grid_->setRowMinimumHeight(line + 1, row_height);
}

void ValueTable::lay_in_blocks() {
  for (int at = 0; at < static_cast<int>(columns_.size()); ++at) {
    grid_->setColumnStretch(at, at == 1 ? 1 : 0);
    heads_[static_cast<std::size_t>(at)].widget->hide();
  }
  int line = 0;
  for (const Row& row : rows_) {
    row.rule->setVisible(line > 0);
    grid_->addWidget(row.rule, line++, 0, 1, 2);
    for (std::size_t at = 0; at < row.cells.size(); ++at) {
      const Shown& cell = row.cells[at];
      cell.text->setAlignment(Qt::AlignLeft | Qt::AlignTop);
      cell.widget->setVisible(cell.says_something);
      cell.title->setVisible(cell.says_something && at > 0);
      if (!cell.says_something) {
        continue;
      }
      if (at == 0) {
        grid_->addWidget(cell.widget, line++, 0, 1, 2);
      } else {
        grid_->addWidget(cell.title, line, 0, Qt::AlignTop);
        grid_->addWidget(cell.widget, line++, 1);
      }
    }
  }
}

}  // namespace shimwright::workshop

#pragma once

#include <optional>
#include <vector>

#include <QFrame>
#include <QString>

#include "shimwright/widgets/marks.h"

class QGridLayout;

namespace shimwright::workshop {

struct Column {
  QString title;
  int share = 1;         ///< of the width that is left
  bool figures = false;  ///< to the right
};

struct Cell {
  Cell(QString shown) : text(std::move(shown)) {}  // NOLINT(google-explicit-constructor): a cell is mostly its text
  Cell(QString shown, const char* as_part, std::optional<widgets::Mark> with = std::nullopt)
      : text(std::move(shown)), part(as_part), mark(with) {}

  QString text;
  const char* part = nullptr;  ///< as in widgets::set_part()
  std::optional<widgets::Mark> mark;
};

/// A card with headings and rows to read.
class ValueTable : public QFrame {
  Q_OBJECT

 public:
  explicit ValueTable(std::vector<Column> columns, QWidget* parent = nullptr);
  /// A cell for each column.
  void add_row(const std::vector<Cell>& cells);
  [[nodiscard]] int row_count() const { return rows_; }

 private:
  void add_rule();
  [[nodiscard]] QWidget* widget_of(const Cell& cell, const Column& column);

  std::vector<Column> columns_;
  QGridLayout* grid_;
  int rows_ = 0;
};

}  // namespace shimwright::workshop

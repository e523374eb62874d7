#pragma once

#include <optional>
#include <vector>

#include <QFrame>
#include <QString>

#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/parts.h"

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

/// A card with headings and rows to read. Where it is too narrow for its columns, a row stands as a block: what it is
/// of above, and what each column says of it below. A column that says nothing takes no room.
class ValueTable : public QFrame {
  Q_OBJECT

 public:
  explicit ValueTable(std::vector<Column> columns, QWidget* parent = nullptr);
  /// A cell for each column.
  void add_row(const std::vector<Cell>& cells);
  [[nodiscard]] int row_count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Shown {
    QWidget* widget = nullptr;       ///< the text, or what holds it and its mark
    widgets::Text* text = nullptr;   ///< of its own line
    widgets::Text* title = nullptr;  ///< its column's title, before it in a block
    bool says_something = false;
  };
  struct Row {
    QFrame* rule;
    std::vector<Shown> cells;
  };

  [[nodiscard]] Shown shown(const Cell& cell);
  [[nodiscard]] int width_side_by_side() const;
  void lay_out();
  void lay_side_by_side();
  void lay_row(std::size_t number);
  void lay_in_blocks();

  std::vector<Column> columns_;
  std::vector<Shown> heads_;
  std::vector<int> least_widths_;  ///< of each column that says something
  std::vector<int> good_widths_;   ///< from which on they stand beside each other
  std::vector<Row> rows_;
  QGridLayout* grid_;
  bool in_blocks_ = false;
};

}  // namespace shimwright::workshop

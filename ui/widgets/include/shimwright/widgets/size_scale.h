#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QWidget>

class QPainter;

namespace shimwright::widgets {

struct SizeCell {
  std::string shim;             ///< `2.10`
  std::optional<double> to_mm;  ///< border to the next thicker one; unset at the last and where none is known
  bool chosen = false;
  bool candidate = false;  ///< on an edge: one of the two
};

/// The sizes around the wanted one side by side, borders below, a pointer where the wanted thickness lies (`at_mm`,
/// between the middle of the cells by their borders).
class SizeScale : public QWidget {
  Q_OBJECT

 public:
  explicit SizeScale(QWidget* parent = nullptr);
  /// Thin to thick; at most seven are drawn, those around `at_mm`.
  void set_cells(const std::vector<SizeCell>& cells, std::optional<double> at_mm);
  [[nodiscard]] std::vector<std::string> shown() const;   ///< the sizes that are drawn
  [[nodiscard]] std::optional<double> pointer_x() const;  ///< pixels from the left
  [[nodiscard]] QSize sizeHint() const override { return {420, 96}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] std::size_t wanted_cell() const;
  [[nodiscard]] std::size_t first_shown() const;
  [[nodiscard]] std::size_t count_shown() const;
  [[nodiscard]] double cell_width() const;
  [[nodiscard]] double left_edge() const;
  void paint_cells(QPainter& painter) const;

  std::vector<SizeCell> cells_;
  std::optional<double> at_mm_;
};

}  // namespace shimwright::widgets

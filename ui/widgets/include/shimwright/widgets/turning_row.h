#pragma once

#include <QBoxLayout>

namespace shimwright::widgets {

/// A row whose parts stand below each other where it is too narrow for them side by side. It asks for no more width
/// than its widest part needs, so what it lies in has to scroll.
class TurningRow : public QBoxLayout {
 public:
  explicit TurningRow(QWidget* parent = nullptr) : QBoxLayout(QBoxLayout::LeftToRight, parent) {}

  /// Narrower than that it turns, whatever its parts could bear.
  void set_least_width(int width) { least_width_ = width; }
  void setGeometry(const QRect& rect) override;
  [[nodiscard]] QSize minimumSize() const override;

 private:
  [[nodiscard]] int width_side_by_side() const;

  int least_width_ = 0;
};

}  // namespace shimwright::widgets

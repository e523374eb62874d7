#pragma once

#include <QAbstractButton>

#include "shimwright/widgets/shim_rows.h"

namespace shimwright::widgets {

/// One row of ShimRows, painted.
class ShimRowButton : public QAbstractButton {
  Q_OBJECT

 public:
  explicit ShimRowButton(QWidget* parent = nullptr);
  void set_row(const ShimRow& row, const QString& advised_word);
  [[nodiscard]] const ShimRow& row() const { return row_; }
  /// Pixels for a share of 1, the words begin behind them.
  void set_bar_scale(double pixels);
  static constexpr int bar_start = 118;
  [[nodiscard]] double bar_width() const;
  /// What is said of the tray in so many pixels: all of it, in short, or cut.
  [[nodiscard]] QString tray_shown(int room) const;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void paint_frame(QPainter& painter) const;
  void paint_words(QPainter& painter) const;
  void paint_bar(QPainter& painter) const;

  ShimRow row_;
  QString advised_word_;
  double bar_scale_ = 0;
};

}  // namespace shimwright::widgets

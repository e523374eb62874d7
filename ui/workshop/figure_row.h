#pragma once

#include <QAbstractButton>

namespace shimwright::workshop {

/// One figure: what it is, its number, and a bar as long as its share of the largest beside it. Pressed, its jobs are
/// shown.
class FigureRow : public QAbstractButton {
  Q_OBJECT

 public:
  /// `share` from 0 to 1; less than 0: no bar.
  FigureRow(const QString& title, const QString& number, double share, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QString number_;
  double share_;
};

}  // namespace shimwright::workshop

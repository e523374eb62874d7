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
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int title_width() const;
  /// The widest title of its list: the bars begin at one place.
  void set_title_room(int width);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  [[nodiscard]] int number_width() const;
  [[nodiscard]] QRect title_place(int width) const;
  [[nodiscard]] int height_at(int width) const;

  QString number_;
  double share_;
  int title_room_ = 0;
};

}  // namespace shimwright::workshop

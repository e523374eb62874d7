#pragma once

#include <QAbstractButton>

namespace shimwright::workshop {

/// One name in the list of sections; the chosen one is checked. Up and down go to its neighbours.
class SectionButton : public QAbstractButton {
  Q_OBJECT

 public:
  explicit SectionButton(const QString& title, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;

 signals:
  void wants_neighbour(int step);  ///< -1 up, 1 down

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace shimwright::workshop

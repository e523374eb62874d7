#pragma once

#include <QAbstractButton>
#include <QPixmap>

namespace shimwright::bench {

/// A picture, small, that can be pressed: by a click, Space, or Enter while it has the focus.
class PictureButton : public QAbstractButton {
  Q_OBJECT

 public:
  /// `name` stands below the picture.
  PictureButton(const QPixmap& picture, const QString& name, QWidget* parent);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QPixmap picture_;
};

/// The picture in a file, turned as its camera held it and no larger than this; null where the file is no picture.
[[nodiscard]] QPixmap small_picture(const QString& file, const QSize& most);

}  // namespace shimwright::bench

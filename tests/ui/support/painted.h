#pragma once

#include <QApplication>
#include <QImage>
#include <QWidget>
#include <catch2/catch.hpp>
#include <utility>

#include "shimwright/widgets/style.h"

/// Looking at what a widget paints.
namespace shimwright::test {

/// The application dressed with the built-in type while this lives, and undressed afterwards.
class Dressed {
 public:
  explicit Dressed(widgets::Scheme scheme);
  Dressed(const Dressed&) = delete;
  Dressed& operator=(const Dressed&) = delete;
  ~Dressed();

 private:
  print::Fonts fonts_;
};

inline print::Fonts loaded_fonts() {
  auto fonts = print::load_fonts();
  REQUIRE(fonts);
  return std::move(*fonts);
}

inline Dressed::Dressed(widgets::Scheme scheme) : fonts_(loaded_fonts()) {
  widgets::dress(*qApp, scheme, fonts_);
}

inline Dressed::~Dressed() {
  qApp->setStyleSheet({});
  QApplication::setPalette(QPalette());
  QApplication::setFont(QFont());
}

/// The widget as it is painted at that size, whether shown or not.
inline QImage painted(QWidget& widget, const QSize& size) {
  widget.resize(size);
  return widget.grab().toImage();
}

/// Its shape without its colours: which pixels differ from the one at the top left.
[[nodiscard]] inline QImage shape_of(const QImage& image) {
  QImage shape(image.size(), QImage::Format_RGB32);
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      shape.setPixelColor(x, y, image.pixelColor(x, y) == image.pixelColor(0, 0) ? Qt::white : Qt::black);
    }
  }
  return shape;
}

/// How many pixels have exactly that colour.
[[nodiscard]] inline int count_of(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      count += image.pixelColor(x, y).rgb() == colour.rgb() ? 1 : 0;
    }
  }
  return count;
}

/// Calls `look` with the colours of the light and then of the dark scheme while the application wears them.
template <class Look>
void in_both_schemes(const Look& look) {
  for (const widgets::Scheme scheme : {widgets::Scheme::light, widgets::Scheme::dark}) {
    const Dressed dressed(scheme);
    look(widgets::colours_of(scheme));
  }
}

}  // namespace shimwright::test

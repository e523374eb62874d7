#include "painted.h"

#include <QApplication>
#include <catch2/catch.hpp>
#include <utility>

namespace shimwright::test {

namespace {

print::Fonts loaded_fonts() {
  auto fonts = print::load_fonts();
  REQUIRE(fonts);
  return std::move(*fonts);
}

}  // namespace

Dressed::Dressed(widgets::Scheme scheme) : fonts_(loaded_fonts()) {
  widgets::dress(*qApp, scheme, fonts_);
}

Dressed::~Dressed() {
  qApp->setStyleSheet({});
  QApplication::setPalette(QPalette());
  QApplication::setFont(QFont());
}

QImage painted(QWidget& widget, const QSize& size) {
  widget.resize(size);
  return widget.grab().toImage();
}

QImage shape_of(const QImage& image) {
  QImage shape(image.size(), QImage::Format_RGB32);
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      shape.setPixelColor(x, y, image.pixelColor(x, y) == image.pixelColor(0, 0) ? Qt::white : Qt::black);
    }
  }
  return shape;
}

int count_of(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      count += image.pixelColor(x, y).rgb() == colour.rgb() ? 1 : 0;
    }
  }
  return count;
}

}  // namespace shimwright::test

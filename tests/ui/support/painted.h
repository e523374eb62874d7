#pragma once

#include <QImage>
#include <QWidget>

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

/// The widget as it is painted at that size, whether shown or not.
QImage painted(QWidget& widget, const QSize& size);
/// Its shape without its colours: which pixels differ from the one at the top left.
[[nodiscard]] QImage shape_of(const QImage& image);
/// How many pixels have exactly that colour.
[[nodiscard]] int count_of(const QImage& image, const QColor& colour);

/// Calls `look` with the colours of the light and then of the dark scheme while the application wears them.
template <class Look>
void in_both_schemes(const Look& look) {
  for (const widgets::Scheme scheme : {widgets::Scheme::light, widgets::Scheme::dark}) {
    const Dressed dressed(scheme);
    look(widgets::colours_of(scheme));
  }
}

}  // namespace shimwright::test

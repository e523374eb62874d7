#include "shimwright/widgets/style.h"

#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

using namespace shimwright;
using widgets::Scheme;

namespace {

double part_of_light(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

/// Contrast as WCAG 2.1 defines it.
double contrast(const QColor& one, const QColor& other) {
  const auto light = [](const QColor& colour) {
    return 0.2126 * part_of_light(colour.redF()) + 0.7152 * part_of_light(colour.greenF()) +
           0.0722 * part_of_light(colour.blueF());
  };
  const double a = light(one);
  const double b = light(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

}  // namespace

TEST_CASE("text can be read on whatever it stands on, in both schemes") {
  for (const Scheme scheme : {Scheme::light, Scheme::dark}) {
    const widgets::Colours& colours = widgets::colours_of(scheme);
    for (const QColor& behind : {colours.ground, colours.bar, colours.card, colours.wash, colours.amber_wash}) {
      CHECK(contrast(colours.text, behind) >= 7.0);
      CHECK(contrast(colours.soft, behind) >= 4.5);
      CHECK(contrast(colours.brick, behind) >= 4.5);
    }
    CHECK(contrast(colours.on_blue, colours.blue) >= 4.5);
    CHECK(contrast(colours.on_amber, colours.amber) >= 7.0);
    CHECK(contrast(colours.edge, colours.card) >= 3.0);
  }
}

TEST_CASE("a widget knows the scheme it is dressed in") {
  auto fonts = print::load_fonts();
  REQUIRE(fonts);
  auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
  for (const Scheme scheme : {Scheme::dark, Scheme::light}) {
    widgets::dress(application, scheme, *fonts);
    const QLabel label("text");
    CHECK(&widgets::colours_of(label) == &widgets::colours_of(scheme));
    CHECK(label.fontInfo().family() == "Open Sans");
    CHECK(QApplication::font().pixelSize() == 17);
  }
  application.setStyleSheet({});
  QApplication::setFont({});
}

TEST_CASE("a placeholder is painted in the soft colour, which can be read") {
  auto fonts = print::load_fonts();
  REQUIRE(fonts);
  auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
  for (const Scheme scheme : {Scheme::dark, Scheme::light}) {
    widgets::dress(application, scheme, *fonts);
    const widgets::Colours& colours = widgets::colours_of(scheme);
    QLineEdit edit;
    edit.setPlaceholderText("VIN, plate, job, or scan");
    edit.resize(400, 60);
    const QImage image = edit.grab().toImage();
    CHECK(edit.palette().color(QPalette::PlaceholderText) == colours.soft);
    double most = 0;
    for (int y = 12; y < 48; ++y) {
      for (int x = 12; x < 300; ++x) {
        most = std::max(most, contrast(image.pixelColor(x, y), colours.card));
      }
    }
    CHECK(most >= 4.5);
  }
  application.setStyleSheet({});
  QApplication::setFont({});
}

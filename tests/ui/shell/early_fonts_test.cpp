#include "shimwright/shell/early_fonts.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>

#include "shimwright/print/fonts.h"

using namespace shimwright;

TEST_CASE("fonts read early are the fonts that a window then has") {
  const QStringList before = QFontDatabase::families();
  const auto reading = shell::read_fonts_early();
  const auto fonts = print::load_fonts();  // while the other thread may still be at it
  REQUIRE(fonts.has_value());
  reading.wait();
  CHECK(QFontDatabase::families().contains(fonts->regular().family()));
  for (const QString& family : before) {
    CHECK(QFontDatabase::families().contains(family));
  }
}

TEST_CASE("the list of fonts may be read early twice") {
  const auto first = shell::read_fonts_early();
  const auto second = shell::read_fonts_early();
  first.wait();
  second.wait();
  CHECK(print::load_fonts().has_value());
}

TEST_CASE("a window is dressed once the list of fonts is there, and again in another scheme") {
  shell::EarlyFonts fonts(shell::read_fonts_early());
  REQUIRE(fonts.dress(*qApp, widgets::Scheme::dark));
  CHECK(QApplication::font().pixelSize() == widgets::pixels::base);
  const QColor dark = QApplication::palette().color(QPalette::Window);
  REQUIRE(fonts.dress(*qApp, widgets::Scheme::light));
  CHECK(QApplication::palette().color(QPalette::Window).lightness() > dark.lightness());
}

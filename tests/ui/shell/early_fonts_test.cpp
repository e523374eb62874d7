#include "shimwright/shell/early_fonts.h"

#include <catch2/catch.hpp>

#include <QFontDatabase>

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

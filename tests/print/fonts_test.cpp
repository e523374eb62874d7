#include <set>

#include <QFontMetricsF>
#include <QRawFont>

#include <catch2/catch.hpp>

#include "shimwright/print/fonts.h"

using namespace shimwright;

// Qt's macros have to stand outside of any namespace.
static void take_fonts_away() {
  Q_CLEANUP_RESOURCE(shimwright_fonts);
}
static void bring_fonts_back() {
  Q_INIT_RESOURCE(shimwright_fonts);
}

namespace {

std::set<qreal> digit_widths(QFont font, int pixels) {
  font.setPixelSize(pixels);
  const QFontMetricsF metrics(font);
  std::set<qreal> widths;
  for (const QChar digit : QStringLiteral("0123456789")) {
    widths.insert(metrics.horizontalAdvance(digit));
  }
  return widths;
}

}  // namespace

TEST_CASE("digits of the built-in type are equally wide in both weights") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  for (const int pixels : {17, 30, 144}) {
    CHECK(digit_widths(fonts->regular(), pixels).size() == 1);
    CHECK(digit_widths(fonts->semibold(), pixels).size() == 1);
  }
}

TEST_CASE("the two weights are the built-in files, not a stand-in of the machine") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const QRawFont regular = QRawFont::fromFont(fonts->regular());
  const QRawFont semibold = QRawFont::fromFont(fonts->semibold());
  CHECK(regular.familyName().startsWith("Open Sans"));
  CHECK(semibold.familyName().startsWith("Open Sans"));
  CHECK(regular.weight() == QFont::Normal);
  CHECK(semibold.weight() == QFont::DemiBold);
}

TEST_CASE("every mark the record prints is in the type") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  for (const QFont& font : {fonts->regular(), fonts->semibold()}) {
    const QRawFont raw = QRawFont::fromFont(font);
    for (const QChar mark : QStringLiteral("·±°“”’…–−%+:öäüßéñčř")) {
      CHECK(raw.supportsCharacter(mark));
    }
  }
}

TEST_CASE("the type stays when its holder is moved, and can be loaded twice") {
  auto first = print::load_fonts();
  REQUIRE(first);
  const print::Fonts held = std::move(*first);
  const auto second = print::load_fonts();
  REQUIRE(second);
  CHECK(held.regular().family() == second->regular().family());
}

TEST_CASE("where a built-in font is missing that is said, and nothing is drawn in another one") {
  take_fonts_away();
  const auto fonts = print::load_fonts();
  bring_fonts_back();
  REQUIRE_FALSE(fonts);
  CHECK(fonts.error().code == "font_missing");
  CHECK(print::load_fonts());
}

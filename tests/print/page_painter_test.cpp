#include "shimwright/print/page_painter.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>

#include <catch2/catch.hpp>

using namespace shimwright;
using record::FontRole;
using record::Ink;

namespace {

/// One element on a white page of 40 by 20 mm at 10 pixels a millimetre.
QImage drawn(const record::Element& element, const print::Fonts& fonts) {
  QImage image(400, 200, QImage::Format_RGB32);
  image.fill(Qt::white);
  record::Page page{40, 20, 2, {element}, {}};
  QPainter painter(&image);
  print::draw_page(painter, page, fonts, 10);
  painter.end();
  return image;
}

int marked(const QImage& image, const QRect& within) {
  int count = 0;
  for (int y = within.top(); y <= within.bottom(); ++y) {
    for (int x = within.left(); x <= within.right(); ++x) {
      count += image.pixelColor(x, y).lightness() < 200 ? 1 : 0;
    }
  }
  return count;
}

QRect whole() {
  return {0, 0, 400, 200};
}

}  // namespace

TEST_CASE("text is drawn where the page says and as wide as it was measured") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const print::FontMeasure measure(*fonts);
  const double width = measure.width_mm("0.93 N·m", FontRole::strong);
  CHECK(width == Approx(13.9).margin(1.5));
  record::TextRun run{5, 10, width, "0.93 N·m", FontRole::strong, Ink::text, 0};
  const QImage image = drawn(run, *fonts);
  CHECK(marked(image, QRect(50, 60, static_cast<int>(width * 10) + 2, 50)) > 200);
  CHECK(marked(image, whole()) == marked(image, QRect(48, 60, static_cast<int>(width * 10) + 4, 50)));
}

TEST_CASE("widths do not depend on the size they are drawn at") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const print::FontMeasure measure(*fonts);
  CHECK(measure.width_mm("11", FontRole::body) == Approx(2 * measure.width_mm("1", FontRole::body)));
  CHECK(measure.width_mm("1.95", FontRole::body) == Approx(measure.width_mm("8.43", FontRole::body)));
  CHECK(measure.ascent_mm(FontRole::title) > measure.ascent_mm(FontRole::body));
}

TEST_CASE("each verdict shape is told from the others without its colour") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const auto upper_and_lower = [&](record::ShapeKind kind) {
    const QImage image = drawn(record::Shape{kind, 20, 10, 8, Ink::text, Ink::text}, *fonts);
    return std::pair(marked(image, QRect(150, 50, 100, 49)), marked(image, QRect(150, 101, 100, 49)));
  };
  const auto [disc_up, disc_down] = upper_and_lower(record::ShapeKind::disc);
  CHECK(disc_up == Approx(disc_down).epsilon(0.05));
  const auto [large_up, large_down] = upper_and_lower(record::ShapeKind::triangle_up);
  CHECK(large_up * 1.5 < large_down);
  const auto [small_up, small_down] = upper_and_lower(record::ShapeKind::triangle_down);
  CHECK(small_down * 1.5 < small_up);
  const auto [half_up, half_down] = upper_and_lower(record::ShapeKind::half_disc);
  CHECK(half_up * 3 < half_down);
  const auto [diamond_up, diamond_down] = upper_and_lower(record::ShapeKind::diamond);
  CHECK(diamond_up == Approx(diamond_down).epsilon(0.05));
  CHECK(diamond_up < disc_up * 0.9);
}

TEST_CASE("lines, rectangles and hatches stay in their places") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const record::Box box{10, 5, 20, 10};
  const QRect around(98, 48, 205, 105);
  const QRect inside(110, 60, 180, 80);
  const QImage edge = drawn(record::Rectangle{box, std::nullopt, Ink::text}, *fonts);
  CHECK(marked(edge, whole()) == marked(edge, around));
  CHECK(marked(edge, inside) == 0);
  const QImage hatch = drawn(record::Hatch{box, 2, Ink::text}, *fonts);
  CHECK(marked(hatch, inside) > 300);
  CHECK(marked(hatch, whole()) == marked(hatch, around));
  const QImage line = drawn(record::Line{10, 5, 30, 5, 0.4, Ink::text}, *fonts);
  CHECK(marked(line, whole()) == marked(line, QRect(98, 46, 205, 8)));
  CHECK(marked(drawn(record::KeptPlace{box, record::KeptFor::seal_code}, *fonts), whole()) == 0);
}

TEST_CASE("the squares of a code are drawn where they belong, black on white, without lines between them") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const record::Code code{{10, 5, 3, 3}, 3, {true, true, false, false, true, true, true, false, true}};
  const QImage image = drawn(code, *fonts);
  for (int at = 0; at < 9; ++at) {
    const QColor middle = image.pixelColor(100 + 10 * (at % 3) + 5, 50 + 10 * (at / 3) + 5);
    CHECK((middle == Qt::black) == code.dark[static_cast<std::size_t>(at)]);
  }
  CHECK(image.pixelColor(110, 55) == Qt::black);
  CHECK(image.pixelColor(115, 60) == Qt::black);
  CHECK(marked(image, whole()) == 600);
  CHECK(marked(drawn(record::Code{{10, 5, 3, 3}, 0, {}}, *fonts), whole()) == 0);
}

TEST_CASE("a picture is drawn as large as fits, at the left and half way down, and a broken one is left out") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  QImage wide(40, 10, QImage::Format_RGB32);
  wide.fill(Qt::black);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  REQUIRE(buffer.open(QIODevice::WriteOnly));
  REQUIRE(wide.save(&buffer, "PNG"));
  const record::Box box{10, 5, 20, 10};
  const QImage image = drawn(record::Picture{box, bytes.toStdString()}, *fonts);
  CHECK(marked(image, whole()) == 200 * 50);
  CHECK(marked(image, QRect(100, 75, 200, 50)) == 200 * 50);
  CHECK(marked(drawn(record::Picture{box, "no picture"}, *fonts), whole()) == 0);
  CHECK(marked(drawn(record::Picture{box, ""}, *fonts), whole()) == 0);
}

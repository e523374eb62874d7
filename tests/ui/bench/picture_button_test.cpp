#include "picture_button.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a small picture is no larger than asked, and what is no picture gives none") {
  const QPixmap small =
      bench::small_picture(QStringLiteral(SHIMWRIGHT_DATA_DIR "/demo/photos/levers.png"), QSize(132, 99));
  REQUIRE_FALSE(small.isNull());
  CHECK(small.width() <= 132);
  CHECK(small.height() <= 99);
  CHECK(bench::small_picture(QStringLiteral(SHIMWRIGHT_DATA_DIR "/specs/D7-2.json"), QSize(132, 99)).isNull());
}

TEST_CASE("a picture is pressed by Space and Enter and is large enough for a glove") {
  bench::PictureButton button(QPixmap(), "front.jpg", nullptr);
  int pressed = 0;
  QObject::connect(&button, &bench::PictureButton::clicked, &button, [&] { ++pressed; });
  QTest::keyClick(&button, Qt::Key_Return);
  QTest::keyClick(&button, Qt::Key_Space);
  CHECK(pressed == 2);
  CHECK(button.accessibleName() == "front.jpg");
  CHECK(button.sizeHint().height() >= 48);
}

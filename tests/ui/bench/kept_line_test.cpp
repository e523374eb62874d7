#include "kept_line.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a kept line is there only with words") {
  bench::KeptLine line(nullptr);
  CHECK(line.isHidden());
  line.show_words(widgets::Mark::within, "kept: 9.5", false);
  CHECK_FALSE(line.isHidden());
  CHECK(line.words() == "kept: 9.5");
  line.show_words(widgets::Mark::none, QString());
  CHECK(line.isHidden());
}

TEST_CASE("what is typed and not sent is cleared by its button only") {
  bench::UnsentBox box("Answer first.", nullptr);
  CHECK(box.isHidden());
  int cleared = 0;
  QObject::connect(&box, &bench::UnsentBox::cleared, &box, [&] { ++cleared; });
  box.show();
  QTest::mouseClick(box.findChild<QAbstractButton*>("button-clear-typed"), Qt::LeftButton);
  CHECK(cleared == 1);
  CHECK(box.isHidden());
}

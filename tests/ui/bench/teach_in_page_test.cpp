#include "teach_in_page.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("values before and after, then key 1: completed") {
  test::PageDriver driver("teach-in-lower");
  CHECK(driver.part("field-touch-point-before")->hasFocus());
  driver.type("field-touch-point-before", "11,9");
  driver.enter("field-touch-point-before");
  driver.type("field-touch-point-after", "9.7");
  driver.enter("field-touch-point-after");
  CHECK(driver.state() == "open");
  CHECK(driver.page().hasFocus());
  CHECK(driver.page().take_digit(1));
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  CHECK(driver.page().strip().large == "9.7 mm within");
}

TEST_CASE("completed without a value after is told at its field; aborted wants a reason") {
  test::PageDriver driver("teach-in-lower");
  driver.press("button-completed");
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-touch-point-after")->hasFocus());
  driver.press("button-aborted");
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-reason")->hasFocus());
  driver.type("field-code", "P-4711");
  driver.type("field-reason", "oil too cold");
  CHECK_FALSE(driver.page().commit());
  driver.press("button-aborted");
  CHECK(driver.state() == "held");
  CHECK(driver.shows("1: aborted, code P-4711, oil too cold, by MK"));
  CHECK(driver.part("field-reason")->text().isEmpty());
}

TEST_CASE("a value off its limit holds the step, and every attempt stays listed") {
  test::PageDriver driver("teach-in-lower");
  driver.type("field-touch-point-after", "14.7");
  driver.press("button-completed");
  CHECK(driver.state() == "held");
  CHECK(driver.page().strip().large == "14.7 mm too large");
  CHECK(driver.page().take_burst("14.7"));
  CHECK(driver.page().take_burst("9.9"));
  CHECK(driver.page().take_digit(1));
  CHECK(driver.state() == "accepted");
  CHECK(driver.shows("1: completed"));
  CHECK(driver.shows("2: completed"));
}

TEST_CASE("what Aborted needs is asked for above it, and the keys that answer are named where the focus is") {
  test::PageDriver driver("teach-in-lower");
  const auto height_of = [&](QWidget* part) { return part->mapTo(&driver.page(), QPoint()).y(); };
  CHECK(height_of(driver.part("field-reason")) < height_of(driver.part<QWidget>("button-aborted")));
  driver.type("field-touch-point-before", "11,9");
  driver.enter("field-touch-point-before");
  driver.enter("field-touch-point-after");
  CHECK(driver.part<QLabel>("keys")->hasFocus());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  CHECK(driver.state() == "open");
}

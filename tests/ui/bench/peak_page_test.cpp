#include "peak_page.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("a peak within its limit is kept with Enter") {
  test::PageDriver driver("press-peak");
  CHECK(driver.main_text() == "Keep the reading");
  driver.type("field-torque", "9,5");
  driver.enter("field-torque");
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
}

TEST_CASE("a peak that is off stays listed, asks to back off, and the next one is another attempt") {
  test::PageDriver driver("press-peak");
  driver.type("field-torque", "18.5");
  driver.take();
  CHECK(driver.state() == "held");
  CHECK(driver.page().strip().large == QString::fromUtf8("18.5 N·m too large"));
  CHECK(driver.shows("Back off and inspect"));
  CHECK(driver.shows("That will be attempt 2, and 18.5 N·m stays on the record."));
  CHECK(driver.main_text() == "Back off and inspect");
  CHECK(driver.page().take_burst("11.0"));
  CHECK(driver.state() == "accepted");
  CHECK(driver.shows("1: 18.5 N·m too large"));
  CHECK(driver.shows("2: 11.0 N·m within"));
  CHECK_FALSE(driver.shows("Back off and inspect"));
}

TEST_CASE("one attempt too many is told, though its reading is within") {
  test::PageDriver driver("press-peak");
  for (const char* torque : {"18.5", "18.0", "17.5", "10.5"}) {
    driver.type("field-torque", torque);
    driver.take();
  }
  CHECK(driver.state() == "held");
  CHECK(driver.page().strip().large == "attempt 4, at most 3");
  CHECK(driver.shows("The spec sheet has at most 3 attempts"));
}

TEST_CASE("after an attempt that was off the next number is asked for once the parts were looked at") {
  test::PageDriver driver("press-peak");
  driver.type("field-torque", "18.5");
  driver.take();
  CHECK(driver.part<QFrame>("back-off")->hasFocus());
  CHECK_FALSE(driver.part("field-torque")->hasFocus());
  SECTION("looked at") {
    for (const bench::FootAction& action : driver.page().actions()) {
      if (action.main) {
        const auto act = action.act;
        act();
        break;
      }
    }
    CHECK(driver.main_text() == "Keep as attempt 2");
    CHECK(driver.part("field-torque")->hasFocus());
  }
  SECTION("a number typed all the same can be kept") {
    driver.type("field-torque", "18.0");
    CHECK(driver.main_text() == "Keep as attempt 2");
    driver.take();
    CHECK(driver.main_text() == "Back off and inspect");  // of the second one
  }
}

#include "reading_page.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("two temperatures are typed, Enter goes on and keeps them at the last field") {
  test::PageDriver driver("large-temperature");
  CHECK(driver.part("field-box")->hasFocus());
  CHECK(driver.shows("15 to 30 °C"));
  driver.type("field-box", "19,8");
  driver.enter("field-box");
  CHECK(driver.part("field-gauge")->hasFocus());
  CHECK(driver.state() == "open");
  driver.type("field-gauge", "19.9");
  driver.enter("field-gauge");
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  REQUIRE(driver.latest<job::Read>() != nullptr);
  CHECK(driver.latest<job::Read>()->readings.front().instrument->name == "thermometer 1");
  CHECK(driver.page().strip().large == "19.9 °C within");
}

TEST_CASE("a reading off its limit holds the step, is told large, and its field is free for another") {
  test::PageDriver driver("large-temperature");
  driver.type("field-box", "31.5");
  driver.type("field-gauge", "20");
  driver.take();
  CHECK(driver.state() == "held");
  CHECK(driver.left == 0);
  const auto strip = driver.page().strip();
  CHECK(strip.large == "31.5 °C too large");
  CHECK(QString(strip.small).replace(QChar::Nbsp, ' ') == "15 to 30 °C");
  CHECK(strip.mark == widgets::Mark::too_large);
  CHECK(driver.shows("kept: 31.5 °C too large, by MK"));
  CHECK(driver.part("field-box")->text().isEmpty());
  driver.type("field-box", "22");
  driver.enter("field-box");
  driver.enter("field-gauge");  // kept already: may stay blank
  CHECK(driver.state() == "accepted");
}

TEST_CASE("what is typed stays through a refresh, and what cannot be read is not sent") {
  test::PageDriver driver("large-temperature");
  driver.type("field-box", "1.9.8");
  driver.page().refresh();
  CHECK(driver.part("field-box")->text() == "1.9.8");
  driver.type("field-gauge", "19.9");
  driver.enter("field-gauge");
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-box")->hasFocus());
  CHECK_FALSE(driver.page().commit());
}

TEST_CASE("a gauge's burst goes into the first blank field and goes on as Enter would") {
  test::PageDriver driver("large-temperature");
  CHECK(driver.page().take_burst("19.8"));
  CHECK(driver.part("field-gauge")->hasFocus());
  CHECK(driver.page().take_burst("19.9"));
  CHECK(driver.state() == "accepted");
}

TEST_CASE("one of two readings may be kept alone; leaving keeps it too") {
  test::PageDriver driver("large-temperature");
  driver.type("field-gauge", "19.9");
  CHECK(driver.page().has_unsent());
  CHECK(driver.page().commit());
  CHECK(driver.state() == "in_work");
  CHECK(driver.left == 0);
  driver.page().take_focus();
  CHECK(driver.part("field-box")->hasFocus());
}

TEST_CASE("the main button with nothing typed says so at the field") {
  test::PageDriver driver("odometer");
  CHECK(driver.main_text() == "Keep the reading");
  driver.take();
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-distance")->hasFocus());
}

TEST_CASE("a stamp needs its sign, by button or typed; nought needs none") {
  test::PageDriver driver("stamp-lower");
  SECTION("missing") {
    driver.type("field-stamp", "0.12");
    driver.enter("field-stamp");
    CHECK(driver.state() == "open");
    driver.take();
    CHECK(driver.state() == "open");
    CHECK(driver.refusals.empty());  // it is told at the field
    driver.press("button-stamp-minus");
    CHECK(driver.shows("taken as \u22120.12 mm"));
    driver.enter("field-stamp");
    CHECK(driver.latest<job::Read>()->readings.front().number.base == -120);
  }
  SECTION("typed") {
    driver.type("field-stamp", "-0,12");
    driver.enter("field-stamp");
    CHECK(driver.latest<job::Read>()->readings.front().number.base == -120);
    CHECK(driver.shows("kept: \u22120.12 mm, by MK"));
  }
  SECTION("nought") {
    driver.type("field-stamp", "0");
    driver.enter("field-stamp");
    CHECK(driver.latest<job::Read>()->readings.front().number.base == 0);
  }
  CHECK(driver.state() == "accepted");
}

TEST_CASE("a count that must equal an earlier one says which, not how many") {
  test::PageDriver driver("locks-out");
  CHECK(driver.shows("Compared with “Count the transport locks in the new pack”"));
  driver.type("field-locks", "1");
  driver.enter("field-locks");
  CHECK(driver.state() == "held");
  CHECK(driver.page().strip().mark == widgets::Mark::not_equal);
}

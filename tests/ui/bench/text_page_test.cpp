#include "text_page.h"

#include <QPlainTextEdit>

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("words are kept by the main button, and stand on the page when it is seen again") {
  test::PageDriver driver("complaint-when");
  auto* words = driver.part<QPlainTextEdit>("field-text");
  CHECK(words->hasFocus());
  QTest::keyClicks(words, "cold, first gear");
  driver.page().refresh();
  CHECK(words->toPlainText() == "cold, first gear");
  CHECK(driver.main_text() == "Keep the words");
  driver.take();
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  CHECK(words->toPlainText().isEmpty());
  CHECK(driver.shows("kept: cold, first gear, by MK"));
  CHECK(driver.page().actions().empty());
  driver.press("button-write-again");
  CHECK(words->toPlainText() == "cold, first gear");
  CHECK(driver.main_text() == "Keep the words");
}

TEST_CASE("nothing written is refused with a sentence") {
  test::PageDriver driver("complaint-when");
  driver.take();
  CHECK(driver.refusals == std::vector<std::string>{"text_missing"});
}

TEST_CASE("a serial is ended with Enter, typed or scanned") {
  test::PageDriver driver("new-pack-serial");
  SECTION("typed") {
    driver.type("field-text", "26-1188");
    driver.enter("field-text");
  }
  SECTION("scanned") {
    CHECK(driver.page().take_burst("26-1188"));
  }
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
}

TEST_CASE("leaving keeps what is written") {
  test::PageDriver driver("complaint-when");
  QTest::keyClicks(driver.part<QPlainTextEdit>("field-text"), "when hot");
  CHECK(driver.page().has_unsent());
  CHECK(driver.page().commit());
  CHECK(driver.state() == "accepted");
  CHECK_FALSE(driver.page().has_unsent());
}

TEST_CASE("words of the last job come by one key; where there are none, that is said and nothing changes") {
  test::PageDriver driver("complaint-when");
  auto* words = driver.part<QPlainTextEdit>("field-text");
  QTest::keyClick(words, Qt::Key_F6);
  CHECK(driver.refusals == std::vector<std::string>{"no_last_job"});
  CHECK(words->toPlainText().isEmpty());
  CHECK_FALSE(driver.page().has_unsent());
}

#include "part_page.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("a part whose fields are blank is kept as the spec sheet has it") {
  test::PageDriver driver("guide-bolts-new");
  // Said beside the fields; in them it would look as if it were typed.
  CHECK(driver.part("field-guide-bolts-quantity")->placeholderText().isEmpty());
  CHECK(driver.part("field-guide-bolts-number")->placeholderText().isEmpty());
  const std::string number = driver.workbench().state().sheets.spec->part("guide-bolts")->number;
  CHECK(driver.shows("Left blank, it is as in the spec sheet: number " + number + ", quantity 6."));
  driver.take();
  REQUIRE(driver.latest<job::PartsFitted>() != nullptr);
  const auto& part = driver.latest<job::PartsFitted>()->parts.front();
  CHECK(part.quantity == 6);
  CHECK_FALSE(part.number.empty());
  CHECK(driver.left == 1);
}

TEST_CASE("number, quantity and batch are typed one after the other; Enter never keeps them") {
  test::PageDriver driver("new-pack");
  driver.type("field-clutch-pack-number", "DP-X");
  driver.enter("field-clutch-pack-number");
  CHECK(driver.part("field-clutch-pack-quantity")->hasFocus());
  driver.type("field-clutch-pack-quantity", "2");
  driver.enter("field-clutch-pack-quantity");
  CHECK(driver.part("field-clutch-pack-batch")->hasFocus());
  driver.type("field-clutch-pack-batch", "26-1188");
  driver.enter("field-clutch-pack-batch");
  CHECK(driver.state() == "open");
  driver.page().refresh();
  CHECK(driver.part("field-clutch-pack-batch")->text() == "26-1188");
  CHECK_FALSE(driver.page().commit());
  driver.take();
  CHECK(driver.state() == "accepted");
  CHECK(driver.shows("kept: DP-X, 2, batch 26-1188, by MK"));
  CHECK(driver.part("field-clutch-pack-batch")->text().isEmpty());
}

TEST_CASE("a quantity that cannot be read is told at its field, and a scan is a batch") {
  test::PageDriver driver("new-pack");
  driver.type("field-clutch-pack-quantity", "1.5");
  driver.take();
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-clutch-pack-quantity")->hasFocus());
  driver.page().take_burst("26-1188");
  CHECK(driver.part("field-clutch-pack-batch")->text() == "26-1188");
}

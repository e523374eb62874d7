#include "answer_pages.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("what is to be done is done by the main button") {
  test::PageDriver driver("battery-off");
  CHECK(driver.main_text() == "Done");
  driver.take();
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  CHECK(driver.page().actions().empty());
  CHECK(driver.shows("kept: done, by MK"));
}

TEST_CASE("a check is answered by a click or by key 1, and Enter left over from before answers nothing") {
  test::PageDriver driver("vehicle-secured");
  CHECK(driver.page().hasFocus());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  CHECK(driver.state() == "open");
  SECTION("by key") {
    CHECK(driver.page().take_digit(1));
  }
  SECTION("by click") {
    driver.press("button-in-order");
  }
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  CHECK_FALSE(driver.page().take_digit(3));
}

TEST_CASE("not in order asks for words in place, and Enter behind them keeps both") {
  test::PageDriver driver("vehicle-secured");
  CHECK(driver.page().take_digit(2));
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-finding")->hasFocus());
  CHECK(driver.shows("Say in a few words what is not in order"));
  driver.type("field-finding", "arm of the lift slips");
  driver.page().refresh();
  CHECK(driver.part("field-finding")->text() == "arm of the lift slips");
  driver.enter("field-finding");
  CHECK(driver.state() == "held");
  CHECK(driver.left == 0);
  CHECK(driver.shows("kept: not in order: arm of the lift slips, by MK"));
  CHECK_FALSE(driver.page().has_unsent());
}

TEST_CASE("words without an answer are not lost: the page asks for one, or to clear them") {
  test::PageDriver driver("vehicle-secured");
  driver.type("field-finding", "new tape on the arm");
  driver.enter("field-finding");
  CHECK(driver.state() == "open");
  CHECK(driver.page().has_unsent());
  CHECK_FALSE(driver.page().commit());
  SECTION("answered") {
    driver.press("button-in-order");
    REQUIRE(driver.latest<job::Checked>() != nullptr);
    CHECK(driver.latest<job::Checked>()->finding == "new tape on the arm");
  }
  SECTION("cleared") {
    driver.press("button-clear-typed");
    CHECK(driver.page().commit());
    CHECK(driver.state() == "open");
  }
}

TEST_CASE("an answer is chosen by its digit or a click; one that does not let the job on stays marked") {
  test::PageDriver driver("high-voltage");
  CHECK_FALSE(driver.page().take_digit(4));
  CHECK(driver.page().take_digit(3));
  CHECK(driver.state() == "held");
  CHECK(driver.left == 0);
  CHECK(driver.part<QAbstractButton>("button-live")->isChecked());
  CHECK(driver.shows("kept: not isolated yet, by MK"));
  driver.press("button-none");
  CHECK(driver.state() == "accepted");
  CHECK(driver.left == 1);
  CHECK_FALSE(driver.part<QAbstractButton>("button-live")->isChecked());
}

TEST_CASE("answers are as high as a glove needs") {
  test::PageDriver check("vehicle-secured");
  CHECK(check.part<QAbstractButton>("button-in-order")->height() >= 84);
  test::PageDriver choose("diagnosis");
  CHECK(choose.part<QAbstractButton>("button-pack")->height() >= 48);
}

TEST_CASE("the page of a signature says who signs, and a technician cannot check the own work") {
  test::PageDriver driver("sign-technician");
  CHECK(driver.shows("Mara Kestrel (MK) signs as technician"));
  CHECK(driver.main_text() == "Sign as technician");
  driver.take();
  CHECK(driver.state() == "accepted");
  driver.open("sign-checker");
  driver.take();
  CHECK(driver.refusals == std::vector<std::string>{"same_person"});
  driver.workbench().set_person(driver.workbench().persons().front());
  CHECK(driver.shows("signs as checker"));
  driver.take();
  CHECK(driver.state() == "accepted");
}

TEST_CASE("an answer that may have moved since is told, and no button stands pressed for it") {
  test::UiBench rig("04-parked-at-the-wrong-moment");
  rig.go_to("pack-lowered");
  REQUIRE(rig.workbench().send(job::TakeUp{}));
  const job::JobState& state = rig.workbench().state();
  REQUIRE(std::holds_alternative<job::Unproven>(state.step("large-shim-laid")));
  QWidget window;
  auto* page = bench::make_step_page(rig.workbench(), *state.sheets.job->find("large-shim-laid"), &window);
  CHECK_FALSE(page->findChild<QAbstractButton*>("button-in-order")->isChecked());
  auto* seen = bench::make_step_page(rig.workbench(), *state.sheets.job->find("levers-in-place"), &window);
  CHECK(seen->findChild<QAbstractButton*>("button-in-order")->isChecked());
}

TEST_CASE("the focus is seen on the line that names the keys, and Enter there keeps nothing") {
  for (const auto& [step, words] : {std::pair{"battery-off", "When it is done: Ctrl Enter."},
                                    {"vehicle-secured", "Answer with key 1 or key 2."},
                                    {"high-voltage", "Answer with a key from 1 to 3."},
                                    {"sign-technician", "To sign: Ctrl Enter."}}) {
    INFO(step);
    test::PageDriver driver(step);
    auto* keys = driver.part<QLabel>("keys");
    CHECK(keys->text() == words);
    CHECK(keys->isVisible());
    CHECK(keys->hasFocus());
    QTest::keyClick(keys, Qt::Key_Return);
    QTest::keyClick(keys, Qt::Key_Space);
    CHECK(driver.state() == "open");
  }
}

TEST_CASE("what is to be said where something is not in order is asked for above that answer") {
  test::PageDriver driver("vehicle-secured");
  const auto height_of = [&](QWidget* part) { return part->mapTo(&driver.page(), QPoint()).y(); };
  CHECK(height_of(driver.part("field-finding")) < height_of(driver.part<QWidget>("button-not-in-order")));
}

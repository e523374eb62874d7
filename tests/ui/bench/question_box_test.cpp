#include "question_box.h"

#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/parts.h"

using namespace shimwright;

TEST_CASE("each open question stands in place with its own answer") {
  bench::QuestionBox box(nullptr);
  box.resize(900, 300);
  box.show_state(job::Held{
      3, {{"turn_missed", {"A turn of the dial may be missing.", {}}}, {"unit_in_doubt", {"Hundredths?", {}}}}, true});
  CHECK_FALSE(box.isHidden());
  REQUIRE(QTest::qWaitForWindowExposed(&box));
  std::string confirmed;
  QObject::connect(&box, &bench::QuestionBox::confirmed, [&](const std::string& code) { confirmed = code; });
  auto* button = box.findChild<widgets::Button*>("button-confirm-unit_in_doubt");
  REQUIRE(button != nullptr);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(confirmed == "unit_in_doubt");
}

TEST_CASE("without a question there is no box") {
  QWidget window;
  bench::QuestionBox box(&window);
  window.show();
  box.show_state(job::Held{3, {{"turn_missed", {"A turn?", {}}}}, true});
  box.show_state(job::Accepted{3});
  CHECK(box.isHidden());
  box.show_state(job::Held{4, {}, false});
  CHECK(box.isHidden());
}

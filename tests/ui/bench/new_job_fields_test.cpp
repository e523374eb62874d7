#include "new_job_fields.h"

#include <catch2/catch.hpp>

#include "painted.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

std::vector<store::SheetIssue> two_issues(test::UiBench& bench) {
  auto issues = bench.store().registers().spec_sheets();
  REQUIRE(issues);
  REQUIRE(issues->size() == 1);
  store::SheetIssue other = issues->front();
  other.hash = "other";
  other.name = "X9";
  issues->push_back(other);
  return *issues;
}

}  // namespace

TEST_CASE("Enter in the complaint moves on and writes no line") {
  bench::FreeText text;
  int entered = 0;
  QObject::connect(&text, &bench::FreeText::entered, &text, [&] { ++entered; });
  text.show();
  QTest::keyClicks(&text, " shudders ");
  QTest::keyClick(&text, Qt::Key_Return);
  CHECK(entered == 1);
  CHECK(text.text() == "shudders");
}

TEST_CASE("every spec sheet is reached by keys, none by the wheel") {
  test::UiBench bench;
  bench::GearboxChoice choice;
  choice.set_issues(two_issues(bench));
  CHECK_FALSE(choice.chosen());
  choice.show();
  QTest::keyClick(&choice, Qt::Key_Down);
  CHECK(choice.chosen() == bench.spec_hash());
  CHECK(choice.chosen_is_demonstration());
  QTest::keyClick(&choice, Qt::Key_Down);
  CHECK(choice.chosen() == "other");
  QWheelEvent wheel({10, 10}, {10, 10}, {0, 0}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&choice, &wheel);
  CHECK(choice.chosen() == "other");
  int entered = 0;
  QObject::connect(&choice, &bench::GearboxChoice::entered, &choice, [&] { ++entered; });
  QTest::keyClick(&choice, Qt::Key_Return);
  CHECK(entered == 1);
  CHECK(choice.choose_gearbox("D7"));
  CHECK_FALSE(choice.choose_gearbox("none"));
  CHECK(choice.chosen() == bench.spec_hash());
}

TEST_CASE("the only spec sheet is chosen from the start") {
  test::UiBench bench;
  const auto issues = bench.store().registers().spec_sheets();
  REQUIRE(issues);
  bench::GearboxChoice choice;
  choice.set_issues(*issues);
  CHECK(choice.chosen() == bench.spec_hash());
  CHECK(choice.minimumHeight() >= 48);
}

TEST_CASE("a choice shows by an arrow that it is one") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    test::UiBench bench;
    bench::GearboxChoice choice;
    const auto arrow_of = [&] {
      const QImage image = test::painted(choice, {400, 54});
      return test::count_of(image.copy(image.width() - 36, 0, 36, image.height()), colours.text);
    };
    choice.set_issues({two_issues(bench).front()});
    CHECK(arrow_of() < 10);  // nothing to choose
    choice.set_issues(two_issues(bench));
    CHECK(arrow_of() > 30);
  });
}

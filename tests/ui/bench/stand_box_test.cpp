#include "stand_box.h"

#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("where a job stands is said in few lines, its button beside the words") {
  QWidget window;
  window.resize(800, 300);
  bench::StandBox box(&window);
  box.resize(760, 100);
  box.show_words({}, "Last: battery off\nNext: drain the oil");
  box.show_button("button-banner", "Go on", false);
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  auto* button = box.findChild<widgets::Button*>("button-banner");
  REQUIRE(button != nullptr);
  CHECK(box.heightForWidth(760) < 90);
  CHECK(button->x() > 600);
  QSignalSpy pressed(&box, &bench::StandBox::pressed);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(pressed.count() == 1);
}

TEST_CASE("where there is nothing to go on to there is no button") {
  bench::StandBox box(nullptr);
  box.show_button("button-banner", "Go on", false);
  box.hide_button();
  for (const auto* each : box.findChildren<widgets::Button*>()) {
    CHECK(each->isHidden());
  }
}

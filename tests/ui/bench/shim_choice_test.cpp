#include "shim_choice.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a shim is chosen by one press, thin to thick, and the choice can be left") {
  bench::ShimChoice choice;
  std::string chosen;
  int left = 0;
  QObject::connect(&choice, &bench::ShimChoice::chosen, [&](const std::string& shim) { chosen = shim; });
  QObject::connect(&choice, &bench::ShimChoice::left, [&] { ++left; });
  choice.show_tray("Which?", {},
                   {{"1.70", quantity::Length(1700), 0.003, 2}, {"1.65", quantity::Length(1652), 0.003, 1}}, "1.70");
  auto* button = choice.findChild<QPushButton*>("button-shim-1.65");
  REQUIRE(button != nullptr);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(chosen == "1.65");
  QTest::mouseClick(choice.findChild<QPushButton*>("button-leave-choice"), Qt::LeftButton);
  CHECK(left == 1);
  CHECK(choice.isHidden());
}

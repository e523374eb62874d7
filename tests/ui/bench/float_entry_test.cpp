#include "float_entry.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a refusal stands at the field it is about") {
  bench::FloatEntry entry(3, nullptr);
  CHECK(entry.blank());
  entry.findChild<QLineEdit*>("field-lifted")->setText("x");
  CHECK_FALSE(entry.blank());
  entry.show_refusal({"not_a_number", "lower-float/spot 1/lifted", {"No number.", {}}});
  CHECK(entry.faulty());
  entry.clear();
  CHECK(entry.blank());
  CHECK_FALSE(entry.faulty());
}

TEST_CASE("the spot in hand is told, and another can be wanted") {
  bench::FloatEntry entry(3, nullptr);
  int wanted = 0;
  QObject::connect(&entry, &bench::FloatEntry::spot_wanted, [&](int spot) { wanted = spot; });
  entry.show_spot(2, 3, 2);
  CHECK(entry.findChild<QLabel*>("float-run")->text() == "Spot 2, run 3");
  QTest::mouseClick(entry.findChild<QPushButton*>("button-spot-3"), Qt::LeftButton);
  CHECK(wanted == 3);
}

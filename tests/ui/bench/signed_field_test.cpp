#include "signed_field.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

struct Stamp {
  bench::SignedField field{"Stamp"};
  int entered = 0;
  Stamp() {
    field.name("stamp");
    QObject::connect(&field, &bench::SignedField::entered, [this] { ++entered; });
  }
  void type(const QString& text) {
    field.number()->edit()->clear();
    QTest::keyClicks(field.number()->edit(), text);
    QTest::keyClick(field.number()->edit(), Qt::Key_Return);
  }
};

}  // namespace

TEST_CASE("a stamp has no sign until it is chosen, and zero needs none") {
  Stamp stamp;
  stamp.type("0.12");
  CHECK(stamp.entered == 0);
  CHECK(stamp.field.text().empty());
  QTest::mouseClick(stamp.field.findChild<QPushButton*>("button-stamp-minus"), Qt::LeftButton);
  CHECK(stamp.field.text() == "-0.12");
  QTest::mouseClick(stamp.field.findChild<QPushButton*>("button-stamp-plus"), Qt::LeftButton);
  CHECK(stamp.field.text() == "+0.12");
  Stamp zero;
  zero.type("0.0");
  CHECK(zero.entered == 1);
  CHECK(zero.field.text() == "0.0");
}

TEST_CASE("a typed sign chooses the button, and what was kept is shown with it") {
  Stamp stamp;
  stamp.type("-0,12");
  CHECK(stamp.entered == 1);
  CHECK(stamp.field.text() == "-0,12");
  // The field says minus: a press on the other button must not make it plus.
  QTest::mouseClick(stamp.field.findChild<QPushButton*>("button-stamp-plus"), Qt::LeftButton);
  CHECK(stamp.field.text() == "-0,12");
  stamp.field.set_text("+0.05");
  CHECK(stamp.field.text() == "+0.05");
  CHECK(stamp.field.number()->edit()->text() == "0.05");
}

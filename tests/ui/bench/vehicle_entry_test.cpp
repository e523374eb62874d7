#include "vehicle_entry.h"

#include <catch2/catch.hpp>

#include "shimwright/widgets/parts.h"

using namespace shimwright;

namespace {

constexpr int year = 2026;

struct Entry {
  Entry() {
    entry.clear(year);
    entry.show();
    entry.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&entry));
    entry.take_focus();
    QObject::connect(&entry, &bench::VehicleEntry::entered, &entry, [this] { ++entered; });
  }

  QLineEdit& field() { return *entry.findChild<QLineEdit*>("field-vehicle"); }
  widgets::Button& take() { return *entry.findChild<widgets::Button*>("button-take-suggestion"); }
  QString notice() { return entry.findChild<QLabel*>("vehicle-notice")->text(); }
  void type(const QString& text) {
    QTest::keyClicks(&field(), text);
    QTest::keyClick(&field(), Qt::Key_Return);
  }

  bench::VehicleEntry entry;
  int entered = 0;
};

}  // namespace

TEST_CASE("a scanned number is taken and moves on") {
  Entry at;
  at.type("testvn009ta030417");
  CHECK(at.entered == 1);
  CHECK(at.entry.key() == "TESTVN009TA030417");
  CHECK(at.entry.typed() == "testvn009ta030417");
  CHECK(at.notice().isEmpty());
}

TEST_CASE("the letter O is marked, and one button takes 0 for it") {
  Entry at;
  at.type("TESTVNOO9TA030417");
  CHECK(at.entered == 0);
  CHECK_FALSE(at.entry.key());
  CHECK(at.notice().contains("TESTVN009TA030417"));
  CHECK(at.take().text() == "Take 0 for O");
  CHECK(at.take().isVisible());
  // Tab leads to it, Enter on it presses it: the number is right then and the focus can move on.
  QTest::keyClick(&at.field(), Qt::Key_Tab);
  CHECK(at.take().hasFocus());
  QTest::keyClick(&at.take(), Qt::Key_Return);
  CHECK(at.entered == 1);
  CHECK(at.entry.key() == "TESTVN009TA030417");
  CHECK_FALSE(at.take().isVisible());
}

TEST_CASE("wrong characters are found at their places") {
  using Places = std::vector<bench::WrongPlace>;
  CHECK(bench::wrong_places("TESTVNOO9").size() == 2);
  CHECK(bench::wrong_places("TESTVNOO9").front() == bench::WrongPlace{6, 1});
  CHECK(bench::wrong_places(QString::fromUtf8("A\u0410B")) == Places{{1, 1}});
  CHECK(bench::wrong_places(QString::fromUtf8("A\U0001F697B")) == Places{{1, 2}});
  CHECK(bench::wrong_places("TEST-VN 009").empty());
}

TEST_CASE("letters of another keyboard are offered as plain ones") {
  Entry at;
  at.entry.set("\u0422\u0415STVN009TA030417", std::nullopt);
  CHECK(at.take().text() == "Take plain letters");
  QTest::mouseClick(&at.take(), Qt::LeftButton);
  CHECK(at.entry.key() == "TESTVN009TA030417");
  CHECK(bench::words_for_suggestion("TESTVNOI9TA030417", "TESTVN019TA030417") == "Take 0 for O, 1 for I");
}

TEST_CASE("sixteen characters are told when Enter comes, eighteen at once") {
  Entry at;
  QTest::keyClicks(&at.field(), "TESTVN009TA03041");
  CHECK(at.notice().isEmpty());
  QTest::keyClick(&at.field(), Qt::Key_Return);
  CHECK(at.notice().contains("this one has 16"));
  CHECK(at.entered == 0);
  CHECK(at.field().hasFocus());
  QTest::keyClicks(&at.field(), "78");
  CHECK(at.notice().contains("this one has 18"));
  CHECK(at.field().text() == "TESTVN009TA0304178");
}

TEST_CASE("a check digit that does not fit is a note, no refusal") {
  Entry at;
  at.type("TESTVN008TA030417");
  CHECK(at.notice().contains("check digit"));
  CHECK(at.entered == 1);
}

TEST_CASE("a number that is no VIN is taken with a reason") {
  Entry at;
  at.type("ROW 12-7");
  CHECK(at.entered == 0);
  auto* no_vin = at.entry.findChild<widgets::Button*>("button-no-vin");
  REQUIRE(no_vin != nullptr);
  QTest::mouseClick(no_vin, Qt::LeftButton);
  auto* reason = at.entry.findChild<QLineEdit*>("field-chassis-reason");
  REQUIRE(reason != nullptr);
  CHECK(reason->hasFocus());
  CHECK(at.entry.chassis_reason() == "");
  CHECK(at.entry.key_to_look_for() == "ROW127");
  QTest::keyClick(reason, Qt::Key_Return);
  CHECK(at.notice().contains("needs a reason"));
  QTest::keyClicks(reason, "trailer without a VIN");
  QTest::keyClick(reason, Qt::Key_Return);
  CHECK(at.entered == 1);
  CHECK(at.entry.chassis_reason() == "trailer without a VIN");
  CHECK(at.entry.key() == "ROW127");
}

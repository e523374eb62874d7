#include "sheet_field.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <catch2/catch.hpp>

#include "workshop_texts.h"

using namespace shimwright;

namespace {

sheet::DraftField length_field() {
  return {"/lower/float/least_mm", sheet::FieldKind::length, {"Float, at least", {}}, "mm", "0.25", false, {}, ""};
}

}  // namespace

TEST_CASE("a number is committed once, as typed, and what it was understood as stands beside it") {
  workshop::SheetField field(length_field());
  std::vector<std::string> said;
  QObject::connect(&field, &workshop::SheetField::committed,
                   [&said](const std::string& /*place*/, const std::string& text) { said.push_back(text); });
  auto* edit = field.findChild<QLineEdit*>("field-/lower/float/least_mm");
  REQUIRE(edit != nullptr);
  edit->selectAll();
  QTest::keyClicks(edit, "0,3");
  CHECK(test::shown_in(field).contains("0.3"));
  CHECK(said.empty());
  QTest::keyClick(edit, Qt::Key_Return);
  QTest::keyClick(edit, Qt::Key_Return);
  CHECK(said == std::vector<std::string>{"0,3"});
  CHECK(edit->accessibleName() == "Float, at least, mm");
}

TEST_CASE("a sentence stands below until the text is changed") {
  workshop::SheetField field(length_field());
  field.set_fault("This is wrong.");
  CHECK(test::shown_in(field).contains("This is wrong."));
  QTest::keyClicks(field.findChild<QLineEdit*>(), "1");
  CHECK_FALSE(test::shown_in(field).contains("This is wrong."));
}

TEST_CASE("a choice is made with the arrow keys and not with the wheel") {
  workshop::SheetField field({"/x", sheet::FieldKind::yes_no, {"Hold point", {}}, "", "yes", false, {}, ""});
  field.show();
  auto* pick = field.findChild<QComboBox*>("field-/x");
  REQUIRE(pick != nullptr);
  CHECK(field.text() == "yes");
  QWheelEvent wheel({5, 5}, {5, 5}, {0, -120}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(pick, &wheel);
  CHECK(field.text() == "yes");
  QTest::keyClick(pick, Qt::Key_Down);
  CHECK(field.text() == "no");
}

#include "shimwright/widgets/number_field.h"

#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"

using namespace shimwright;

namespace {

struct Fields {
  QWidget window;
  widgets::NumberField* first = widgets::child_of<widgets::NumberField>(&window, "Depth", quantity::Unit::millimetre);
  widgets::NumberField* second =
      widgets::child_of<widgets::NumberField>(&window, "Reference", quantity::Unit::millimetre);
  int finished = 0;

  Fields() {
    auto* column = widgets::lay<QVBoxLayout>(&window);
    column->addWidget(first);
    column->addWidget(second);
    widgets::chain_fields({first, second}, [this] { ++finished; });
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    first->take_focus();
  }
};

QString shown_in(const widgets::NumberField& field) {
  QString all;
  for (const QLabel* label : field.findChildren<QLabel*>()) {
    all += label->isHidden() ? QString() : label->text() + "|";
  }
  return all.replace(QChar(0x00A0), QLatin1Char(' '));
}

}  // namespace

TEST_CASE("a number field shows what it understood, comma or point") {
  Fields fields;
  QTest::keyClicks(fields.first->edit(), "5,16");
  CHECK(fields.first->text() == "5,16");
  CHECK(shown_in(*fields.first).contains("5.16 mm"));
}

TEST_CASE("Enter moves on, and at the last field it finishes") {
  Fields fields;
  QTest::keyClicks(fields.first->edit(), "5.16");
  QTest::keyClick(fields.first->edit(), Qt::Key_Return);
  CHECK(fields.second->edit()->hasFocus());
  CHECK(fields.finished == 0);
  QTest::keyClicks(fields.second->edit(), "2.9");
  QTest::keyClick(fields.second->edit(), Qt::Key_Return);
  CHECK(fields.finished == 1);
}

TEST_CASE("what cannot be read stays where it is, with the reader's sentence below") {
  Fields fields;
  QTest::keyClicks(fields.first->edit(), "5.1.6");
  QTest::keyClick(fields.first->edit(), Qt::Key_Return);
  CHECK(fields.first->edit()->hasFocus());
  CHECK(fields.first->faulty());
  CHECK(fields.first->text() == "5.1.6");
  QTest::keyClick(fields.first->edit(), Qt::Key_Backspace);
  CHECK_FALSE(fields.first->faulty());
}

TEST_CASE("a blank field is only left where it may be blank") {
  Fields fields;
  QTest::keyClick(fields.first->edit(), Qt::Key_Return);
  CHECK(fields.first->edit()->hasFocus());
  fields.first->set_may_be_blank(true);
  QTest::keyClick(fields.first->edit(), Qt::Key_Return);
  CHECK(fields.second->edit()->hasFocus());
}

TEST_CASE("arrow keys and wheel change no number") {
  Fields fields;
  QTest::keyClicks(fields.first->edit(), "5.16");
  QTest::keyClick(fields.first->edit(), Qt::Key_Up);
  QTest::keyClick(fields.first->edit(), Qt::Key_Down);
  QTest::keyClick(fields.first->edit(), Qt::Key_PageUp);
  QWheelEvent wheel(QPointF(20, 20), fields.first->edit()->mapToGlobal(QPoint(20, 20)), QPoint(), QPoint(0, 120),
                    Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(fields.first->edit(), &wheel);
  CHECK(fields.first->text() == "5.16");
}

TEST_CASE("a click into a field takes the whole number, the next one places the cursor") {
  Fields fields;
  fields.second->set_text("2.93");
  QTest::mouseClick(fields.second->edit(), Qt::LeftButton);
  CHECK(fields.second->edit()->selectedText() == "2.93");
  QTest::mouseClick(fields.second->edit(), Qt::LeftButton);
  CHECK_FALSE(fields.second->edit()->hasSelectedText());
  fields.first->set_text("5.16");
  fields.first->take_focus();
  QTest::mouseClick(fields.first->edit(), Qt::LeftButton);
  CHECK(fields.first->edit()->selectedText() == "5.16");
}

TEST_CASE("a narrow field is as wide as its room and says below what was understood") {
  QWidget window;
  window.resize(160, 140);
  auto* field = widgets::child_of<widgets::NumberField>(&window, "Depth, place 1", quantity::Unit::millimetre);
  field->set_narrow();
  widgets::lay<QVBoxLayout>(&window)->addWidget(field);
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  field->set_text("5,13");
  QCoreApplication::processEvents();
  CHECK(field->edit()->width() == 160);
  const auto labels = field->findChildren<QLabel*>();
  const auto echo = std::find_if(labels.begin(), labels.end(),
                                 [](const QLabel* each) { return each->text() == QString::fromUtf8("5.13\u00a0mm"); });
  REQUIRE(echo != labels.end());
  CHECK((*echo)->y() >= field->edit()->geometry().bottom());
}

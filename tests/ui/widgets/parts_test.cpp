#include "shimwright/widgets/parts.h"

#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

using namespace shimwright;
using widgets::Button;

TEST_CASE("a button is high enough for a glove, whatever its kind") {
  for (const auto kind : {Button::Kind::plain, Button::Kind::main, Button::Kind::quiet}) {
    CHECK(Button("Go", kind).sizeHint().height() >= widgets::pixels::target);
    CHECK(Button("Go", kind).sizeHint().width() >= widgets::pixels::target);
  }
  CHECK(Button("Tight", Button::Kind::answer).sizeHint().height() >= widgets::pixels::answer);
}

TEST_CASE("a button's name is its text, an ampersand included") {
  const Button button("Nuts & bolts");
  CHECK(button.accessibleName() == "Nuts & bolts");
}

TEST_CASE("a word field keeps its text trimmed and says when Enter comes") {
  widgets::WordField field("Plate");
  int entered = 0;
  QObject::connect(&field, &widgets::WordField::entered, [&] { ++entered; });
  field.show();
  REQUIRE(QTest::qWaitForWindowActive(&field));
  QTest::keyClicks(field.edit(), " HL 12 ");
  QTest::keyClick(field.edit(), Qt::Key_Return);
  CHECK(field.text() == "HL 12");
  CHECK(entered == 1);
  CHECK(field.edit()->minimumHeight() >= widgets::pixels::target);
  CHECK(field.edit()->accessibleName() == "Plate");
}

TEST_CASE("a box without a text shows none") {
  QWidget window;
  widgets::Box box("Heading", {}, "card", &window);
  int shown = 0;
  for (const QLabel* label : box.findChildren<QLabel*>()) {
    shown += label->isHidden() ? 0 : 1;
  }
  CHECK(shown == 1);
}

TEST_CASE("a text never breaks between a number and its unit") {
  widgets::Text text("Spread 0.055 mm");
  CHECK(text.text() == QString::fromUtf8("Spread 0.055\u00a0mm"));
  text.setText(QString::fromUtf8("0.93 ± 0.02"));
  CHECK(text.text() == QString::fromUtf8("0.93\u00a0±\u00a00.02"));
}

TEST_CASE("what is longer than its place is scrolled by keys, and other keys are left alone") {
  widgets::Scroll scroll;
  scroll.column()->addSpacing(4000);
  scroll.resize(300, 400);
  scroll.show();
  REQUIRE(QTest::qWaitForWindowExposed(&scroll));
  const auto* bar = scroll.findChild<QScrollArea*>()->verticalScrollBar();
  CHECK(scroll.scroll_by(Qt::Key_PageDown));
  CHECK(bar->value() == bar->pageStep());
  CHECK(scroll.scroll_by(Qt::Key_End));
  CHECK(bar->value() == bar->maximum());
  CHECK(scroll.scroll_by(Qt::Key_PageUp));
  CHECK(bar->value() == bar->maximum() - bar->pageStep());
  CHECK(scroll.scroll_by(Qt::Key_Home));
  CHECK(bar->value() == 0);
  CHECK_FALSE(scroll.scroll_by(Qt::Key_Tab));
}

#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

using namespace shimwright;
using widgets::Button;

TEST_CASE("Enter and Space press the button that has the focus, and no other") {
  QWidget window;
  auto* row = widgets::lay<QHBoxLayout>(&window);
  auto* first = widgets::child_of<Button>(&window, QStringLiteral("First"));
  auto* second = widgets::child_of<Button>(&window, QStringLiteral("Second"), Button::Kind::main);
  row->addWidget(first);
  row->addWidget(second);
  int firsts = 0;
  int seconds = 0;
  QObject::connect(first, &Button::clicked, [&] { ++firsts; });
  QObject::connect(second, &Button::clicked, [&] { ++seconds; });
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  first->setFocus();
  QTest::keyClick(first, Qt::Key_Return);
  QTest::keyClick(first, Qt::Key_Space);
  QTest::keyClick(first, Qt::Key_Enter, Qt::KeypadModifier);
  CHECK(firsts == 3);
  CHECK(seconds == 0);
  QTest::keyClick(first, Qt::Key_Tab);
  CHECK(second->hasFocus());
}

TEST_CASE("focus can be seen: the button is painted otherwise with it") {
  QWidget window;
  auto* row = widgets::lay<QHBoxLayout>(&window);
  auto* other = widgets::child_of<Button>(&window, QStringLiteral("Other"));
  row->addWidget(other);
  for (const auto kind : {Button::Kind::plain, Button::Kind::main, Button::Kind::answer, Button::Kind::quiet}) {
    auto* button = widgets::child_of<Button>(&window, QStringLiteral("Go"), kind);
    row->addWidget(button);
    button->show();
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    other->setFocus();
    const QImage without = button->grab().toImage();
    button->setFocus();
    CHECK(button->grab().toImage() != without);
  }
}

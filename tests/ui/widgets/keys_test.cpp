#include "shimwright/widgets/keys.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("the Enter of the number pad is an Enter, and one with Ctrl is not") {
  const auto key = [](int code, Qt::KeyboardModifiers with) { return QKeyEvent(QEvent::KeyPress, code, with); };
  CHECK(widgets::is_plain_enter(key(Qt::Key_Return, Qt::NoModifier)));
  CHECK(widgets::is_plain_enter(key(Qt::Key_Enter, Qt::KeypadModifier)));
  CHECK_FALSE(widgets::is_plain_enter(key(Qt::Key_Enter, Qt::KeypadModifier | Qt::ControlModifier)));
  CHECK_FALSE(widgets::is_plain_enter(key(Qt::Key_Space, Qt::NoModifier)));
  CHECK(widgets::is_plain(key(Qt::Key_Down, Qt::KeypadModifier)));
  CHECK_FALSE(widgets::is_plain(key(Qt::Key_Down, Qt::ShiftModifier)));
}

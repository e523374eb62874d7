#pragma once

#include <QKeyEvent>

namespace shimwright::widgets {

/// Without Shift, Ctrl and the like. That a key belongs to the number pad says nothing: its Enter is an Enter.
[[nodiscard]] inline bool is_plain(const QKeyEvent& event) {
  return (event.modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
}

[[nodiscard]] inline bool is_plain_enter(const QKeyEvent& event) {
  return (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) && is_plain(event);
}

}  // namespace shimwright::widgets

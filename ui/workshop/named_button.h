#pragma once

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

[[nodiscard]] inline widgets::Button* named_button(QWidget* parent, const QString& text, const QString& name,
                                                   widgets::Button::Kind kind = widgets::Button::Kind::plain) {
  auto* button = widgets::child_of<widgets::Button>(parent, text, kind);
  button->setObjectName(name);
  return button;
}

}  // namespace shimwright::workshop

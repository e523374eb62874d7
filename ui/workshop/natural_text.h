#pragma once

#include "shimwright/widgets/parts.h"

class QBoxLayout;

namespace shimwright::workshop {

/// How wide the widest word of a text is that may wrap.
[[nodiscard]] int widest_word(const QLabel& label);

/// Text that wants to be as wide as its one line, and wraps where there is less room.
class NaturalText : public widgets::Text {
  Q_OBJECT

 public:
  using Text::Text;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
};

/// A heading and, where they are none of a workshop's own, the mark of demonstration values beside it or below.
NaturalText* add_heading_line(QWidget* parent, QBoxLayout* into, const QString& text, bool demonstration);

}  // namespace shimwright::workshop

#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>

#include "shimwright/widgets/style.h"

class QPainter;

namespace shimwright::widgets {

/// A state by its shape: colour only repeats what shape and word say.
enum class Mark {
  none,
  within,        ///< disc, blue
  too_small,     ///< triangle down, brick
  too_large,     ///< triangle up, brick
  on_limit,      ///< half disc, ink on amber
  not_equal,     ///< two bars struck through, brick
  open,          ///< empty square
  in_work,       ///< half filled square
  done,          ///< filled square
  held,          ///< square with a bar, brick
  deviation,     ///< filled square with a corner cut, amber
  unproven,      ///< dashed square
  not_required,  ///< square with a line through
};

void paint_mark(QPainter& painter, const QRectF& box, Mark mark, const Colours& colours);
/// `within`, `too large`, `to do`, … in the language of the window.
[[nodiscard]] QString word_of(Mark mark);

/// A mark as a widget; its accessible name is its word.
class MarkView : public QWidget {
  Q_OBJECT

 public:
  MarkView(Mark mark, int size, QWidget* parent = nullptr);
  void set_mark(Mark mark);
  [[nodiscard]] Mark mark() const { return mark_; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Mark mark_;
};

}  // namespace shimwright::widgets

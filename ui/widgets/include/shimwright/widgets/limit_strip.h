#pragma once

#include <optional>
#include <vector>

#include <QRectF>
#include <QString>
#include <QWidget>

#include "shimwright/widgets/marks.h"

namespace shimwright::widgets {

struct LimitMark {
  int number = 1;  ///< of the spot, written in the mark
  double mm = 0;
  Mark mark = Mark::none;  ///< none: a plain tick, for information only
};

struct LimitStripView {
  double least_mm = 0;
  double most_mm = 0;
  double guard_mm = 0;  ///< hatched inside each limit; 0: none
  int decimals = 2;
  std::vector<LimitMark> marks;
};

/// A length between its limits, guard zones hatched, numbered marks that never hide each other. All marks stay on the
/// strip: the scale widens to hold them, up to three times the width of the limits; a mark beyond stands at the edge
/// with an arrow. A fine line leads from a mark that had to give way to its true place.
class LimitStrip : public QWidget {
  Q_OBJECT

 public:
  explicit LimitStrip(QWidget* parent = nullptr);
  void set_view(const LimitStripView& view);
  /// Where the marks stand at the widget's size, in the order of the view.
  [[nodiscard]] std::vector<QRectF> mark_boxes() const;
  [[nodiscard]] QSize sizeHint() const override { return {760, 112}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {300, 112}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  LimitStripView view_;
};

}  // namespace shimwright::widgets

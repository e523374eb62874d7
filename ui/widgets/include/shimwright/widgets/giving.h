// What gives way where a window is small.
#pragma once

#include <QStackedWidget>

#include "shimwright/widgets/parts.h"

namespace shimwright::widgets {

/// Pages of which one is shown. The window may be as small as that one bears; those that are not seen have no say.
class PageStack : public QStackedWidget {
  Q_OBJECT

 public:
  explicit PageStack(QWidget* parent = nullptr);
  [[nodiscard]] QSize minimumSizeHint() const override;
};

/// As high as its content where there is room for it; where there is none it scrolls. What it shares the room with is to
/// ask for none (QSizePolicy::Ignored), else both are taken from alike.
class GivingScroll : public Scroll {
  Q_OBJECT

 public:
  explicit GivingScroll(QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
};

}  // namespace shimwright::widgets

#pragma once

#include <vector>

#include <QFrame>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// The buttons below: those on the left, those on the right, the main one last.
class FootBar : public QFrame {
  Q_OBJECT

 public:
  explicit FootBar(QWidget* parent);
  /// A button that stays the same keeps its focus.
  void set_actions(const std::vector<FootAction>& actions);
  /// Presses the main button, where there is one and it can be pressed.
  void press_main();
  void focus_main();

 private:
  void build(const std::vector<FootAction>& actions);

  std::vector<FootAction> actions_;
  std::vector<widgets::Button*> buttons_;
  QHBoxLayout* row_;
};

}  // namespace shimwright::bench

#pragma once

#include <optional>
#include <vector>

#include <QFrame>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// The buttons below: those on the left, those on the right, the main one last. Where they would not fit side by side
/// the ones that can be spared are left out: first Photo, Note and Park, then a page's own on the left,
/// then the keys of the main button, then all that stands under More as well.
class FootBar : public QFrame {
  Q_OBJECT

 public:
  explicit FootBar(QWidget* parent);
  /// A button that stays the same keeps its focus.
  void set_actions(const std::vector<FootAction>& actions);
  /// Presses the main button, where there is one and it can be pressed.
  void press_main();
  void focus_main();
  /// What there was no room for.
  [[nodiscard]] std::vector<FootAction> left_out() const;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build(const std::vector<FootAction>& actions);
  void leave_out();
  void leave_out_by(std::optional<int> (*rank_of)(const FootAction&));
  void show_keys(bool show);
  [[nodiscard]] int width_needed() const;

  std::vector<FootAction> actions_;
  std::vector<widgets::Button*> buttons_;
  QHBoxLayout* row_;
};

}  // namespace shimwright::bench

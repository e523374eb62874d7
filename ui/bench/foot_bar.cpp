#include "foot_bar.h"

#include <QResizeEvent>
#include <algorithm>
#include <memory>
#include <optional>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

namespace {

bool same_buttons(const std::vector<FootAction>& one, const std::vector<FootAction>& other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end(), [](const FootAction& a, const FootAction& b) {
    return a.name == b.name && a.main == b.main && a.on_left == b.on_left;
  });
}

/// Less goes earlier; nothing: it always has its place.
std::optional<int> spared_at(const FootAction& action) {
  if (action.name.rfind("spot-again", 0) == 0) {
    return 0;
  }
  if (action.name == "photo") {
    return 1;
  }
  if (action.name == "note") {
    return 2;
  }
  if (action.name == "park") {
    return 3;
  }
  const bool of_page = action.on_left && action.name != "back" && action.name != "more";
  return of_page ? std::optional(4) : std::nullopt;
}

/// On the narrowest screen the main button and what `More` offers are enough; less goes earlier.
std::optional<int> spared_for_more_at(const FootAction& action) {
  if (action.main || action.name == "more") {
    return std::nullopt;
  }
  if (action.name == "not-required") {
    return 0;
  }
  if (action.name == "reason") {
    return 1;
  }
  return action.name == "back" ? 3 : 2;
}

constexpr int last_rank = 4;
constexpr int foot_gap = 12;
constexpr int foot_margin = 20;

}  // namespace

FootBar::FootBar(QWidget* parent) : QFrame(parent), row_(widgets::lay<QHBoxLayout>(this, foot_gap)) {
  widgets::set_part(this, "bar-below");
  row_->setContentsMargins(foot_margin, 10, foot_margin, 10);
  // Never wider than the window, whatever the buttons say.
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void FootBar::set_actions(const std::vector<FootAction>& actions) {
  const bool same = same_buttons(actions, actions_);
  actions_ = actions;
  if (!same || buttons_.empty()) {
    build(actions);
  }
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    buttons_[at]->set_action_text(actions[at].text);
    buttons_[at]->setEnabled(actions[at].enabled);
  }
  leave_out();
}

int FootBar::width_needed() const {
  int width = 2 * foot_margin;
  for (const widgets::Button* button : buttons_) {
    width += button->isHidden() ? 0 : button->sizeHint().width() + foot_gap;
  }
  return width;
}

void FootBar::leave_out() {
  show_keys(true);
  for (widgets::Button* button : buttons_) {
    button->show();
  }
  leave_out_by(spared_at);
  if (width_needed() > width()) {
    show_keys(false);
  }
  const bool has_more =
      std::any_of(actions_.begin(), actions_.end(), [](const auto& each) { return each.name == "more"; });
  if (has_more) {
    leave_out_by(spared_for_more_at);
  }
}

void FootBar::leave_out_by(std::optional<int> (*rank_of)(const FootAction&)) {
  for (int rank = 0; rank <= last_rank; ++rank) {
    for (std::size_t at = actions_.size(); at-- > 0;) {
      if (width_needed() > width() && rank_of(actions_[at]) == rank) {
        buttons_[at]->hide();
      }
    }
  }
}

void FootBar::show_keys(bool show) {
  for (std::size_t at = 0; at < actions_.size(); ++at) {
    if (actions_[at].main) {
      buttons_[at]->set_keys(show && actions_[at].enabled ? tr("Ctrl Enter") : QString());
    }
  }
}

std::vector<FootAction> FootBar::left_out() const {
  std::vector<FootAction> out;
  for (std::size_t at = 0; at < actions_.size(); ++at) {
    if (buttons_[at]->isHidden()) {
      out.push_back(actions_[at]);
    }
  }
  return out;
}

void FootBar::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  leave_out();
}

void FootBar::build(const std::vector<FootAction>& actions) {
  for (widgets::Button* button : buttons_) {
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  while (row_->count() > 0) {
    const std::unique_ptr<QLayoutItem> item(row_->takeAt(0));
  }
  bool stretched = false;
  for (std::size_t at = 0; at < actions.size(); ++at) {
    const FootAction& action = actions[at];
    if (!action.on_left && !stretched) {
      row_->addStretch(1);
      stretched = true;
    }
    auto* button = widgets::child_of<widgets::Button>(
        this, action.text, action.main ? widgets::Button::Kind::main : widgets::Button::Kind::plain);
    button->setObjectName(widgets::qt("button-" + action.name));
    connect(button, &widgets::Button::clicked, this, [this, at] {
      const auto act = actions_[at].act;  // a copy: acting may change the actions
      act();
    });
    button->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    row_->addWidget(button);
    buttons_.push_back(button);
  }
  if (!stretched) {
    row_->addStretch(1);
  }
}

void FootBar::press_main() {
  for (std::size_t at = 0; at < actions_.size(); ++at) {
    if (actions_[at].main && actions_[at].enabled) {
      const auto act = actions_[at].act;
      act();
      return;
    }
  }
}

void FootBar::focus_main() {
  for (std::size_t at = 0; at < actions_.size(); ++at) {
    if (actions_[at].main) {
      buttons_[at]->setFocus(Qt::OtherFocusReason);
    }
  }
}

}  // namespace shimwright::bench

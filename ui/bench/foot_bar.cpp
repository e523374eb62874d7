#include "foot_bar.h"

#include <algorithm>
#include <memory>

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

}  // namespace

FootBar::FootBar(QWidget* parent) : QFrame(parent), row_(widgets::lay<QHBoxLayout>(this, 12)) {
  widgets::set_part(this, "bar");
  row_->setContentsMargins(20, 10, 20, 10);
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
    if (action.main) {
      button->set_keys(tr("Ctrl Enter"));
    }
    connect(button, &widgets::Button::clicked, this, [this, at] {
      const auto act = actions_[at].act;  // a copy: acting may change the actions
      act();
    });
    row_->addWidget(button);
    buttons_.push_back(button);
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

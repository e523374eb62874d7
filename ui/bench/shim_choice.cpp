#include "shim_choice.h"

#include <QGridLayout>
#include <algorithm>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::Text;

namespace {

constexpr int sizes_in_a_row = 7;

}  // namespace

ShimChoice::ShimChoice(QWidget* parent) : QFrame(parent), column_(widgets::lay<QVBoxLayout>(this, 10)) {
  widgets::set_part(this, "notice");
  column_->setContentsMargins(18, 14, 18, 14);
  question_ = child_of<Text>(this, QString(), "large");
  text_ = child_of<Text>(this, QString());
  text_->setObjectName(QStringLiteral("shim-choice-text"));
  column_->addWidget(question_);
  column_->addWidget(text_);
  auto* row = widgets::lay_in<QHBoxLayout>(column_);
  auto* leave = child_of<Button>(this, tr("Cancel"), Button::Kind::plain);
  leave->setObjectName(QStringLiteral("button-leave-choice"));
  row->addWidget(leave);
  row->addStretch(1);
  connect(leave, &Button::clicked, this, [this] {
    hide();
    emit left();
  });
  hide();
}

void ShimChoice::show_tray(const QString& question, const QString& text, const std::vector<job::TrayShim>& tray,
                           const std::optional<std::string>& advised) {
  question_->setText(question);
  text_->setText(text);
  text_->setVisible(!text.isEmpty());
  if (sizes_ != nullptr) {
    sizes_->hide();
    sizes_->deleteLater();
  }
  sizes_ = child_of<QWidget>(static_cast<QWidget*>(this));
  column_->insertWidget(2, sizes_);
  add_sizes(tray, advised);
  show();
}

void ShimChoice::add_sizes(const std::vector<job::TrayShim>& tray, const std::optional<std::string>& advised) {
  auto* grid = widgets::lay<QGridLayout>(sizes_, 8);
  std::vector<job::TrayShim> shims = tray;
  std::sort(shims.begin(), shims.end(), [](const auto& one, const auto& two) { return one.thickness < two.thickness; });
  first_ = nullptr;
  for (std::size_t at = 0; at < shims.size(); ++at) {
    const std::string shim = shims[at].id;
    const bool is_advised = advised == shim;
    auto* button = child_of<Button>(sizes_, widgets::qt(shim), is_advised ? Button::Kind::main : Button::Kind::plain);
    button->setObjectName(QStringLiteral("button-shim-%1").arg(widgets::qt(shim)));
    connect(button, &Button::clicked, this, [this, shim] { emit chosen(shim); });
    const int place = static_cast<int>(at);
    grid->addWidget(button, place / sizes_in_a_row, place % sizes_in_a_row);
    first_ = is_advised || first_ == nullptr ? button : first_;
  }
}

void ShimChoice::take_focus() {
  if (first_ != nullptr) {
    first_->setFocus(Qt::OtherFocusReason);
  }
}

}  // namespace shimwright::bench

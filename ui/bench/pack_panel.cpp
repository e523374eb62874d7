#include "pack_panel.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::Text;

PackPanel::PackPanel(QWidget* parent) : QFrame(parent), drawing_(nullptr) {
  widgets::set_part(this, "bar-right");
  setFixedWidth(262);
  auto* column = widgets::lay<QVBoxLayout>(this, 6);
  column->setContentsMargins(14, 12, 14, 12);
  column->addWidget(child_of<Text>(this, tr("Where you are"), "strong"));
  for (int line = 0; line < 4; ++line) {
    auto* row = widgets::lay_in<QHBoxLayout>(column);
    auto* title = child_of<Text>(this, QString(), "small");
    auto* value = child_of<Text>(this, QString(), "large");
    value->setWordWrap(false);
    value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    row->addWidget(title, 1);
    row->addWidget(value);
    lines_.push_back({title, value});
  }
  drawing_ = child_of<widgets::PackDrawing>(this);
  column->addWidget(drawing_, 1);
}

void PackPanel::show_state(const job::JobState& state, const job::Context& context, const sheet::Step* step) {
  const auto numbers = panel_numbers(state);
  for (std::size_t at = 0; at < lines_.size(); ++at) {
    lines_[at].title->setText(numbers[at].title);
    lines_[at].value->setText(numbers[at].value);
    widgets::set_part(lines_[at].value, numbers[at].bad ? "large-bad" : "large");
  }
  drawing_->set_view(pack_view(state, context, step));
}

}  // namespace shimwright::bench

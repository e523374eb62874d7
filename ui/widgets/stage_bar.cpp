#include "shimwright/widgets/stage_bar.h"

#include <QPainter>
#include <algorithm>

#include "paint.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

void paint_stage(QPainter& painter, const QRectF& piece, StageLook look, const Colours& colours) {
  const QColor pale = mixed(colours.line, colours.card, 0.6);
  switch (look) {
    case StageLook::to_do:
      painter.setPen(QPen(colours.edge, 1));
      painter.setBrush(pale);
      painter.drawRect(piece);
      break;
    case StageLook::done:
      painter.setPen(QPen(colours.blue, 1));
      painter.setBrush(colours.blue);
      painter.drawRect(piece);
      break;
    case StageLook::here:
      painter.setPen(QPen(colours.blue, 1));
      painter.setBrush(colours.wash);
      painter.drawRect(piece);
      painter.fillRect(QRectF(piece.left(), piece.top(), piece.width() / 2, piece.height()), colours.blue);
      break;
    case StageLook::waiting:
      painter.setPen(QPen(colours.amber_edge, 1));
      painter.setBrush(colours.amber);
      painter.drawRect(piece);
      break;
    case StageLook::held:
      painter.setPen(QPen(colours.brick, 1));
      painter.setBrush(colours.brick);
      painter.drawRect(piece);
      painter.fillRect(QRectF(piece.left() + 6, piece.center().y() - 1, piece.width() - 12, 2), colours.card);
      break;
  }
}

}  // namespace

StageBar::StageBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setMinimumSize(120, 12);
  set_stages({});
}

void StageBar::set_stages(const std::vector<StageLook>& stages) {
  stages_ = stages;
  const auto done = std::count(stages.begin(), stages.end(), StageLook::done);
  setAccessibleName(tr("%1 of %2 stages done").arg(done).arg(stages.size()));
  update();
}

void StageBar::paintEvent(QPaintEvent* /*event*/) {
  if (stages_.empty()) {
    return;
  }
  QPainter painter(this);
  const auto count = static_cast<double>(stages_.size());
  const double gap = count > 30 ? 1 : 4;
  const double step = (width() + gap) / count;
  for (std::size_t at = 0; at < stages_.size(); ++at) {
    const double left = step * static_cast<double>(at);
    paint_stage(painter, QRectF(left + 0.5, 0.5, std::max(1.0, step - gap - 1), height() - 1), stages_[at],
                colours_of(*this));
  }
}

}  // namespace shimwright::widgets

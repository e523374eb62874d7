#include "sheet_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollArea>
#include <algorithm>

#include "job_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::colours_of;
using widgets::qt;

namespace {

constexpr int list_width = 252;
constexpr int row_width = 241;  // without scroll bar and edge
constexpr int end_type = 15;
constexpr int end_room = 8;

int words_left(bool is_stage) {
  return (is_stage ? 14 : 26) + 24;
}

}  // namespace

SheetRow::SheetRow(const QString& text, bool is_stage, QWidget* parent) : QAbstractButton(parent), is_stage_(is_stage) {
  setText(text);
  setAccessibleName(text);
  setFocusPolicy(Qt::TabFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SheetRow::set_look(widgets::Mark mark, const QString& end, bool here) {
  mark_ = mark;
  end_ = end;
  here_ = here;
  const QString word = widgets::word_of(mark);
  setAccessibleDescription(end.isEmpty() ? word : QStringLiteral("%1, %2").arg(word, end));
  updateGeometry();
  update();
}

QFont SheetRow::type_of_words(bool strong) const {
  QFont type = font();
  type.setPixelSize(is_stage_ ? 16 : 15);
  type.setWeight(strong ? QFont::DemiBold : QFont::Normal);
  return type;
}

int SheetRow::width_of_end() const {
  QFont type = font();
  type.setPixelSize(end_type);
  return end_.isEmpty() ? 0 : QFontMetrics(type).horizontalAdvance(end_) + 6;
}

QSize SheetRow::sizeHint() const {
  const QFontMetrics metrics(type_of_words(here_));
  const QRect room(0, 0, row_width - words_left(is_stage_) - end_room - width_of_end(), 1000);
  const int words = metrics.boundingRect(room, Qt::TextWordWrap, text()).height();
  return {row_width, std::max(widgets::pixels::target, words + 10)};
}

void SheetRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void SheetRow::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (here_) {
    painter.fillRect(rect(), colours.wash);
    painter.fillRect(QRect(0, 0, 5, height()), colours.blue);
  }
  const int left = words_left(is_stage_);
  widgets::paint_mark(painter, QRectF(left - 24, (height() - 16) / 2.0, 16, 16), mark_, colours);
  QFont type = font();
  type.setPixelSize(end_type);
  painter.setFont(type);
  painter.setPen(colours.soft);
  painter.drawText(rect().adjusted(0, 0, -end_room, 0), Qt::AlignRight | Qt::AlignVCenter, end_);
  painter.setFont(type_of_words(here_));
  painter.setPen(colours.text);
  const QRect room = rect().adjusted(left, 2, -end_room - width_of_end(), -2);
  painter.drawText(room, static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter) | Qt::TextWordWrap, text());
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.blue, 3));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 5, 5);
  }
}

SheetList::SheetList(QWidget* parent) : QFrame(parent), scroll_(widgets::child_of<widgets::Scroll>(this)) {
  widgets::set_part(this, "bar-left");
  setFixedWidth(list_width);
  auto* column = widgets::lay<QVBoxLayout>(this);
  column->addWidget(scroll_);
  scroll_->column()->setSpacing(0);
  scroll_->column()->setContentsMargins(0, 6, 0, 6);
}

void SheetList::show_state(const job::JobState& state, const std::string& step_id, const std::string& language) {
  const sheet::Stage* stage = state.sheets.job->stage_of(step_id);
  const std::string stage_id = stage == nullptr ? std::string() : stage->id;
  const std::string job = state.opened ? state.opened->number : std::string();
  if (stages_.empty() || stage_id != stage_id_ || job != job_) {
    job_ = job;
    stage_id_ = stage_id;
    build(state, stage_id, language);
  }
  draw(state, step_id);
}

void SheetList::build(const job::JobState& state, const std::string& stage_id, const std::string& language) {
  for (const auto& rows : {stages_, steps_}) {
    for (const auto& [id, row] : rows) {
      row->hide();
      row->deleteLater();
    }
  }
  stages_.clear();
  steps_.clear();
  QVBoxLayout* column = scroll_->column();
  while (column->count() > 0) {
    const std::unique_ptr<QLayoutItem> item(column->takeAt(0));
  }
  for (const sheet::Stage& stage : state.sheets.job->stages) {
    auto* row = widgets::child_of<SheetRow>(scroll_->content(), qt(stage.title.in(language)), true);
    row->setObjectName(qt("stage-" + stage.id));
    column->addWidget(row);
    stages_.emplace_back(stage.id, row);
    connect(row, &SheetRow::clicked, this, [this, id = stage.id] { emit stage_wanted(id); });
    if (stage.id != stage_id) {
      continue;
    }
    for (const sheet::Step& step : stage.steps) {
      if (std::holds_alternative<job::NotAsked>(state.step(step.id))) {
        continue;
      }
      auto* line = widgets::child_of<SheetRow>(scroll_->content(), qt(step.title.in(language)), false);
      line->setObjectName(qt("step-" + step.id));
      column->addWidget(line);
      steps_.emplace_back(step.id, line);
      connect(line, &SheetRow::clicked, this, [this, id = step.id] { emit step_wanted(id); });
    }
  }
  column->addStretch(1);
}

void SheetList::draw(const job::JobState& state, const std::string& step_id) {
  for (const auto& [id, row] : stages_) {
    for (const sheet::Stage& stage : state.sheets.job->stages) {
      if (stage.id == id) {
        const StageProgress progress = progress_of(state, stage);
        const bool begun = progress.mark != widgets::Mark::open && progress.passed < progress.asked;
        row->set_look(progress.mark, begun ? tr("%1 of %2").arg(progress.passed).arg(progress.asked) : QString(),
                      false);
      }
    }
  }
  for (const auto& [id, row] : steps_) {
    row->set_look(mark_of(state.step(id)), {}, id == step_id);
    if (id == step_id) {
      scroll_->show_child(row);
    }
  }
}

}  // namespace shimwright::bench

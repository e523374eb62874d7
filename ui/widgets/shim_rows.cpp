#include "shimwright/widgets/shim_rows.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "paint.h"
#include "shim_row_button.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

constexpr int tall_row = 50;
constexpr int low_row = 40;
constexpr int fold_height = 25;
constexpr int usual_height = 400;  // what the page of the smallest screen has for rows
constexpr std::size_t least_rows = 3;
/// Of the width behind the labels, for a share of 1: the same for all rows and whatever they say, so that bars can be
/// compared from one trial to the next.
constexpr double share_for_bars = 0.24;

bool is_live(const ShimRow& row) {
  return !row.struck;
}

bool must_show(const ShimRow& row) {
  return is_live(row) || row.conflicting || row.picked || row.advised;
}

bool has_conflict(const std::vector<ShimRow>& rows) {
  return std::any_of(rows.begin(), rows.end(), [](const ShimRow& row) { return row.conflicting; });
}

/// The row around which the others are shown when there is no room for all.
std::size_t anchor_of(const std::vector<ShimRow>& rows, std::size_t first, std::size_t end) {
  std::size_t best = first + (end - first) / 2;
  double most = -1;
  for (std::size_t at = first; at < end; ++at) {
    const double weight = rows[at].advised ? 3 : rows[at].picked ? 2 : rows[at].share.value_or(-1);
    if (weight > most) {
      most = weight;
      best = at;
    }
  }
  return best;
}

int height_of_folds(std::size_t first, std::size_t end, std::size_t all) {
  return (first > 0 ? fold_height : 0) + (end < all ? fold_height : 0);
}

}  // namespace

ShimRows::ShimRows(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("shim-rows"));
  setAccessibleName(tr("Shims, thick to thin"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void ShimRows::set_rows(const std::vector<ShimRow>& rows, const QString& advised_word) {
  rows_ = rows;
  advised_word_ = advised_word;
  build();
}

void ShimRows::set_fold_words(const QString& above, const QString& below) {
  fold_above_ = above;
  fold_below_ = below;
  update();
}

void ShimRows::set_pickable(bool pickable) {
  pickable_ = pickable;
  mark_current();
}

ShimRows::Window ShimRows::window_in(int height) const {
  const auto first_shown = std::find_if(rows_.begin(), rows_.end(), must_show);
  if (first_shown == rows_.end()) {
    return {0, std::min<std::size_t>(rows_.size(), 7), tall_row};
  }
  const auto last_shown = std::find_if(rows_.rbegin(), rows_.rend(), must_show).base();
  Window window;
  window.first = static_cast<std::size_t>(first_shown - rows_.begin());
  window.end = static_cast<std::size_t>(last_shown - rows_.begin());
  window.first -= window.first > 0 ? 1U : 0U;
  window.end += window.end < rows_.size() ? 1U : 0U;
  const auto high = [&](int row) {
    return static_cast<int>(window.end - window.first) * row + height_of_folds(window.first, window.end, rows_.size());
  };
  if (high(tall_row) <= height) {
    return window;
  }
  // What was ruled out stands beside the others only where there is room.
  window.first += must_show(rows_[window.first]) ? 0U : 1U;
  window.end -= must_show(rows_[window.end - 1]) ? 0U : 1U;
  if (high(tall_row) <= height) {
    return window;
  }
  const bool may_be_low = std::count_if(rows_.begin(), rows_.end(), is_live) > 5 || has_conflict(rows_);
  window.row_height = may_be_low ? low_row : tall_row;
  if (high(window.row_height) <= height) {
    return window;
  }
  const int rows = (height - 2 * fold_height) / window.row_height;
  const std::size_t room = std::max(static_cast<std::size_t>(std::max(rows, 0)), least_rows);
  if (room >= window.end - window.first) {
    return window;
  }
  const std::size_t anchor = anchor_of(rows_, window.first, window.end);
  const std::size_t from = std::max(window.first, anchor - std::min(anchor, room / 2));
  window.first = std::min(from, window.end - room);
  window.end = window.first + room;
  return window;
}

QString ShimRows::fold_line(std::size_t first, std::size_t end, const QString& struck_words) const {
  if (first >= end) {
    return {};
  }
  double share = 0;
  bool live = false;
  for (std::size_t at = first; at < end; ++at) {
    live = live || is_live(rows_[at]);
    share += rows_[at].share.value_or(0);
  }
  // Thin to thick, as a range is read.
  const QString thin = qt(rows_[end - 1].shim);
  const QString range = end - first == 1 ? thin : tr("%1 to %2").arg(thin, qt(rows_[first].shim));
  if (!live) {
    return struck_words.isEmpty() ? tr("%1: ruled out").arg(range) : tr("%1: %2").arg(range, struck_words);
  }
  const auto hundredths = std::lround(share * 100);
  return hundredths > 0 ? tr("%1: %2 in 100 together").arg(range).arg(hundredths)
                        : tr("%1: less than 1 in 100").arg(range);
}

QString ShimRows::fold_above() const {
  return fold_line(0, window_.first, fold_above_);
}

QString ShimRows::fold_below() const {
  return fold_line(window_.end, rows_.size(), fold_below_);
}

std::vector<std::string> ShimRows::shown() const {
  std::vector<std::string> names;
  for (std::size_t at = window_.first; at < window_.end; ++at) {
    names.push_back(rows_[at].shim);
  }
  return names;
}

void ShimRows::build() {
  window_ = window_in(testAttribute(Qt::WA_Resized) || isVisible() ? height() : usual_height);
  bool had_focus = false;
  const std::size_t wanted = window_.end - window_.first;
  while (buttons_.size() > wanted) {
    had_focus = had_focus || buttons_.back()->hasFocus();
    // It may be in its own click just now.
    buttons_.back()->hide();
    buttons_.back()->setObjectName(QString());
    buttons_.back()->deleteLater();
    buttons_.pop_back();
  }
  while (buttons_.size() < wanted) {
    auto* button = child_of<ShimRowButton>(this);
    connect(button, &ShimRowButton::clicked, this, [this, button] {
      if (pickable_) {
        // A copy: who hears of it may change the rows.
        const std::string shim = button->row().shim;
        current_ = shim;
        mark_current();
        emit picked(shim);
      }
    });
    button->show();
    buttons_.push_back(button);
  }
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    had_focus = had_focus || buttons_[at]->hasFocus();
    buttons_[at]->set_row(rows_[window_.first + at], advised_word_);
  }
  place();
  mark_current();
  if (had_focus && pickable_ && !buttons_.empty()) {
    buttons_[position_of_current()]->setFocus();
  }
  updateGeometry();
  update();
}

void ShimRows::place() {
  const int top = window_.first > 0 ? fold_height : 0;
  const double scale = std::max(0.0, (width() - ShimRowButton::bar_start) * share_for_bars);
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    ShimRowButton& button = *buttons_[at];
    button.setGeometry(0, top + static_cast<int>(at) * window_.row_height, width(), window_.row_height);
    button.set_bar_scale(scale);
  }
}

std::size_t ShimRows::position_of_current() const {
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    if (buttons_[at]->row().shim == current_) {
      return at;
    }
  }
  return rows_.empty() ? 0 : anchor_of(rows_, window_.first, window_.end) - window_.first;
}

/// One row only is a stop for Tab; Up and Down go on from there.
void ShimRows::mark_current() {
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    const bool stop = at == position_of_current();
    buttons_[at]->setFocusPolicy(!pickable_ ? Qt::NoFocus : stop ? Qt::StrongFocus : Qt::ClickFocus);
  }
}

void ShimRows::make_current(const std::string& shim) {
  current_ = shim;
  mark_current();
}

void ShimRows::take_focus() {
  if (pickable_ && !buttons_.empty()) {
    buttons_[position_of_current()]->setFocus(Qt::OtherFocusReason);
  }
}

void ShimRows::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  const bool plain_key = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
  if (!pickable_ || buttons_.empty() || !plain_key) {
    QWidget::keyPressEvent(event);
    return;
  }
  const std::size_t at = position_of_current();
  if (key == Qt::Key_Up || key == Qt::Key_Down) {
    const std::size_t next =
        key == Qt::Key_Up ? at - std::min<std::size_t>(at, 1) : std::min(at + 1, buttons_.size() - 1);
    current_ = buttons_[next]->row().shim;
    mark_current();
    buttons_[next]->setFocus();
  } else if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) {
    const std::string shim = buttons_[at]->row().shim;
    emit picked(shim);
  } else {
    QWidget::keyPressEvent(event);
  }
}

void ShimRows::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const Window now = window_in(height());
  if (now.first != window_.first || now.end != window_.end || now.row_height != window_.row_height) {
    build();
  } else {
    place();
  }
}

QSize ShimRows::sizeHint() const {
  const Window usual = window_in(usual_height);
  const int rows = static_cast<int>(usual.end - usual.first) * usual.row_height;
  return {760, rows + height_of_folds(usual.first, usual.end, rows_.size())};
}

QSize ShimRows::minimumSizeHint() const {
  const int fewest = 5 * tall_row + 2 * fold_height;
  return {360, std::min(sizeHint().height(), fewest)};
}

void ShimRows::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  QPainter painter(this);
  painter.setFont(type_of(font(), 16));
  const int top = window_.first > 0 ? fold_height : 0;
  const int end = top + static_cast<int>(buttons_.size()) * window_.row_height;
  painter.fillRect(QRect(0, std::max(0, top - 1), width(), 1), colours.line);
  painter.setPen(colours.soft);
  painter.drawText(QRect(ShimRowButton::bar_start, 0, width() - ShimRowButton::bar_start, fold_height - 2),
                   Qt::AlignLeft | Qt::AlignVCenter, fold_above());
  painter.drawText(QRect(ShimRowButton::bar_start, end, width() - ShimRowButton::bar_start, fold_height),
                   Qt::AlignLeft | Qt::AlignVCenter, fold_below());
}

}  // namespace shimwright::widgets

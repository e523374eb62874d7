#include "page_column.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "shimwright/print/page_painter.h"
#include "shimwright/widgets/style.h"

namespace shimwright::past {

namespace {

constexpr int gap_between_pages = 14;

int in_dots(double millimetres, double dots_per_mm) {
  return static_cast<int>(std::lround(millimetres * dots_per_mm));
}

}  // namespace

PageColumn::PageColumn(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Pages of the record"));
}

void PageColumn::set_pages(std::vector<record::Page> pages, const print::Fonts& fonts) {
  pages_ = std::move(pages);
  fonts_ = &fonts;
  take_size();
}

void PageColumn::clear() {
  pages_.clear();
  take_size();
}

void PageColumn::set_dots_per_mm(double dots) {
  dots_per_mm_ = dots;
  take_size();
}

double PageColumn::widest_mm() const {
  double widest = 0;
  for (const record::Page& each : pages_) {
    widest = std::max(widest, each.width_mm);
  }
  return widest;
}

void PageColumn::take_size() {
  const int last = static_cast<int>(pages_.size()) - 1;
  const int height = last < 0 ? 0 : place_of(last).bottom() + 1 + gap_between_pages;
  setMinimumSize(in_dots(widest_mm(), dots_per_mm_), height);
  resize(std::max(width(), minimumWidth()), height);
  update();
}

QRect PageColumn::place_of(int page) const {
  int top = gap_between_pages;
  for (int at = 0; at < page; ++at) {
    top += in_dots(pages_[static_cast<std::size_t>(at)].height_mm, dots_per_mm_) + gap_between_pages;
  }
  const record::Page& shown = pages_[static_cast<std::size_t>(page)];
  const int page_width = in_dots(shown.width_mm, dots_per_mm_);
  return {std::max(0, (width() - page_width) / 2), top, page_width, in_dots(shown.height_mm, dots_per_mm_)};
}

int PageColumn::page_at(int y) const {
  const int count = static_cast<int>(pages_.size());
  int page = 0;
  while (page + 1 < count && place_of(page).bottom() + gap_between_pages < y) {
    ++page;
  }
  return page;
}

void PageColumn::paintEvent(QPaintEvent* event) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  pages_painted_ = 0;
  for (int page = 0; page < static_cast<int>(pages_.size()); ++page) {
    const QRect place = place_of(page);
    if (!place.intersects(event->rect())) {
      continue;
    }
    ++pages_painted_;
    // Paper is white in the dark as well.
    painter.fillRect(place, Qt::white);
    painter.save();
    painter.setClipRect(place.intersected(event->rect()));
    painter.translate(place.topLeft());
    print::draw_page(painter, pages_[static_cast<std::size_t>(page)], *fonts_, dots_per_mm_);
    painter.restore();
    painter.setPen(colours.line);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place.adjusted(0, 0, -1, -1));
  }
}

}  // namespace shimwright::past

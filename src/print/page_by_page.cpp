#include "shimwright/print/page_by_page.h"

#include <utility>

#include <QPagedPaintDevice>

#include "shimwright/print/page_painter.h"

namespace shimwright::print {

PageByPage::PageByPage(QPagedPaintDevice& device, std::vector<record::Page> pages, const Fonts& fonts)
    : device_(device), pages_(std::move(pages)), fonts_(fonts) {}

bool PageByPage::draw_next() {
  // A device begins with its first page.
  const bool ready = drawn_ == 0 ? painter_.begin(&device_) : device_.newPage();
  if (!ready || drawn_ >= count()) {
    return false;
  }
  const double units_per_mm = device_.logicalDpiX() / 25.4;
  draw_page(painter_, pages_[static_cast<std::size_t>(drawn_)], fonts_, units_per_mm);
  ++drawn_;
  return true;
}

bool PageByPage::finish() {
  return painter_.isActive() && painter_.end();
}

}  // namespace shimwright::print

#pragma once

#include <vector>

#include <QPainter>

#include "shimwright/print/fonts.h"
#include "shimwright/record/page.h"

class QPagedPaintDevice;

namespace shimwright::print {

/// Draws pages on paper or into a file one at a time, so that a window can go on between them. The device's pages have
/// the size of the record's and no margins; device and fonts must outlive it.
class PageByPage {
 public:
  PageByPage(QPagedPaintDevice& device, std::vector<record::Page> pages, const Fonts& fonts);

  [[nodiscard]] int count() const { return static_cast<int>(pages_.size()); }
  [[nodiscard]] int drawn() const { return drawn_; }
  /// The page after those drawn; there must be one. False where the device fails.
  [[nodiscard]] bool draw_next();
  /// Hands over what was drawn; nothing can be drawn afterwards. False where the device fails.
  [[nodiscard]] bool finish();

 private:
  QPagedPaintDevice& device_;
  std::vector<record::Page> pages_;
  const Fonts& fonts_;
  QPainter painter_;
  int drawn_ = 0;
};

}  // namespace shimwright::print

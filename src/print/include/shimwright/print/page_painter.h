#pragma once

#include <vector>

#include <QFont>

#include "shimwright/print/fonts.h"
#include "shimwright/record/page.h"

class QPagedPaintDevice;
class QPainter;

namespace shimwright::print {

/// Measures text in the fonts it will be drawn with.
class FontMeasure final : public record::TextMeasure {
 public:
  explicit FontMeasure(const Fonts& fonts) : fonts_(fonts) {}
  [[nodiscard]] double width_mm(std::string_view text, record::FontRole role) const override;
  [[nodiscard]] double ascent_mm(record::FontRole role) const override;

 private:
  const Fonts& fonts_;
};

/// Draws one page; `units_per_mm` of the painter's present coordinates are a millimetre.
void draw_page(QPainter& painter, const record::Page& page, const Fonts& fonts, double units_per_mm);

/// Draws all pages on paper or into a file whose pages have their size and no margins. False where the device fails.
[[nodiscard]] bool draw_pages(QPagedPaintDevice& device, const std::vector<record::Page>& pages, const Fonts& fonts);

}  // namespace shimwright::print

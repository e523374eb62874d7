#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include <QFont>
#include <QFontMetricsF>

#include "shimwright/print/fonts.h"
#include "shimwright/record/page.h"

class QPagedPaintDevice;
class QPainter;

namespace shimwright::print {

/// Measures text in the fonts it will be drawn with. For the thread it was made in.
class FontMeasure final : public record::TextMeasure {
 public:
  explicit FontMeasure(const Fonts& fonts);
  [[nodiscard]] double width_mm(std::string_view text, record::FontRole role) const override;
  [[nodiscard]] double ascent_mm(record::FontRole role) const override;

 private:
  /// A font is looked for once and not for each word, and a word is shaped once and not each time a line is tried.
  struct OfRole {
    QFontMetricsF metrics;
    std::unordered_map<std::string, double> widths;
  };
  mutable std::vector<OfRole> of_roles_;
};

/// Draws one page; `units_per_mm` of the painter's present coordinates are a millimetre.
void draw_page(QPainter& painter, const record::Page& page, const Fonts& fonts, double units_per_mm);

/// Draws all pages on paper or into a file whose pages have their size and no margins. False where the device fails.
[[nodiscard]] bool draw_pages(QPagedPaintDevice& device, const std::vector<record::Page>& pages, const Fonts& fonts);

}  // namespace shimwright::print

#pragma once

#include <QFont>

#include "shimwright/print/fonts.h"
#include "shimwright/record/page.h"

/// Pages are drawn in dots of 1/1200 inch, whatever the device: a font has whole dots for its size, so that it is
/// measured exactly as it is drawn.
namespace shimwright::print {

inline constexpr double dots_per_mm = 1200 / 25.4;

[[nodiscard]] QFont font_in_dots(const Fonts& fonts, record::FontRole role);

}  // namespace shimwright::print

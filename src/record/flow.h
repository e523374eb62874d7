#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "shimwright/record/page.h"

/// Breaks text into lines.
namespace shimwright::record {

/// A piece of text in one role.
struct Span {
  std::string text;
  FontRole role = FontRole::body;
  Ink ink = Ink::text;
};

/// What stands on one line, from the left; each span's place is counted from there.
struct FlowLine {
  struct Part {
    double x_mm = 0;
    double width_mm = 0;
    Span span;
  };
  std::vector<Part> parts;
};

/// Breaks at spaces and kept line ends; a word wider than the line is broken where it must be, never left out.
[[nodiscard]] std::vector<FlowLine> flow(const std::vector<Span>& spans, double width_mm, const TextMeasure& measure);

/// The same for text in one role.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, FontRole role, double width_mm,
                                               const TextMeasure& measure);

}  // namespace shimwright::record

#include "flow.h"

#include <utility>

namespace shimwright::record {

namespace {

/// Sums of widths may differ in their last binary digits from the width of the whole.
constexpr double slack_mm = 1e-6;

bool starts_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

/// The longest beginning of a word that fits, one character at least.
std::size_t fitting(std::string_view word, FontRole role, double width_mm, const TextMeasure& measure) {
  std::size_t fits = 0;
  for (std::size_t at = 1; at <= word.size(); ++at) {
    if (at < word.size() && !starts_character(word[at])) {
      continue;
    }
    if (fits != 0 && measure.width_mm(word.substr(0, at), role) > width_mm + slack_mm) {
      break;
    }
    fits = at;
  }
  return fits;
}

class Flow {
 public:
  Flow(double width_mm, const TextMeasure& measure) : width_(width_mm), measure_(measure) {}

  void add(const Span& span) {
    std::size_t at = 0;
    while (at < span.text.size()) {
      const char first = span.text[at];
      if (first == '\n') {
        end_line();
        ++at;
      } else if (first == ' ') {
        space_ = true;
        ++at;
      } else {
        const std::size_t end = span.text.find_first_of(" \n", at);
        word(span.text.substr(at, end - at), span);
        at = end == std::string::npos ? span.text.size() : end;
      }
    }
  }

  [[nodiscard]] std::vector<FlowLine> finish() {
    end_line();
    return std::move(lines_);
  }

 private:
  void word(std::string text, const Span& span) {
    const double gap = space_ && !line_.parts.empty() ? measure_.width_mm(" ", span.role) : 0;
    if (!line_.parts.empty() && right() + gap + measure_.width_mm(text, span.role) > width_ + slack_mm) {
      end_line();
    }
    while (measure_.width_mm(text, span.role) > width_ + slack_mm && text.size() > 1) {
      const std::size_t fits = fitting(text, span.role, width_, measure_);
      if (fits == text.size()) {
        break;
      }
      put(text.substr(0, fits), span);
      end_line();
      text.erase(0, fits);
    }
    put(text, span);
  }

  /// Joins the word to the part before it where role and ink are the same, so that a line is one run of text.
  void put(const std::string& text, const Span& span) {
    const bool spaced = space_ && !line_.parts.empty();
    space_ = false;
    if (!line_.parts.empty() && line_.parts.back().span.role == span.role && line_.parts.back().span.ink == span.ink) {
      FlowLine::Part& last = line_.parts.back();
      last.span.text += (spaced ? " " : "") + text;
      last.width_mm = measure_.width_mm(last.span.text, span.role);
      return;
    }
    const double x = right() + (spaced ? measure_.width_mm(" ", span.role) : 0);
    line_.parts.push_back({x, measure_.width_mm(text, span.role), {text, span.role, span.ink}});
  }

  [[nodiscard]] double right() const {
    return line_.parts.empty() ? 0 : line_.parts.back().x_mm + line_.parts.back().width_mm;
  }

  void end_line() {
    space_ = false;
    if (!line_.parts.empty()) {
      lines_.push_back(std::move(line_));
      line_ = {};
    }
  }

  double width_;
  const TextMeasure& measure_;
  std::vector<FlowLine> lines_;
  FlowLine line_;
  bool space_ = false;
};

}  // namespace

std::vector<FlowLine> flow(const std::vector<Span>& spans, double width_mm, const TextMeasure& measure) {
  Flow flowing(width_mm, measure);
  for (const Span& span : spans) {
    flowing.add(span);
  }
  return flowing.finish();
}

std::vector<std::string> wrapped(std::string_view text, FontRole role, double width_mm, const TextMeasure& measure) {
  std::vector<std::string> lines;
  for (const FlowLine& line : flow({{std::string(text), role, Ink::text}}, width_mm, measure)) {
    lines.push_back(line.parts.front().span.text);
  }
  return lines;
}

}  // namespace shimwright::record

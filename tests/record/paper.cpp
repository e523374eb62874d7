#include "paper.h"

#include <cmath>
#include <numbers>

namespace shimwright::record_test {

using record::FontRole;
using record::Page;
using record::TextRun;

namespace {

std::size_t characters(std::string_view text) {
  std::size_t count = 0;
  for (const char byte : text) {
    count += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1 : 0;
  }
  return count;
}

bool inside(const Page& page, double left, double top, double right, double bottom, double margin) {
  constexpr double slack = 0.3;
  return left >= margin - slack && top >= margin - slack && right <= page.width_mm - margin + slack &&
         bottom <= page.height_mm - margin + slack;
}

/// Where an element lies, and what it is called when it lies wrong.
class Extent {
 public:
  explicit Extent(const Page& page) : page_(page) {}

  std::string operator()(const TextRun& run) const {
    const double size = record::style_of(run.role).size_mm;
    if (run.turned_deg == 0) {
      return said(run.text, run.x_mm, run.baseline_mm - size * 0.75, run.x_mm + run.width_mm, run.baseline_mm,
                  page_.margin_mm);
    }
    const double angle = run.turned_deg * std::numbers::pi / 180;
    return said(run.text, run.x_mm - std::sin(angle) * size * 0.75,
                run.baseline_mm - std::sin(angle) * run.width_mm - std::cos(angle) * size * 0.75,
                run.x_mm + std::cos(angle) * run.width_mm, run.baseline_mm, 0);
  }
  std::string operator()(const record::Line& line) const {
    return said("line", std::min(line.x1_mm, line.x2_mm), std::min(line.y1_mm, line.y2_mm),
                std::max(line.x1_mm, line.x2_mm), std::max(line.y1_mm, line.y2_mm), page_.margin_mm);
  }
  std::string operator()(const record::Rectangle& rectangle) const { return said("rectangle", rectangle.box); }
  std::string operator()(const record::Hatch& hatch) const { return said("hatch", hatch.box); }
  std::string operator()(const record::KeptPlace& place) const { return said("kept place", place.box); }
  std::string operator()(const record::Code& code) const { return said("code", code.box); }
  std::string operator()(const record::Picture& picture) const { return said("picture", picture.box); }
  std::string operator()(const record::Shape& shape) const {
    const double half = shape.size_mm / 2;
    return said("shape", {shape.x_mm - half, shape.y_mm - half, shape.size_mm, shape.size_mm});
  }

 private:
  [[nodiscard]] std::string said(const std::string& what, const record::Box& box) const {
    return said(what, box.x_mm, box.y_mm, box.x_mm + box.width_mm, box.y_mm + box.height_mm, page_.margin_mm);
  }
  [[nodiscard]] std::string said(const std::string& what, double left, double top, double right, double bottom,
                                 double margin) const {
    return inside(page_, left, top, right, bottom, margin) ? "" : what + " lies outside";
  }

  const Page& page_;
};

void add_overlaps(const Page& page, std::vector<std::string>& broken) {
  for (std::size_t at = 1; at < page.rows.size(); ++at) {
    const record::Box& above = page.rows[at - 1];
    if (page.rows[at].y_mm + 1e-6 < above.y_mm + above.height_mm) {
      broken.push_back("row " + std::to_string(at) + " lies over the one before it");
    }
  }
  for (const record::Box& row : page.rows) {
    if (!inside(page, row.x_mm, row.y_mm, row.x_mm + row.width_mm, row.y_mm + row.height_mm, page.margin_mm)) {
      broken.emplace_back("a row is cut by the page");
    }
  }
}

}  // namespace

double FixedMeasure::width_mm(std::string_view text, FontRole role) const {
  return static_cast<double>(characters(text)) * record::style_of(role).size_mm * 0.45;
}

double FixedMeasure::ascent_mm(FontRole role) const {
  return record::style_of(role).size_mm * 0.75;
}

std::vector<Page> pages_of(const std::function<void(record::PageWriter&)>& write) {
  const FixedMeasure measure;
  record::PageWriter writer(record::PaperSize::a4, measure, {});
  write(writer);
  return writer.finish();
}

std::vector<Page> all_pages(const record::Record& record, record::PaperSize paper) {
  return record::lay_out(record, paper, FixedMeasure());
}

std::vector<TextRun> runs_of(const std::vector<Page>& pages) {
  return elements_of<TextRun>(pages);
}

std::string text_of(const std::vector<Page>& pages) {
  std::string all;
  for (const TextRun& run : runs_of(pages)) {
    all += (all.empty() ? "" : " ") + run.text;
  }
  return all;
}

bool has(const std::vector<Page>& pages, const std::string& text) {
  return text_of(pages).find(text) != std::string::npos;
}

std::size_t times(const std::vector<Page>& pages, const std::string& text) {
  const std::string all = text_of(pages);
  std::size_t count = 0;
  for (std::size_t at = all.find(text); at != std::string::npos; at = all.find(text, at + 1)) {
    ++count;
  }
  return count;
}

std::vector<std::string> broken_laws(const std::vector<Page>& pages) {
  std::vector<std::string> broken;
  for (const Page& page : pages) {
    for (const record::Element& element : page.elements) {
      std::string fault = std::visit(Extent(page), element);
      if (!fault.empty()) {
        broken.push_back(std::move(fault));
      }
    }
    add_overlaps(page, broken);
  }
  return broken;
}

}  // namespace shimwright::record_test

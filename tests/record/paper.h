#pragma once

#include <functional>
#include <string>
#include <vector>

#include "page_writer.h"
#include "shimwright/record/layout.h"
#include "shimwright/record/page.h"

/// Pages without a toolkit: every character is as wide as 0.45 of the size of its type.
namespace shimwright::record_test {

class FixedMeasure final : public record::TextMeasure {
 public:
  [[nodiscard]] double width_mm(std::string_view text, record::FontRole role) const override;
  [[nodiscard]] double ascent_mm(record::FontRole role) const override;
};

/// The pages of one section written alone.
[[nodiscard]] std::vector<record::Page> pages_of(const std::function<void(record::PageWriter&)>& write);
[[nodiscard]] std::vector<record::Page> all_pages(const record::Record& record,
                                                  record::PaperSize paper = record::PaperSize::a4);

[[nodiscard]] std::vector<record::TextRun> runs_of(const std::vector<record::Page>& pages);
/// All text, joined with spaces in the order it was written; lines broken by the layout read on.
[[nodiscard]] std::string text_of(const std::vector<record::Page>& pages);
[[nodiscard]] bool has(const std::vector<record::Page>& pages, const std::string& text);
[[nodiscard]] std::size_t times(const std::vector<record::Page>& pages, const std::string& text);

template <class Kind>
std::vector<Kind> elements_of(const std::vector<record::Page>& pages) {
  std::vector<Kind> found;
  for (const record::Page& page : pages) {
    for (const record::Element& element : page.elements) {
      if (const auto* each = std::get_if<Kind>(&element)) {
        found.push_back(*each);
      }
    }
  }
  return found;
}

/// What breaks a law of layout, in words; empty where nothing does: all within the margins (the pale mark within the
/// sheet), no two rows over each other.
[[nodiscard]] std::vector<std::string> broken_laws(const std::vector<record::Page>& pages);

}  // namespace shimwright::record_test

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "flow.h"
#include "shimwright/record/page.h"

namespace shimwright::record {

/// What stands on every page.
struct PageHead {
  std::string workshop;
  std::string address;
  std::string title;
  std::string job;         ///< `Job 2041`
  std::string mark;        ///< large and pale across the page, small in the head; empty where there is none
  std::string logo = {};   ///< the bytes of a picture, left of the name; empty where there is none
  std::string place = {};  ///< pattern for mark and job, page, and pages; empty: in English
};

/// From one line of running text or of a table to the next.
inline constexpr double body_pitch_mm = 4.0;

/// How far apart rows and sections stand.
enum class Spacing { usual, tight };

/// Writes from the top of a page to its bottom and begins the next one when what comes does not fit.
class PageWriter {
 public:
  PageWriter(PaperSize paper, const TextMeasure& measure, PageHead head, Spacing spacing = Spacing::usual);

  [[nodiscard]] const TextMeasure& measure() const { return measure_; }
  [[nodiscard]] double left() const { return margin_; }
  [[nodiscard]] double right() const { return width_ - margin_; }
  [[nodiscard]] double width() const { return right() - left(); }
  [[nodiscard]] double y() const { return y_; }
  [[nodiscard]] double bottom() const { return height_ - margin_; }
  [[nodiscard]] double room() const { return bottom() - y_; }
  /// Room of a page with nothing on it but its head.
  [[nodiscard]] double full_room() const { return bottom() - top_; }
  [[nodiscard]] std::size_t page_count() const { return pages_.size(); }
  [[nodiscard]] bool at_top() const { return y_ <= top_; }
  [[nodiscard]] std::size_t heading_count() const { return headings_; }
  /// White between things, as the spacing has it.
  [[nodiscard]] double spaced(double height_mm) const { return spacing_ == Spacing::usual ? height_mm : height_mm / 2; }

  /// The heading with this number, the first is 0, begins a page.
  void begin_page_at_heading(std::size_t number) { heading_on_new_page_ = number; }

  /// Begins a page unless this much room is left.
  void need(double height_mm);
  void new_page();
  /// Goes down; the gap is dropped at the top of a page.
  void gap(double height_mm);
  /// Goes to `height_mm` above the bottom, onto the next page where that much is not left.
  void go_to_bottom(double height_mm);

  void add(Element element) { pages_.back().elements.push_back(std::move(element)); }
  /// Left end at x.
  void text(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink = Ink::text);
  /// Right end at x.
  void text_to(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink = Ink::text);
  void centred(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink = Ink::text);
  void line(double x1_mm, double y1_mm, double x2_mm, double y2_mm, double width_mm, Ink ink);

  /// What was written from y() on, this high, is one piece: kept for the laws of layout, and y() goes below it.
  void piece(double height_mm);

  /// Lines of text over the whole width, each a piece of its own.
  void paragraph(const std::vector<Span>& spans, double pitch_mm);
  /// Section heading with its rule; asks for `with_mm` of room below it.
  void heading(const std::string& title, double with_mm);

  [[nodiscard]] std::vector<Page> finish();

 private:
  void draw_head(Page& page, std::size_t number, std::size_t count) const;
  void draw_mark(Page& page) const;

  const TextMeasure& measure_;
  PageHead head_;
  Spacing spacing_;
  double width_;
  double height_;
  double margin_ = 13.2;
  double top_;
  double y_ = 0;
  std::vector<Page> pages_;
  std::size_t headings_ = 0;
  std::optional<std::size_t> heading_on_new_page_;
};

}  // namespace shimwright::record

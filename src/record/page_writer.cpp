#include "page_writer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "shimwright/quantity/error.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double head_height_mm = 13;

TextRun run(double x_mm, double baseline_mm, double width_mm, std::string text, FontRole role, Ink ink) {
  return {x_mm, baseline_mm, width_mm, std::move(text), role, ink, 0};
}

}  // namespace

PageWriter::PageWriter(PaperSize paper, const TextMeasure& measure, PageHead head, Spacing spacing)
    : measure_(measure),
      head_(std::move(head)),
      spacing_(spacing),
      width_(size_of(paper).width_mm),
      height_(size_of(paper).height_mm),
      top_(margin_ + head_height_mm) {
  new_page();
}

void PageWriter::new_page() {
  Page page;
  page.width_mm = width_;
  page.height_mm = height_;
  page.margin_mm = margin_;
  pages_.push_back(std::move(page));
  y_ = top_;
}

void PageWriter::need(double height_mm) {
  if (height_mm > room() && !at_top()) {
    new_page();
  }
}

void PageWriter::gap(double height_mm) {
  if (!at_top()) {
    y_ += spaced(height_mm);
  }
}

void PageWriter::go_to_bottom(double height_mm) {
  need(height_mm);
  y_ = bottom() - height_mm;
}

void PageWriter::text(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink) {
  const double wide = measure_.width_mm(text, role);
  add(run(x_mm, baseline_mm, wide, std::move(text), role, ink));
}

void PageWriter::text_to(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink) {
  const double wide = measure_.width_mm(text, role);
  add(run(x_mm - wide, baseline_mm, wide, std::move(text), role, ink));
}

void PageWriter::centred(double x_mm, double baseline_mm, std::string text, FontRole role, Ink ink) {
  const double wide = measure_.width_mm(text, role);
  add(run(x_mm - wide / 2, baseline_mm, wide, std::move(text), role, ink));
}

void PageWriter::line(double x1_mm, double y1_mm, double x2_mm, double y2_mm, double width_mm, Ink ink) {
  add(Line{x1_mm, y1_mm, x2_mm, y2_mm, width_mm, ink});
}

void PageWriter::piece(double height_mm) {
  pages_.back().rows.push_back({left(), y_, width(), height_mm});
  y_ += height_mm;
}

void PageWriter::paragraph(const std::vector<Span>& spans, double pitch_mm) {
  for (const FlowLine& each : flow(spans, width(), measure_)) {
    need(pitch_mm);
    for (const FlowLine::Part& part : each.parts) {
      add(run(left() + part.x_mm, y_ + pitch_mm * 0.72, part.width_mm, part.span.text, part.span.role, part.span.ink));
    }
    piece(pitch_mm);
  }
}

void PageWriter::heading(const std::string& title, double with_mm) {
  constexpr double height_mm = 5.2;
  gap(2.8);
  need(headings_ == heading_on_new_page_ ? full_room() : height_mm + with_mm);
  ++headings_;
  text(left(), y_ + 3.2, title, FontRole::heading);
  line(left(), y_ + 4.7, right(), y_ + 4.7, 0.25, Ink::text);
  piece(height_mm);
}

void PageWriter::draw_head(Page& page, std::size_t number, std::size_t count) const {
  const auto put = [&](double x, double baseline, const std::string& text, FontRole role, Ink ink, bool to_right) {
    const double wide = measure_.width_mm(text, role);
    page.elements.push_back(run(to_right ? x - wide : x, baseline, wide, text, role, ink));
  };
  const std::string numbered =
      say(head_.place.empty() ? SHIMWRIGHT_TEXT("record", "{0} · page {1} of {2}") : head_.place,
          {joined({head_.mark, head_.job}, " · "), std::to_string(number), std::to_string(count)});
  // A long name or address must not run into what stands on the right.
  constexpr Box logo_room{0, 0, 24, 9.4};
  const double beside_logo = head_.logo.empty() ? 0 : logo_room.width_mm + 3;
  if (!head_.logo.empty()) {
    page.elements.emplace_back(
        Picture{{left(), margin_ + logo_room.y_mm, logo_room.width_mm, logo_room.height_mm}, head_.logo});
  }
  const double most =
      std::min(width() * 0.55, width() - measure_.width_mm(numbered, FontRole::small) - 9) - beside_logo;
  const auto first_line = [&](const std::string& text, FontRole role) {
    const auto lines = wrapped(text, role, most, measure_);
    return lines.empty() ? std::string() : lines.size() == 1 ? lines.front() : lines.front() + " …";
  };
  put(left() + beside_logo, margin_ + 3.2, first_line(head_.workshop, FontRole::heading), FontRole::heading, Ink::text,
      false);
  put(left() + beside_logo, margin_ + 7.6, first_line(head_.address, FontRole::small), FontRole::small, Ink::soft,
      false);
  put(right(), margin_ + 4.2, head_.title, FontRole::title, Ink::text, true);
  put(right(), margin_ + 9.2, numbered, FontRole::small, Ink::soft, true);
}

void PageWriter::draw_mark(Page& page) const {
  if (head_.mark.empty()) {
    return;
  }
  const double wide = measure_.width_mm(head_.mark, FontRole::mark);
  constexpr double angle_deg = 32;
  const double angle = angle_deg * std::numbers::pi / 180;
  TextRun mark = run(0, 0, wide, head_.mark, FontRole::mark, Ink::pale);
  const double half_height = style_of(FontRole::mark).size_mm * 0.36;
  mark.x_mm = width_ / 2 - std::cos(angle) * wide / 2 + std::sin(angle) * half_height;
  mark.baseline_mm = height_ / 2 + std::sin(angle) * wide / 2 + std::cos(angle) * half_height;
  mark.turned_deg = angle_deg;
  page.elements.insert(page.elements.begin(), mark);
}

std::vector<Page> PageWriter::finish() {
  for (std::size_t at = 0; at < pages_.size(); ++at) {
    draw_head(pages_[at], at + 1, pages_.size());
    draw_mark(pages_[at]);
  }
  return std::move(pages_);
}

}  // namespace shimwright::record

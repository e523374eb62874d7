#include "table.h"

#include <algorithm>
#include <numeric>

#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double head_mm = 5.6;
constexpr double column_gap_mm = 3.6;  ///< between two columns
constexpr double inset_mm = 1.5;       ///< from the margin to the first column
constexpr double shape_mm = 3.1;       ///< room a shape takes before its word

using Widths = std::vector<double>;
using Lines = std::vector<std::vector<std::string>>;  ///< of each cell of a row

double lead(const Cell& cell) {
  return cell.shape ? shape_mm : 0;
}

Widths natural_widths(const Table& table, const TextMeasure& measure) {
  Widths widths;
  for (std::size_t at = 0; at < table.columns.size(); ++at) {
    double wide = measure.width_mm(table.columns[at].title, FontRole::small);
    for (const auto& row : table.rows) {
      wide = std::max(wide, lead(row[at]) + measure.width_mm(row[at].text, row[at].role));
    }
    widths.push_back(wide + 0.01);
  }
  return widths;
}

double sum(const Widths& widths) {
  return std::accumulate(widths.begin(), widths.end(), 0.0);
}

void shrink_giving(const Table& table, Widths& widths, double over) {
  constexpr double least_mm = 18;
  double can_give = 0;
  for (std::size_t at = 0; at < widths.size(); ++at) {
    can_give += table.columns[at].gives ? std::max(0.0, widths[at] - least_mm) : 0;
  }
  const double part = can_give <= 0 ? 0 : std::min(1.0, over / can_give);
  for (std::size_t at = 0; at < widths.size(); ++at) {
    widths[at] -= table.columns[at].gives ? part * std::max(0.0, widths[at] - least_mm) : 0;
  }
}

/// Column widths that together with the gaps fill the page exactly.
Widths column_widths(const Table& table, const PageWriter& writer) {
  Widths widths = natural_widths(table, writer.measure());
  const double wanted = writer.width() - 2 * inset_mm - column_gap_mm * static_cast<double>(widths.size() - 1);
  if (sum(widths) > wanted) {
    shrink_giving(table, widths, sum(widths) - wanted);
  }
  if (sum(widths) > wanted) {
    const double factor = wanted / sum(widths);
    std::for_each(widths.begin(), widths.end(), [&](double& each) { each *= factor; });
    return widths;
  }
  const auto giving =
      std::count_if(table.columns.begin(), table.columns.end(), [](const Column& c) { return c.gives; });
  const double more = giving == 0 ? 0 : (wanted - sum(widths)) / static_cast<double>(giving);
  for (std::size_t at = 0; at < widths.size(); ++at) {
    widths[at] += table.columns[at].gives ? more : 0;
  }
  return widths;
}

Lines lines_of(const std::vector<Cell>& row, const Widths& widths, const TextMeasure& measure) {
  Lines lines;
  for (std::size_t at = 0; at < row.size(); ++at) {
    lines.push_back(wrapped(row[at].text, row[at].role, widths[at] - lead(row[at]), measure));
  }
  return lines;
}

std::size_t most_lines(const Lines& lines) {
  std::size_t most = 1;
  for (const auto& cell : lines) {
    most = std::max(most, cell.size());
  }
  return most;
}

void draw_shape(PageWriter& writer, ShapeKind kind, Ink ink, double x_mm, double middle_mm) {
  Shape shape;
  shape.kind = kind;
  shape.x_mm = x_mm + 1.1;
  shape.y_mm = middle_mm;
  shape.size_mm = 2.1;
  shape.fill = kind == ShapeKind::half_disc ? Ink::amber : ink;
  shape.edge = kind == ShapeKind::half_disc ? std::optional(Ink::text) : std::nullopt;
  writer.add(shape);
}

void draw_cell(PageWriter& writer, const Cell& cell, const std::string& text, const Column& column, double x_mm,
               double width_mm, double baseline_mm) {
  if (column.align == Align::right) {
    writer.text_to(x_mm + width_mm, baseline_mm, text, cell.role, cell.ink);
  } else {
    writer.text(x_mm + lead(cell), baseline_mm, text, cell.role, cell.ink);
  }
}

/// Lines `from` to `to` of a row.
void draw_lines(PageWriter& writer, const Table& table, const std::vector<Cell>& row, const Lines& lines,
                const Widths& widths, std::size_t from, std::size_t to) {
  const double padding = writer.spaced(table.padding_mm);
  const double height = static_cast<double>(to - from) * body_pitch_mm + padding;
  writer.need(height);
  double x = writer.left() + inset_mm;
  for (std::size_t at = 0; at < row.size(); ++at) {
    for (std::size_t number = from; number < std::min(to, lines[at].size()); ++number) {
      const double baseline =
          writer.y() + padding / 2 + static_cast<double>(number - from) * body_pitch_mm + body_pitch_mm * 0.75;
      if (const auto& shape = row[at].shape; number == 0 && shape) {
        draw_shape(writer, *shape, row[at].ink, x, baseline - 1.05);
      }
      draw_cell(writer, row[at], lines[at][number], table.columns[at], x, widths[at], baseline);
    }
    x += widths[at] + column_gap_mm;
  }
  writer.piece(height);
}

void draw_head(PageWriter& writer, const Table& table, const Widths& widths) {
  double x = writer.left() + inset_mm;
  for (std::size_t at = 0; at < table.columns.size(); ++at) {
    const Cell cell{"", FontRole::small, Ink::soft, std::nullopt};
    const auto lines =
        wrapped(table.columns[at].title, FontRole::small, widths[at] + column_gap_mm / 2, writer.measure());
    draw_cell(writer, cell, lines.empty() ? "" : lines.front(), table.columns[at], x, widths[at], writer.y() + 3.6);
    x += widths[at] + column_gap_mm;
  }
  writer.line(writer.left(), writer.y() + head_mm - 0.5, writer.right(), writer.y() + head_mm - 0.5, 0.15, Ink::hair);
  writer.piece(head_mm);
}

Cell shaped(std::string word, ReadingVerdict verdict) {
  switch (verdict) {
    case ReadingVerdict::within:
      return {std::move(word), FontRole::strong, Ink::blue, ShapeKind::disc};
    case ReadingVerdict::too_small:
      return {std::move(word), FontRole::strong, Ink::brick, ShapeKind::triangle_down};
    case ReadingVerdict::too_large:
      return {std::move(word), FontRole::strong, Ink::brick, ShapeKind::triangle_up};
    case ReadingVerdict::on_limit:
      return {std::move(word), FontRole::strong, Ink::text, ShapeKind::half_disc};
    case ReadingVerdict::not_equal:
      return {std::move(word), FontRole::strong, Ink::brick, ShapeKind::diamond};
    case ReadingVerdict::none:
      break;
  }
  return {std::move(word), FontRole::body, Ink::soft, std::nullopt};
}

}  // namespace

Cell verdict_cell(ReadingVerdict verdict) {
  return shaped(word_of(verdict), verdict);
}

Cell disc_verdict_cell(ReadingVerdict verdict) {
  return shaped(disc_verdict_word(verdict), verdict);
}

double height_of_beginning(const PageWriter& writer, const Table& table) {
  if (table.rows.empty()) {
    return head_mm;
  }
  const Widths widths = column_widths(table, writer);
  const auto lines = most_lines(lines_of(table.rows.front(), widths, writer.measure()));
  return head_mm +
         std::min(static_cast<double>(lines) * body_pitch_mm + writer.spaced(table.padding_mm), writer.full_room() / 2);
}

void draw(PageWriter& writer, const Table& table) {
  const Widths widths = column_widths(table, writer);
  const double padding = writer.spaced(table.padding_mm);
  const double most_mm = writer.full_room() - head_mm - padding - 6;
  const auto lines_of_a_page = static_cast<std::size_t>(std::max(1.0, most_mm / body_pitch_mm));
  writer.need(height_of_beginning(writer, table));
  draw_head(writer, table, widths);
  for (const auto& row : table.rows) {
    const Lines lines = lines_of(row, widths, writer.measure());
    const std::size_t count = most_lines(lines);
    for (std::size_t from = 0; from < count; from += lines_of_a_page) {
      const std::size_t to = std::min(count, from + lines_of_a_page);
      if (static_cast<double>(to - from) * body_pitch_mm + padding > writer.room()) {
        writer.new_page();
        draw_head(writer, table, widths);
      }
      draw_lines(writer, table, row, lines, widths, from, to);
    }
  }
}

}  // namespace shimwright::record

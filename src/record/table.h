#pragma once

#include <optional>
#include <string>
#include <vector>

#include "page_writer.h"
#include "shimwright/record/record_parts.h"

namespace shimwright::record {

enum class Align { left, right };

struct Cell {
  std::string text;
  FontRole role = FontRole::body;
  Ink ink = Ink::text;
  std::optional<ShapeKind> shape = std::nullopt;  ///< before the text
};

struct Column {
  std::string title;
  Align align = Align::left;
  bool gives = false;  ///< takes what room is left, and breaks its text first where there is too little
};

struct Table {
  std::vector<Column> columns;
  std::vector<std::vector<Cell>> rows;  ///< as many cells as columns
  double padding_mm = 0.9;             ///< of a row, above and below together
};

/// The verdict as shape, word and colour.
[[nodiscard]] Cell verdict_cell(ReadingVerdict verdict);
[[nodiscard]] Cell disc_verdict_cell(ReadingVerdict verdict);

/// How high head and first row are: what a heading above must keep with it.
[[nodiscard]] double height_of_beginning(const PageWriter& writer, const Table& table);

/// Draws the table; its head comes again on each page, no row is cut unless it is higher than a page.
void draw(PageWriter& writer, const Table& table);

}  // namespace shimwright::record

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Pages in millimetres from the top left corner of the sheet; what draws them knows nothing of the record.
namespace shimwright::record {

enum class PaperSize { a4, letter, a5 };

struct SheetSize {
  double width_mm = 0;
  double height_mm = 0;
};
[[nodiscard]] SheetSize size_of(PaperSize paper);

/// What a text is for; size and weight follow from it.
enum class FontRole { title, heading, result, result_strong, vehicle, body, strong, small, mark };

struct FontStyle {
  double size_mm = 0;  ///< body height, also called point size: 1 pt = 25.4/72 mm
  bool semibold = false;
  int advance_percent = 100;  ///< of each character, more than 100 is spaced out
};
[[nodiscard]] FontStyle style_of(FontRole role);

enum class Ink { text, soft, edge, hair, band, pale, blue, brick, amber, amber_edge, guard };

/// 0xRRGGBB
[[nodiscard]] std::uint32_t rgb_of(Ink ink);

struct TextRun {
  double x_mm = 0;
  double baseline_mm = 0;
  double width_mm = 0;  ///< as measured
  std::string text;     ///< UTF-8
  FontRole role = FontRole::body;
  Ink ink = Ink::text;
  double turned_deg = 0;  ///< counter-clockwise about the start of the baseline
};

struct Line {
  double x1_mm = 0;
  double y1_mm = 0;
  double x2_mm = 0;
  double y2_mm = 0;
  double width_mm = 0.2;
  Ink ink = Ink::text;
};

struct Box {
  double x_mm = 0;
  double y_mm = 0;
  double width_mm = 0;
  double height_mm = 0;
};

struct Rectangle {
  Box box;
  std::optional<Ink> fill;
  std::optional<Ink> edge;
};

enum class ShapeKind { disc, half_disc, triangle_up, triangle_down, diamond };

/// A verdict's shape, or the mark of a spot.
struct Shape {
  ShapeKind kind = ShapeKind::disc;
  double x_mm = 0;  ///< centre
  double y_mm = 0;
  double size_mm = 2;
  Ink fill = Ink::text;
  std::optional<Ink> edge;
};

/// Slanted lines.
struct Hatch {
  Box box;
  double gap_mm = 1;
  Ink ink = Ink::amber_edge;
};

enum class KeptFor { seal_code };

/// Room kept free for what comes with the seal.
struct KeptPlace {
  Box box;
  KeptFor what = KeptFor::seal_code;
};

/// Dark squares on paper left white, for a camera.
struct Code {
  Box box;                 ///< of the squares; what reads them needs four more of white all around
  int side = 0;            ///< squares on a side
  std::vector<bool> dark;  ///< row by row from the top left
};

/// A picture, PNG or JPEG, as large as fits into the box: at its left, half way down. One that cannot be read is left
/// out.
struct Picture {
  Box box;
  std::string bytes;
};

using Element = std::variant<TextRun, Line, Rectangle, Shape, Hatch, KeptPlace, Code, Picture>;

struct Page {
  double width_mm = 0;
  double height_mm = 0;
  double margin_mm = 0;
  std::vector<Element> elements;  ///< in the order they are drawn
  std::vector<Box> rows;          ///< what must not overlap or be cut: rows, paragraphs, drawings
};

/// How wide and how high text is in the font that will be used.
class TextMeasure {
 public:
  virtual ~TextMeasure() = default;
  [[nodiscard]] virtual double width_mm(std::string_view text, FontRole role) const = 0;
  /// From the baseline to the top of a capital with its accent.
  [[nodiscard]] virtual double ascent_mm(FontRole role) const = 0;
};

}  // namespace shimwright::record

#include "shimwright/print/page_painter.h"

#include <cmath>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include "dots.h"
#include "shimwright/print/page_by_page.h"

namespace shimwright::print {

namespace {

using record::Ink;

QString text_of(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QColor colour(Ink ink) {
  return QColor::fromRgb(static_cast<QRgb>(record::rgb_of(ink)));
}

QPointF dots(double x_mm, double y_mm) {
  return {x_mm * dots_per_mm, y_mm * dots_per_mm};
}

QRectF dots(const record::Box& box) {
  return {box.x_mm * dots_per_mm, box.y_mm * dots_per_mm, box.width_mm * dots_per_mm, box.height_mm * dots_per_mm};
}

std::size_t place_of(record::FontRole role) {
  return static_cast<std::size_t>(role);
}

/// One for each role, in their order: to look for a font again takes longer than to draw a word with it.
std::vector<QFont> fonts_in_dots(const Fonts& fonts) {
  std::vector<QFont> of_roles;
  for (std::size_t role = 0; role <= place_of(record::FontRole::mark); ++role) {
    of_roles.push_back(font_in_dots(fonts, static_cast<record::FontRole>(role)));
  }
  return of_roles;
}

/// Draws each kind of element in dots.
class Drawer {
 public:
  Drawer(QPainter& painter, const Fonts& fonts) : painter_(painter), of_roles_(fonts_in_dots(fonts)) {}

  void operator()(const record::TextRun& run) const {
    painter_.save();
    painter_.setFont(of_roles_.at(place_of(run.role)));
    painter_.setPen(colour(run.ink));
    painter_.translate(dots(run.x_mm, run.baseline_mm));
    painter_.rotate(-run.turned_deg);
    painter_.drawText(QPointF(0, 0), text_of(run.text));
    painter_.restore();
  }

  void operator()(const record::Line& line) const {
    painter_.setPen(QPen(colour(line.ink), line.width_mm * dots_per_mm, Qt::SolidLine, Qt::FlatCap));
    painter_.drawLine(dots(line.x1_mm, line.y1_mm), dots(line.x2_mm, line.y2_mm));
  }

  void operator()(const record::Rectangle& rectangle) const {
    painter_.setPen(rectangle.edge ? QPen(colour(*rectangle.edge), 0.2 * dots_per_mm) : QPen(Qt::NoPen));
    painter_.setBrush(rectangle.fill ? QBrush(colour(*rectangle.fill)) : QBrush(Qt::NoBrush));
    painter_.drawRect(dots(rectangle.box));
  }

  void operator()(const record::Shape& shape) const {
    painter_.setPen(shape.edge ? QPen(colour(*shape.edge), 0.25 * dots_per_mm) : QPen(Qt::NoPen));
    painter_.setBrush(colour(shape.fill));
    painter_.drawPath(path_of(shape));
    if (shape.kind == record::ShapeKind::half_disc && shape.edge) {
      // The lower half filled alone, so that it is told from a full disc without its colour.
      painter_.setBrush(Qt::NoBrush);
      painter_.drawEllipse(dots(shape.x_mm, shape.y_mm), half(shape), half(shape));
    }
  }

  void operator()(const record::Hatch& hatch) const {
    painter_.save();
    painter_.setClipRect(dots(hatch.box));
    painter_.setPen(QPen(colour(hatch.ink), 0.2 * dots_per_mm));
    const double height = hatch.box.height_mm;
    const int lines = static_cast<int>(std::ceil((height + hatch.box.width_mm) / hatch.gap_mm));
    for (int line = 0; line < lines; ++line) {
      const double x = hatch.box.x_mm - height + line * hatch.gap_mm;
      painter_.drawLine(dots(x, hatch.box.y_mm + height), dots(x + height, hatch.box.y_mm));
    }
    painter_.restore();
  }

  void operator()(const record::KeptPlace&) const {}  // stays free until a seal fills it

  void operator()(const record::Code& code) const {
    const double square = code.side == 0 ? 0 : code.box.width_mm / code.side;
    const double quiet = 4 * square;
    const record::Box& box = code.box;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(Qt::white);  // over the pale mark of the page
    painter_.drawRect(dots({box.x_mm - quiet, box.y_mm - quiet, box.width_mm + 2 * quiet, box.height_mm + 2 * quiet}));
    // One path: drawn square by square, hair lines would show between them.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    std::size_t at = 0;
    for (int row = 0; row < code.side; ++row) {
      for (int column = 0; column < code.side; ++column) {
        if (code.dark[at++]) {
          path.addRect(dots({box.x_mm + square * column, box.y_mm + square * row, square, square}));
        }
      }
    }
    painter_.setBrush(Qt::black);
    painter_.drawPath(path);
  }

  void operator()(const record::Picture& picture) const {
    const auto image =
        QImage::fromData(reinterpret_cast<const uchar*>(picture.bytes.data()), static_cast<int>(picture.bytes.size()));
    if (image.isNull()) {
      return;
    }
    const QRectF room = dots(picture.box);
    const QSizeF size = QSizeF(image.size()).scaled(room.size(), Qt::KeepAspectRatio);
    painter_.drawImage(QRectF({room.left(), room.center().y() - size.height() / 2}, size), image);
  }

 private:
  static double half(const record::Shape& shape) { return shape.size_mm * dots_per_mm / 2; }

  static QPainterPath path_of(const record::Shape& shape) {
    const QPointF centre = dots(shape.x_mm, shape.y_mm);
    const double size = half(shape);
    QPainterPath path;
    switch (shape.kind) {
      case record::ShapeKind::disc:
        path.addEllipse(centre, size, size);
        break;
      case record::ShapeKind::half_disc:
        path.moveTo(centre.x() - size, centre.y());
        path.arcTo(QRectF(centre.x() - size, centre.y() - size, 2 * size, 2 * size), 180, 180);
        path.closeSubpath();
        break;
      case record::ShapeKind::triangle_up:
        path.addPolygon(triangle(centre, size, -1));
        break;
      case record::ShapeKind::triangle_down:
        path.addPolygon(triangle(centre, size, 1));
        break;
      case record::ShapeKind::diamond:
        path.addPolygon(QPolygonF({centre + QPointF(0, -size), centre + QPointF(size, 0), centre + QPointF(0, size),
                                   centre + QPointF(-size, 0)}));
        break;
    }
    path.closeSubpath();
    return path;
  }

  static QPolygonF triangle(QPointF centre, double size, int down) {
    const double tip = down * size;
    return QPolygonF({centre + QPointF(0, tip), centre + QPointF(-1.1 * size, -0.85 * tip),
                      centre + QPointF(1.1 * size, -0.85 * tip)});
  }

  QPainter& painter_;
  std::vector<QFont> of_roles_;
};

}  // namespace

QFont font_in_dots(const Fonts& fonts, record::FontRole role) {
  const record::FontStyle style = record::style_of(role);
  QFont font = style.semibold ? fonts.semibold() : fonts.regular();
  font.setPixelSize(static_cast<int>(std::lround(style.size_mm * dots_per_mm)));
  if (style.advance_percent != 100) {
    font.setLetterSpacing(QFont::PercentageSpacing, style.advance_percent);
  }
  return font;
}

FontMeasure::FontMeasure(const Fonts& fonts) {
  for (const QFont& each : fonts_in_dots(fonts)) {
    of_roles_.push_back({QFontMetricsF(each), {}});
  }
}

double FontMeasure::width_mm(std::string_view text, record::FontRole role) const {
  OfRole& of_role = of_roles_.at(place_of(role));
  const auto [known, is_new] = of_role.widths.try_emplace(std::string(text), 0);
  if (is_new) {
    known->second = of_role.metrics.horizontalAdvance(text_of(text)) / dots_per_mm;
  }
  return known->second;
}

double FontMeasure::ascent_mm(record::FontRole role) const {
  return of_roles_.at(place_of(role)).metrics.ascent() / dots_per_mm;
}

void draw_page(QPainter& painter, const record::Page& page, const Fonts& fonts, double units_per_mm) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(units_per_mm / dots_per_mm, units_per_mm / dots_per_mm);
  const Drawer drawer(painter, fonts);
  for (const record::Element& element : page.elements) {
    std::visit(drawer, element);
  }
  painter.restore();
}

bool draw_pages(QPagedPaintDevice& device, const std::vector<record::Page>& pages, const Fonts& fonts) {
  PageByPage drawing(device, pages, fonts);
  while (drawing.drawn() < drawing.count()) {
    if (!drawing.draw_next()) {
      return false;
    }
  }
  return drawing.finish();
}

}  // namespace shimwright::print

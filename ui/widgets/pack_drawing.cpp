#include "shimwright/widgets/pack_drawing.h"

#include <QPainter>
#include <algorithm>

#include "pack_shapes.h"
#include "paint.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

constexpr double pale_share = 0.28;

struct PackPaint {
  QColor fill;
  QPen pen;
};

QPen stroke(const QColor& colour, double width) {
  return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

bool is_line(PackLook look) {
  return look == PackLook::finger || look == PackLook::lever || look == PackLook::wall;
}

double line_width(PackLook look) {
  return look == PackLook::finger ? 4 : 7;
}

PackPaint paint_of_look(PackLook look, const Colours& colours) {
  const QColor dark = mixed(colours.text, colours.edge, 0.55);
  switch (look) {
    case PackLook::shaft:
      return {mixed(colours.line, colours.card, 0.6), QPen(colours.edge, 1)};
    case PackLook::metal:
      return {colours.metal, QPen(colours.edge, 1)};
    case PackLook::lining:
      return {colours.lining, QPen(colours.lining, 1)};
    case PackLook::bearing:
      return {colours.card, QPen(colours.edge, 1.4)};
    case PackLook::ring:
      return {colours.text, QPen(colours.text, 1)};
    case PackLook::shim:
      return {dark, QPen(dark, 1)};
    case PackLook::no_shim:
      return {QColor(Qt::transparent), QPen(colours.edge, 1.2, Qt::DashLine)};
    case PackLook::finger:
      return {QColor(Qt::transparent), stroke(dark, line_width(look))};
    case PackLook::lever:
    case PackLook::wall:
      return {QColor(Qt::transparent), stroke(colours.edge, line_width(look))};
  }
  return {};
}

void paint_shape(QPainter& painter, const PackShape& shape, const Colours& colours) {
  const PackPaint paint = paint_of_look(shape.look, colours);
  painter.setPen(paint.pen);
  painter.setBrush(paint.fill);
  painter.drawPath(shape.path);
}

/// The part in hand: amber, with an edge that shows it to those who see no amber.
void paint_in_hand(QPainter& painter, const PackShape& shape, const Colours& colours) {
  painter.setBrush(Qt::NoBrush);
  if (is_line(shape.look)) {
    painter.setPen(stroke(colours.text, line_width(shape.look) + 4));
    painter.drawPath(shape.path);
    painter.setPen(stroke(colours.amber, line_width(shape.look)));
  } else {
    painter.setBrush(colours.amber);
    painter.setPen(QPen(colours.text, 2));
  }
  painter.drawPath(shape.path);
}

bool is_pale(const PackShape& shape, const PackView& view) {
  if (!view.one_side || shape.reach == PackReach::both) {
    return false;
  }
  return (shape.reach == PackReach::lower) != (view.live == sheet::Side::lower);
}

void paint_axis(QPainter& painter, const Colours& colours) {
  QPen pen(colours.soft, 1.2);
  pen.setDashPattern({8, 3, 2, 3});
  painter.setPen(pen);
  painter.drawLine(QPointF(pack_axis, 0), QPointF(pack_axis, pack_height));
}

QString name_of_part(sheet::Drawing part) {
  switch (part) {
    case sheet::Drawing::none:
      return {};
    case sheet::Drawing::large_bearing:
      return PackDrawing::tr("large bearing");
    case sheet::Drawing::small_bearing:
      return PackDrawing::tr("small bearing");
    case sheet::Drawing::large_shim:
      return PackDrawing::tr("shim of the large bearing");
    case sheet::Drawing::small_shim:
      return PackDrawing::tr("shim of the small bearing");
    case sheet::Drawing::large_lever:
      return PackDrawing::tr("large lever");
    case sheet::Drawing::small_lever:
      return PackDrawing::tr("small lever");
    case sheet::Drawing::pack:
      return PackDrawing::tr("pack");
    case sheet::Drawing::pack_ring:
      return PackDrawing::tr("ring of the pack");
    case sheet::Drawing::hub:
      return PackDrawing::tr("hub");
    case sheet::Drawing::hub_ring:
      return PackDrawing::tr("ring of the hub");
    case sheet::Drawing::lower_disc:
      return PackDrawing::tr("lower disc");
    case sheet::Drawing::upper_disc:
      return PackDrawing::tr("upper disc");
    case sheet::Drawing::shafts:
      return PackDrawing::tr("shafts");
    case sheet::Drawing::housing:
      return PackDrawing::tr("housing");
  }
  return {};
}

}  // namespace

PackDrawing::PackDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("pack-drawing"));
  setMinimumSize(120, 200);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
  set_view({});
}

void PackDrawing::set_view(const PackView& view) {
  view_ = view;
  const QString part = name_of_part(view.part);
  setAccessibleName(part.isEmpty() ? tr("Half section of the pack")
                                   : tr("Half section of the pack, in hand: %1").arg(part));
  update();
}

void PackDrawing::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QString caption = tr("Not to scale; shims drawn thicker than they are");
  painter.setFont(type_of(font(), 13));
  const int words = Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap;
  const QRect text = painter.fontMetrics().boundingRect(QRect(0, 0, width() - 8, 200), words, caption);
  painter.setPen(colours.soft);
  painter.drawText(QRect(4, height() - text.height() - 2, width() - 8, text.height()), words, caption);

  const double room = height() - text.height() - 8;
  const double scale = std::min({width() / pack_width, room / pack_height, 2.5});
  painter.translate((width() - pack_width * scale) / 2, std::max(0.0, (room - pack_height * scale) / 2));
  painter.scale(scale, scale);
  const std::vector<PackShape> shapes = shapes_of(view_);
  painter.setOpacity(pale_share);
  for (const PackShape& shape : shapes) {
    if (is_pale(shape, view_) && shape.part != view_.part) {
      paint_shape(painter, shape, colours);
    }
  }
  painter.setOpacity(1);
  for (const PackShape& shape : shapes) {
    if (!is_pale(shape, view_) && shape.part != view_.part) {
      paint_shape(painter, shape, colours);
    }
  }
  for (const PackShape& shape : shapes) {
    if (shape.part == view_.part) {
      paint_in_hand(painter, shape, colours);
    }
  }
  paint_axis(painter, colours);
}

}  // namespace shimwright::widgets

#include "shimwright/widgets/style.h"

#include <QApplication>
#include <QFile>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>
#include <utility>
#include <vector>

namespace shimwright::widgets {

namespace {

Colours light_colours() {
  return {.ground = 0xF4F2ED,
          .bar = 0xFBFAF7,
          .card = 0xFFFFFF,
          .text = 0x1F262B,
          .soft = 0x4A5056,
          .edge = 0x767C82,
          .line = 0xD2CFC6,
          .blue = 0x15607C,
          .on_blue = 0xFFFFFF,
          .wash = 0xDDE8EE,
          .brick = 0xA33C20,
          .amber = 0xE8B84A,
          .amber_edge = 0x7A5600,
          .amber_wash = 0xFBEFD2,
          .on_amber = 0x1F262B,
          .metal = 0xC5CAD1,
          .lining = 0x7A6B58};
}

Colours dark_colours() {
  return {.ground = 0x15191D,
          .bar = 0x191E23,
          .card = 0x1E2429,
          .text = 0xE6E3DC,
          .soft = 0xA9B0B5,
          .edge = 0x7C858C,
          .line = 0x343B42,
          .blue = 0x5FB3D4,
          .on_blue = 0x10161A,
          .wash = 0x1E3641,
          .brick = 0xF08A68,
          .amber = 0xE8B84A,
          .amber_edge = 0xE8B84A,
          .amber_wash = 0x33301F,
          .on_amber = 0x1F262B,
          .metal = 0x56606A,
          .lining = 0x9C8671};
}

QPalette palette_of(const Colours& colours) {
  QPalette palette;
  palette.setColor(QPalette::Window, colours.ground);
  palette.setColor(QPalette::WindowText, colours.text);
  palette.setColor(QPalette::Base, colours.card);
  palette.setColor(QPalette::AlternateBase, colours.bar);
  palette.setColor(QPalette::Text, colours.text);
  palette.setColor(QPalette::PlaceholderText, colours.soft);
  palette.setColor(QPalette::Button, colours.card);
  palette.setColor(QPalette::ButtonText, colours.text);
  palette.setColor(QPalette::Highlight, colours.blue);
  palette.setColor(QPalette::HighlightedText, colours.on_blue);
  palette.setColor(QPalette::Link, colours.blue);
  palette.setColor(QPalette::ToolTipBase, colours.card);
  palette.setColor(QPalette::ToolTipText, colours.text);
  palette.setColor(QPalette::Mid, colours.edge);
  palette.setColor(QPalette::Disabled, QPalette::Text, colours.soft);
  palette.setColor(QPalette::Disabled, QPalette::WindowText, colours.soft);
  palette.setColor(QPalette::Disabled, QPalette::ButtonText, colours.soft);
  return palette;
}

QString style_sheet_for(const Colours& colours) {
  QFile file(QStringLiteral(":/shimwright/widgets/style.qss"));
  if (!file.open(QIODevice::ReadOnly)) {
    return {};
  }
  QString sheet = QString::fromUtf8(file.readAll());
  // Longer names first, so that none is taken for the beginning of another.
  const std::vector<std::pair<const char*, QColor>> names{{"@amber_edge", colours.amber_edge},
                                                          {"@amber_wash", colours.amber_wash},
                                                          {"@amber", colours.amber},
                                                          {"@on_blue", colours.on_blue},
                                                          {"@ground", colours.ground},
                                                          {"@bar", colours.bar},
                                                          {"@card", colours.card},
                                                          {"@text", colours.text},
                                                          {"@soft", colours.soft},
                                                          {"@edge", colours.edge},
                                                          {"@line", colours.line},
                                                          {"@blue", colours.blue},
                                                          {"@wash", colours.wash},
                                                          {"@brick", colours.brick}};
  for (const auto& [name, colour] : names) {
    sheet.replace(QLatin1String(name), colour.name());
  }
  return sheet;
}

}  // namespace

const Colours& colours_of(Scheme scheme) {
  static const Colours light = light_colours();
  static const Colours dark = dark_colours();
  return scheme == Scheme::light ? light : dark;
}

const Colours& colours_of(const QWidget& widget) {
  const bool dark =
      widget.palette().color(QPalette::Window).lightness() < widget.palette().color(QPalette::WindowText).lightness();
  return colours_of(dark ? Scheme::dark : Scheme::light);
}

void dress(QApplication& application, Scheme scheme, const print::Fonts& fonts) {
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QFont font = fonts.regular();
  font.setPixelSize(pixels::base);
  QApplication::setFont(font);
  QApplication::setPalette(palette_of(colours_of(scheme)));
  application.setStyleSheet(style_sheet_for(colours_of(scheme)));
}

void set_part(QWidget* widget, const char* part) {
  widget->setProperty("part", QLatin1String(part == nullptr ? "" : part));
  if (!widget->testAttribute(Qt::WA_WState_Polished)) {
    return;
  }
  // A part given later than the style sheet is only seen after this.
  widget->style()->unpolish(widget);
  widget->style()->polish(widget);
}

}  // namespace shimwright::widgets

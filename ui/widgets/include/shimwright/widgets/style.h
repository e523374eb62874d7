#pragma once

#include <QColor>
#include <QString>

#include "shimwright/print/fonts.h"

class QApplication;
class QWidget;

/// The look: colours, sizes of type and the style sheet. A widget that paints asks colours_of(*this).
namespace shimwright::widgets {

enum class Scheme { light, dark };

struct Colours {
  QColor ground;  ///< behind everything
  QColor bar;     ///< top bar, side columns, foot
  QColor card;    ///< boxes, fields, buttons
  QColor text;
  QColor soft;     ///< less important text
  QColor edge;     ///< of fields and buttons
  QColor line;     ///< thin lines between rows, edge of cards
  QColor blue;     ///< within, live, main
  QColor on_blue;  ///< text on blue
  QColor wash;     ///< pale blue behind what is chosen
  QColor brick;    ///< too small, too large
  QColor amber;    ///< fill only, never text
  QColor amber_edge;
  QColor amber_wash;  ///< behind a caution
  QColor on_amber;    ///< ink on amber, the same in both schemes
  QColor metal;       ///< neutral fill in drawings
  QColor lining;      ///< of a disc in drawings
};

[[nodiscard]] const Colours& colours_of(Scheme scheme);
/// Those of the scheme the widget is dressed in.
[[nodiscard]] const Colours& colours_of(const QWidget& widget);

/// Heights in device-independent pixels.
namespace pixels {
inline constexpr int base = 17;    ///< type
inline constexpr int field = 30;   ///< type in a number field
inline constexpr int title = 28;   ///< type of a step's title
inline constexpr int strip = 52;   ///< type of the stand-back strip: capitals of 8 mm at 112 dots per inch
inline constexpr int target = 48;  ///< what a finger in a glove hits
inline constexpr int answer = 84;  ///< the main answers
}  // namespace pixels

/// Dresses the application: Fusion, palette, style sheet, type of `fonts`. May be called again to change the scheme.
void dress(QApplication& application, Scheme scheme, const print::Fonts& fonts);

/// Marks what a widget is to the style sheet: `card`, `caution`, `notice`, `question`, `title`, `heading`, `soft`,
/// `small`, `keys`, `demo`, `bar`, `error`, `strong`, `main`, `answer`, `quiet`, `place` (see style.qss).
void set_part(QWidget* widget, const char* part);

}  // namespace shimwright::widgets

#include "shimwright/widgets/strip.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "paint.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

constexpr int strip_margin = 24;
constexpr int strip_gap = 26;      // between the large and the small words
constexpr int least_caps = 31;     // 7 mm at 112 dots per inch
constexpr int strip_small = 24;    // type of the small words
constexpr int strip_padding = 18;  // above and below together
constexpr int whole_width = 858;   // of the middle of the smallest screen

/// Where everything of a strip stands.
struct StripLines {
  QFont large;
  QFont small;
  QStringList lines;
  int line_height = 0;
  int mark_side = 0;
  int mark_room = 0;
  bool small_beside = true;
  [[nodiscard]] int small_height() const { return small_beside ? 0 : QFontMetrics(small).height(); }
  [[nodiscard]] int height() const { return line_height * static_cast<int>(lines.size()) + small_height(); }
};

/// The words in lines no wider than `width`; a word wider than that makes its line too wide.
QStringList wrapped(const QString& text, const QFontMetrics& metrics, int width) {
  QStringList lines;
  for (const QString& word : kept_together(text).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const QString longer = lines.isEmpty() ? word : lines.last() + QLatin1Char(' ') + word;
    if (!lines.isEmpty() && metrics.horizontalAdvance(longer) <= width) {
      lines.last() = longer;
    } else {
      lines << word;
    }
  }
  return lines;
}

bool all_fit(const QStringList& lines, const QFontMetrics& metrics, int width) {
  return std::all_of(lines.begin(), lines.end(),
                     [&](const QString& line) { return metrics.horizontalAdvance(line) <= width; });
}

int least_type(const QFont& base) {
  int size = 36;
  while (size < 80 && QFontMetrics(type_of(base, size, true)).capHeight() < least_caps) {
    ++size;
  }
  return size;
}

StripLines at_size(const StripText& text, const QFont& base, int size, int width) {
  StripLines laid;
  laid.large = type_of(base, size, true);
  const QFontMetrics metrics(laid.large);
  laid.line_height = static_cast<int>(std::lround(size * 1.16));
  laid.small = type_of(base, std::max(strip_small, size * 2 / 5));
  laid.mark_side = text.mark == Mark::none ? 0 : static_cast<int>(std::lround(metrics.capHeight() * 1.12));
  laid.mark_room = text.mark == Mark::none ? 0 : laid.mark_side + size / 4;
  const int room = width - 2 * strip_margin - laid.mark_room;
  laid.lines = wrapped(text.large, metrics, room);
  const int last = laid.lines.isEmpty() ? 0 : metrics.horizontalAdvance(laid.lines.last()) + strip_gap;
  laid.small_beside = text.small.isEmpty() || last + QFontMetrics(laid.small).horizontalAdvance(text.small) <= room;
  int small = laid.small.pixelSize();
  while (!laid.small_beside && small > strip_small && QFontMetrics(laid.small).horizontalAdvance(text.small) > room) {
    laid.small.setPixelSize(--small);
  }
  return laid;
}

bool fits(const StripLines& laid, int width, int most_lines) {
  return laid.lines.size() <= most_lines &&
         all_fit(laid.lines, QFontMetrics(laid.large), width - 2 * strip_margin - laid.mark_room);
}

StripLines filling_lines(const StripText& text, const QFont& base, const QSize& size) {
  const int least = least_type(base);
  for (int type = std::min(360, size.height()); type > least; type -= 4) {
    StripLines laid = at_size(text, base, type, size.width());
    if (fits(laid, size.width(), 6) && laid.height() + strip_padding <= size.height()) {
      return laid;
    }
  }
  return at_size(text, base, least, size.width());
}

/// What is beyond the lines there is room for goes into the last one, shortened.
void shorten(StripLines& laid, int width, int most_lines) {
  const QFontMetrics metrics(laid.large);
  const int room = width - 2 * strip_margin - laid.mark_room;
  if (laid.lines.size() > most_lines) {
    const QString rest = laid.lines.mid(most_lines - 1).join(QLatin1Char(' '));
    laid.lines = laid.lines.mid(0, most_lines - 1);
    laid.lines << rest;
    laid.small_beside = false;
  }
  for (QString& line : laid.lines) {
    line = metrics.elidedText(line, Qt::ElideRight, room);
  }
}

StripLines lay_out(const StripText& text, const QFont& base, const QSize& size, bool filling) {
  StripLines laid;
  if (filling) {
    laid = filling_lines(text, base, size);
    shorten(laid, size.width(), std::max(1, (size.height() - strip_padding - laid.small_height()) / laid.line_height));
    return laid;
  }
  const int least = least_type(base);
  for (int type = pixels::strip; type >= least; --type) {
    laid = at_size(text, base, type, size.width());
    if (fits(laid, size.width(), 1)) {
      return laid;
    }
  }
  laid = at_size(text, base, least, size.width());
  shorten(laid, size.width(), 2);
  return laid;
}

}  // namespace

Strip::Strip(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("strip"));
  settle();
}

void Strip::set_text(const StripText& text) {
  text_ = text;
  setAccessibleName(text.small.isEmpty() ? text.large : tr("%1, %2").arg(text.large, text.small));
  settle();
}

void Strip::set_filling(bool filling) {
  filling_ = filling;
  settle();
}

void Strip::settle() {
  QSizePolicy policy(QSizePolicy::Expanding, filling_ ? QSizePolicy::Expanding : QSizePolicy::Fixed);
  policy.setHeightForWidth(!filling_);
  setSizePolicy(policy);
  setMinimumHeight(filling_ ? 78 : sizeHint().height());
  updateGeometry();
  update();
}

void Strip::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  // Not every layout around this one asks for the height that goes with a width.
  if (!filling_ && minimumHeight() != heightForWidth(width())) {
    setMinimumHeight(heightForWidth(width()));
  }
}

int Strip::cap_height() const {
  return QFontMetrics(lay_out(text_, font(), size(), filling_).large).capHeight();
}

QStringList Strip::large_lines() const {
  return lay_out(text_, font(), size(), filling_).lines;
}

QSize Strip::sizeHint() const {
  return {300, heightForWidth(testAttribute(Qt::WA_Resized) ? width() : whole_width)};
}

int Strip::heightForWidth(int width) const {
  return std::max(78, lay_out(text_, font(), {width, 0}, false).height() + strip_padding);
}

void Strip::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  const StripLines laid = lay_out(text_, font(), size(), filling_);
  const QFontMetrics metrics(laid.large);
  QPainter painter(this);
  painter.fillRect(rect(), colours.card);
  painter.fillRect(QRect(0, height() - 1, width(), 1), colours.line);
  const int top = (height() - laid.height()) / 2;
  // Capitals in the middle of their line.
  int baseline = top + (laid.line_height + metrics.capHeight()) / 2;
  const int left = strip_margin + laid.mark_room;
  const double side = laid.mark_side;
  paint_mark(painter, QRectF(strip_margin, baseline - (metrics.capHeight() + side) / 2, side, side), text_.mark,
             colours);
  painter.setFont(laid.large);
  painter.setPen(text_.bad ? colours.brick : colours.text);
  int end = left;
  for (int line = 0; line < laid.lines.size(); ++line) {
    painter.drawText(left, baseline + line * laid.line_height, laid.lines[line]);
    end = left + metrics.horizontalAdvance(laid.lines[line]);
  }
  baseline += (static_cast<int>(laid.lines.size()) - 1) * laid.line_height;
  painter.setFont(laid.small);
  painter.setPen(colours.soft);
  const QFontMetrics small(laid.small);
  const int from = laid.small_beside ? end + (laid.lines.isEmpty() ? 0 : strip_gap) : left;
  const int below = top + laid.line_height * static_cast<int>(laid.lines.size()) + small.ascent();
  const QString words = small.elidedText(text_.small, Qt::ElideRight, width() - strip_margin - from);
  painter.drawText(from, laid.small_beside ? std::max(baseline, small.ascent()) : below, words);
}

}  // namespace shimwright::widgets

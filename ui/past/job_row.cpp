#include "job_row.h"

#include <QDateTime>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "shimwright/store/found_mark.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::past {

namespace {

using widgets::qt;

/// A line under what was sought; under what was forgiven a bar, thick and in another colour.
void paint_found(QPainter& painter, const QRect& box, int baseline, const QString& text, const QString& sought,
                 const widgets::Colours& colours) {
  const auto mark = store::found_mark(widgets::plain(text), widgets::plain(sought));
  if (!mark) {
    return;
  }
  const QFontMetrics metrics(painter.font());
  const auto bar = [&](std::size_t at, double high, const QColor& colour) {
    const auto place = static_cast<qsizetype>(at);
    const int from = box.left() + metrics.horizontalAdvance(text.left(place));
    const int to = std::min(box.right(), box.left() + metrics.horizontalAdvance(text.left(place + 1)));
    painter.fillRect(QRectF(from, baseline, std::max(to - from, 0), high), colour);
  };
  for (const std::size_t at : mark->held) {
    bar(at, 2, colours.blue);
  }
  for (const std::size_t at : mark->forgiven) {
    bar(at, 5, colours.brick);
  }
}

}  // namespace

QFont row_font(const QFont& base, int pixels, bool strong) {
  QFont font = base;
  font.setPixelSize(pixels);
  font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
  return font;
}

void paint_lines(QPainter& painter, const QRect& box, const QString& upper, const QString& lower,
                 const widgets::Colours& colours, Qt::TextElideMode elide) {
  const QFont base = painter.font();
  painter.setFont(row_font(base, widgets::pixels::base, true));
  painter.setPen(colours.text);
  painter.drawText(QRect(box.left(), box.top(), box.width(), 28), Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(upper, elide, box.width()));
  painter.setFont(row_font(base, 15, false));
  painter.setPen(colours.soft);
  painter.drawText(QRect(box.left(), box.top() + 28, box.width(), 24), Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(lower, Qt::ElideRight, box.width()));
  painter.setFont(base);
}

QString day_of(std::int64_t at_ms) {
  return QLocale().toString(QDateTime::fromMSecsSinceEpoch(at_ms).date(), JobRow::tr("d MMM yyyy"));
}

QString standing_word(store::JobStanding standing) {
  switch (standing) {
    case store::JobStanding::open:
      return JobRow::tr("open");
    case store::JobStanding::parked:
      return JobRow::tr("parked");
    case store::JobStanding::closed:
      return JobRow::tr("closed");
  }
  return {};
}

widgets::Mark standing_mark(store::JobStanding standing) {
  switch (standing) {
    case store::JobStanding::open:
    case store::JobStanding::parked:
      return widgets::Mark::in_work;
    case store::JobStanding::closed:
      return widgets::Mark::done;
  }
  return widgets::Mark::none;
}

QString place_word(store::FoundIn place) {
  switch (place) {
    case store::FoundIn::vehicle:
      return JobRow::tr("VIN");
    case store::FoundIn::plate:
      return JobRow::tr("plate");
    case store::FoundIn::number:
      return JobRow::tr("job number");
    case store::FoundIn::customer_reference:
      return JobRow::tr("customer reference");
    case store::FoundIn::gearbox_serial:
      return JobRow::tr("gearbox serial");
    case store::FoundIn::pack_serial:
      return JobRow::tr("pack serial");
    case store::FoundIn::batch:
      return JobRow::tr("batch");
  }
  return {};
}

JobRow::JobRow(const store::JobSummary& job, std::optional<Finding> finding, QWidget* parent)
    : QAbstractButton(parent), job_(job), finding_(std::move(finding)) {
  setObjectName(QStringLiteral("result-%1").arg(qt(job_.number)));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  QStringList said{tr("Job %1").arg(qt(job_.number)), qt(job_.vehicle_key)};
  if (job_.plate) {
    said << qt(*job_.plate);
  }
  said << day_of(job_.opened_at_ms) << standing_word(job_.standing);
  if (finding_) {
    said << tr("found in: %1").arg(place_word(finding_->place)) << under_finding();
  }
  setAccessibleName(said.join(QStringLiteral(", ")));
}

QString JobRow::under_standing() const {
  if (job_.standing == store::JobStanding::parked && !job_.waits_for.empty()) {
    return tr("waits for %1").arg(qt(job_.waits_for));
  }
  return tr("unit %1").arg(qt(job_.gearbox));
}

// The number itself stands in the row already.
bool JobRow::is_shown() const {
  return finding_ && (finding_->place == store::FoundIn::vehicle || finding_->place == store::FoundIn::number);
}

QString JobRow::before_term() const {
  return finding_ && finding_->taken_back ? tr("taken back") + QStringLiteral(" · ") : QString();
}

QString JobRow::under_finding() const {
  if (!finding_) {
    return {};
  }
  const QString where = is_shown() ? QString() : finding_->term + QStringLiteral(" · ");
  return before_term() + where + how_near(*finding_);
}

QString JobRow::how_near(const Finding& finding) const {
  if (finding.exact) {
    return tr("exact");
  }
  const QString shown = finding.place == store::FoundIn::vehicle  ? qt(job_.vehicle_key)
                        : finding.place == store::FoundIn::number ? qt(job_.number)
                                                                  : finding.term;
  const auto mark = store::found_mark(widgets::plain(shown), widgets::plain(finding.sought));
  return mark && mark->forgiven.size() == 2 ? tr("two characters swapped") : tr("one character differs");
}

void JobRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  // The arrows belong to the list.
  if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down || event->key() == Qt::Key_Left ||
      event->key() == Qt::Key_Right) {
    event->ignore();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void JobRow::paint_vehicle(QPainter& painter, const QRect& box) const {
  const widgets::Colours& colours = widgets::colours_of(*this);
  const QString key = qt(job_.vehicle_key);
  // Its end is what people know it by.
  paint_lines(painter, box, key, job_.plate ? qt(*job_.plate) : tr("no plate given"), colours, Qt::ElideLeft);
  if (finding_ && finding_->place == store::FoundIn::vehicle) {
    painter.setFont(row_font(font(), widgets::pixels::base, true));
    const QFontMetrics metrics(painter.font());
    const QString shown = metrics.elidedText(key, Qt::ElideLeft, box.width());
    const int shift = metrics.horizontalAdvance(shown) - metrics.horizontalAdvance(key);
    painter.setClipRect(box);
    paint_found(painter, box.adjusted(shift, 0, 0, 0), box.top() + 25, key, finding_->sought, colours);
    painter.setClipping(false);
    painter.setFont(font());
  }
}

void JobRow::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font());
  const QRectF frame = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  painter.setBrush(isDown() || hasFocus() ? colours.wash : colours.card);
  painter.setPen(QPen(hasFocus() ? colours.blue : colours.line, hasFocus() ? 3 : 1));
  painter.drawRoundedRect(frame, 7, 7);
  const QRect inside = rect().adjusted(16, 8, -12, -8);
  const int number_width = 130;
  const int found_width = finding_ ? std::min(220, inside.width() / 4) : 0;
  const int standing_width = std::min(260, inside.width() / 4);
  const int vehicle_width = inside.width() - number_width - found_width - standing_width;
  int left = inside.left();
  const auto column = [&](int width) {
    const QRect box(left, inside.top(), width - 14, inside.height());
    left += width;
    return box;
  };
  const QRect number = column(number_width);
  paint_lines(painter, number, qt(job_.number), day_of(job_.opened_at_ms), colours);
  if (finding_ && finding_->place == store::FoundIn::number) {
    painter.setFont(row_font(font(), widgets::pixels::base, true));
    paint_found(painter, number, number.top() + 25, qt(job_.number), finding_->sought, colours);
    painter.setFont(font());
  }
  paint_vehicle(painter, column(vehicle_width));
  const QRect standing = column(standing_width);
  widgets::paint_mark(painter, QRectF(standing.left(), standing.top() + 6, 16, 16), standing_mark(job_.standing),
                      colours);
  paint_lines(painter, standing.adjusted(26, 0, 0, 0), standing_word(job_.standing), under_standing(), colours);
  if (finding_) {
    const QRect found = column(found_width);
    paint_lines(painter, found, place_word(finding_->place), under_finding(), colours);
    if (!is_shown()) {
      painter.setFont(row_font(font(), 15, false));
      const QRect term = found.adjusted(painter.fontMetrics().horizontalAdvance(before_term()), 0, 0, 0);
      paint_found(painter, term, found.top() + 28 + 22, finding_->term, finding_->sought, colours);
    }
  }
}

}  // namespace shimwright::past

#include "life_row.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStringList>

#include "job_row.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::past {

namespace {

using record::ReadingVerdict;
using sheet::Side;
using widgets::qt;

constexpr int mark_side = 13;

/// Stands for what is not there.
QString dash() {
  return QStringLiteral("–");
}

QString float_digits(const record::FloatInLife* of_disc) {
  return of_disc == nullptr ? dash() : widgets::length_shown(static_cast<double>(of_disc->mean_um) / 1000.0, 2);
}

QString shim_of(const record::JobInLife& job, Side side) {
  const auto found = job.shims.find(side);
  return found == job.shims.end() ? dash() : qt(found->second);
}

/// Both discs with the shape of their verdict behind each.
void paint_floats(QPainter& painter, const QRect& box, const record::JobInLife& job, bool as_found,
                  const widgets::Colours& colours) {
  const QString caption = as_found     ? LifeRow::tr("as found")
                          : job.closed ? LifeRow::tr("final float")
                                       : LifeRow::tr("float so far");
  paint_lines(painter, box, {}, caption, colours);
  const QFont base = painter.font();
  painter.setFont(row_font(base, widgets::pixels::base, true));
  int left = box.left();
  for (const Side side : {Side::lower, Side::upper}) {
    const auto* of_disc = job.float_of(side, as_found);
    const QString text = (side == Side::upper ? QStringLiteral("/ ") : QString()) + float_digits(of_disc);
    painter.setPen(colours.text);
    painter.drawText(QRect(left, box.top(), box.width(), 28), Qt::AlignLeft | Qt::AlignVCenter, text);
    left += painter.fontMetrics().horizontalAdvance(text) + 5;
    // Within is the quiet case; what is not stands out by its shape.
    if (of_disc != nullptr && of_disc->verdict != ReadingVerdict::within && of_disc->verdict != ReadingVerdict::none) {
      widgets::paint_mark(painter, QRectF(left, box.top() + 8, mark_side, mark_side), verdict_mark(of_disc->verdict),
                          colours);
      left += mark_side + 5;
    }
  }
  painter.setFont(base);
}

QString float_words(const record::JobInLife& job, bool as_found) {
  QStringList said;
  for (const Side side : {Side::lower, Side::upper}) {
    if (const auto* of_disc = job.float_of(side, as_found); of_disc != nullptr) {
      const QString disc = side == Side::lower ? LifeRow::tr("lower") : LifeRow::tr("upper");
      said << (disc + QLatin1Char(' ') + float_digits(of_disc) + QLatin1Char(' ') + verdict_words(of_disc->verdict))
                  .trimmed();
    }
  }
  if (said.isEmpty()) {
    return as_found ? LifeRow::tr("not measured as found") : LifeRow::tr("no float yet");
  }
  const QString all = said.join(QStringLiteral(", "));
  if (as_found) {
    return LifeRow::tr("float as found: %1").arg(all);
  }
  return job.closed ? LifeRow::tr("final float: %1").arg(all) : LifeRow::tr("float so far: %1").arg(all);
}

}  // namespace

widgets::Mark verdict_mark(ReadingVerdict verdict) {
  switch (verdict) {
    case ReadingVerdict::within:
      return widgets::Mark::within;
    case ReadingVerdict::too_small:
      return widgets::Mark::too_small;
    case ReadingVerdict::too_large:
      return widgets::Mark::too_large;
    case ReadingVerdict::on_limit:
      return widgets::Mark::on_limit;
    case ReadingVerdict::not_equal:
      return widgets::Mark::not_equal;
    case ReadingVerdict::none:
      break;
  }
  return widgets::Mark::none;
}

QString odometer_words(const record::JobInLife& job) {
  return job.odometer ? widgets::number_shown(*job.odometer) : dash();
}

QString state_words(const store::JobOfVehicle& job) {
  if (job.seal == record::SealStanding::changed) {
    return LifeRow::tr("the seal does not hold");
  }
  if (job.seal == record::SealStanding::key_unknown) {
    return LifeRow::tr("signed with a key not known here");
  }
  if (job.seal) {
    if (job.life.addenda == 0) {
      return LifeRow::tr("signed");
    }
    return job.life.addenda == 1 ? LifeRow::tr("signed, 1 addendum")
                                 : LifeRow::tr("signed, %1 addenda").arg(job.life.addenda);
  }
  if (job.summary.standing == store::JobStanding::parked && !job.summary.waits_for.empty()) {
    return LifeRow::tr("waits for %1").arg(qt(job.summary.waits_for));
  }
  return standing_word(job.summary.standing);
}

QString verdict_words(ReadingVerdict verdict) {
  if (verdict == ReadingVerdict::not_equal) {
    return LifeRow::tr("mixed");
  }
  const widgets::Mark mark = verdict_mark(verdict);
  return mark == widgets::Mark::none ? QString() : widgets::word_of(mark);
}

LifeRow::LifeRow(const store::JobOfVehicle& job, QWidget* parent) : QAbstractButton(parent), job_(job) {
  setObjectName(QStringLiteral("life-%1").arg(qt(job_.summary.number)));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  const QStringList said{
      tr("Job %1").arg(qt(job_.summary.number)),
      day_of(job_.summary.opened_at_ms),
      odometer_words(job_.life),
      state_words(job_),
      tr("shims large %1, small %2").arg(shim_of(job_.life, Side::lower), shim_of(job_.life, Side::upper)),
      float_words(job_.life, true),
      float_words(job_.life, false)};
  setAccessibleName(said.join(QStringLiteral("; ")));
}

void LifeRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
    event->ignore();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void LifeRow::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font());
  const QRectF frame = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  painter.setBrush(isDown() || hasFocus() ? colours.wash : colours.card);
  painter.setPen(QPen(hasFocus() ? colours.blue : colours.line, hasFocus() ? 3 : 1));
  painter.drawRoundedRect(frame, 7, 7);
  const QRect inside = rect().adjusted(14, 8, -6, -8);
  int left = inside.left();
  const auto column = [&](int share) {
    const int width = inside.width() * share / 100;
    const QRect box(left, inside.top(), width - 10, inside.height());
    left += width;
    return box;
  };
  paint_lines(painter, column(20), qt(job_.summary.number), day_of(job_.summary.opened_at_ms), colours);
  paint_lines(painter, column(22), odometer_words(job_.life), state_words(job_), colours);
  paint_lines(painter, column(18),
              shim_of(job_.life, Side::lower) + QStringLiteral(" / ") + shim_of(job_.life, Side::upper), tr("shims"),
              colours);
  paint_floats(painter, column(20), job_.life, true, colours);
  paint_floats(painter, column(20), job_.life, false, colours);
}

}  // namespace shimwright::past

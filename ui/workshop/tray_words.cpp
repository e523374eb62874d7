#include "tray_words.h"

#include <QCoreApplication>
#include <QDateTime>

#include "days_words.h"
#include "shimwright/job/stock.h"
#include "shimwright/widgets/units.h"

namespace shimwright::workshop {

namespace {

struct TrayWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

job::Moment local_moment(std::int64_t at_ms) {
  constexpr int seconds_of_minute = 60;
  return {at_ms, QDateTime::fromMSecsSinceEpoch(at_ms).offsetFromUtc() / seconds_of_minute, false};
}

QString count_words(const ShimLine& line) {
  if (!line.counted.count || !line.left) {
    return TrayWords::tr("not counted");
  }
  if (!line.stock.counted_at_ms) {
    return TrayWords::tr("%1 in the tray").arg(*line.left);
  }
  return TrayWords::tr("%1 left of %2 counted %3")
      .arg(*line.left)
      .arg(*line.counted.count)
      .arg(day_words(local_moment(*line.stock.counted_at_ms)));
}

}  // namespace

QString shim_words(const ShimLine& line) {
  QStringList words;
  const QString thickness = widgets::length_shown(quantity::in_millimetres(line.counted.thickness), 3);
  words << TrayWords::tr("measured %1 ± %2 %3 (95 %)")
               .arg(thickness, widgets::uncertainty_shown(1.96 * line.counted.u_mm, 3), widgets::length_symbol());
  if (!line.stock.readings.empty()) {
    words << TrayWords::tr("by %1 readings").arg(line.stock.readings.size());
  }
  words << count_words(line);
  if (line.stock.reorder_at) {
    words << (job::is_low(line.left, line.stock.reorder_at)
                  ? TrayWords::tr("order now: %1 or fewer").arg(*line.stock.reorder_at)
                  : TrayWords::tr("order at %1").arg(*line.stock.reorder_at));
  }
  if (line.wanted >= 0.05) {
    words << TrayWords::tr("open jobs may want %1").arg(line.wanted, 0, 'f', 1);
  }
  return words.join(QStringLiteral(" · "));
}

widgets::Mark mark_of(const ShimLine& line) {
  if (job::is_low(line.left, line.stock.reorder_at)) {
    return widgets::Mark::held;
  }
  return line.left && job::may_run_out(*line.left, line.wanted) ? widgets::Mark::on_limit : widgets::Mark::none;
}

QString demand_words(const store::TrayDemand& demand) {
  if (demand.jobs == 0) {
    return TrayWords::tr("No open job has its shim from here still to come.");
  }
  QString words = TrayWords::tr("Open jobs that still take a shim from here: %1.").arg(demand.jobs);
  if (demand.without_belief > 0) {
    words += QLatin1Char(' ') + TrayWords::tr("Jobs with no hint yet at its size: %1.").arg(demand.without_belief);
  }
  return words;
}

}  // namespace shimwright::workshop

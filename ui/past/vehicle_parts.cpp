#include "vehicle_parts.h"

#include <QDateTime>
#include <QDir>
#include <QGridLayout>
#include <QStandardPaths>
#include <QStringList>
#include <algorithm>

#include "job_row.h"
#include "life_row.h"
#include "shimwright/vehicle/vehicle_number.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::past {

using widgets::qt;

namespace {

constexpr double micrometres_in_mm = 1000.0;
constexpr double metres_in_km = 1000.0;
constexpr int heads_line = 1;  // rows of a grid are counted from 1
constexpr double ms_in_day = 24.0 * 3600 * 1000;

double in_mm(std::int64_t micrometres) {
  return static_cast<double>(micrometres) / micrometres_in_mm;
}

/// Earliest first, only jobs that have a float of this disc.
std::vector<const record::JobInLife*> jobs_with_float(const store::VehicleHistory& history, sheet::Side side) {
  std::vector<const record::JobInLife*> jobs;
  for (auto job = history.jobs.rbegin(); job != history.jobs.rend(); ++job) {
    if (job->life.float_of(side, true) != nullptr || job->life.float_of(side, false) != nullptr) {
      jobs.push_back(&job->life);
    }
  }
  return jobs;
}

bool by_distance(const std::vector<const record::JobInLife*>& jobs) {
  std::int64_t before = 0;
  return std::all_of(jobs.begin(), jobs.end(), [&before](const record::JobInLife* job) {
    const bool on = job->odometer && job->odometer->base >= before;
    before = on ? job->odometer->base : before;
    return on;
  });
}

ChartPoint point_of(const record::JobInLife& job, const record::FloatInLife& of_disc, bool distance) {
  ChartPoint point;
  const auto& odometer = job.odometer;
  const bool by_odometer = distance && odometer.has_value();
  point.x = by_odometer ? static_cast<double>(odometer->base) / metres_in_km
                        : static_cast<double>(job.opened.at_ms) / ms_in_day;
  point.x_text = by_odometer ? odometer_words(job) : day_of(job.opened.at_ms);
  point.job = qt(job.number);
  point.as_found = of_disc.as_found;
  point.so_far = !of_disc.as_found && !job.closed;
  point.mm = in_mm(of_disc.mean_um);
  if (of_disc.expanded_u_um) {
    point.u_mm = in_mm(*of_disc.expanded_u_um);
  }
  point.least_mm = in_mm(of_disc.least.count());
  point.most_mm = in_mm(of_disc.most.count());
  point.verdict = verdict_words(of_disc.verdict);
  point.mark = verdict_mark(of_disc.verdict);
  const auto& pack = of_disc.as_found ? job.old_pack : job.new_pack;
  point.pack = pack ? qt(*pack) : QString();
  return point;
}

void add_number_line(QGridLayout* grid, QWidget* table, const QStringList& cells, const char* part) {
  const int line = grid->rowCount();
  for (int at = 0; at < cells.size(); ++at) {
    auto* cell = widgets::child_of<widgets::Text>(table, cells[at], part);
    // A number is not broken into two lines.
    cell->setWordWrap(at == 1 || line == heads_line);
    grid->addWidget(cell, line, at);
  }
}

QString model_years_words(const std::vector<int>& years) {
  QStringList texts;
  for (const int year : years) {
    texts << QString::number(year);
  }
  return texts.join(QStringLiteral(" / "));
}

}  // namespace

std::vector<ChartPoint> chart_points(const store::VehicleHistory& history, sheet::Side side) {
  const auto jobs = jobs_with_float(history, side);
  const bool distance = by_distance(jobs);
  std::vector<ChartPoint> points;
  for (const record::JobInLife* job : jobs) {
    for (const bool as_found : {true, false}) {
      if (const auto* of_disc = job->float_of(side, as_found); of_disc != nullptr) {
        points.push_back(point_of(*job, *of_disc, distance));
      }
    }
  }
  return points;
}

void fill_number_table(const store::VehicleHistory& history, QWidget* table) {
  auto* grid = widgets::child_of<QGridLayout>(table);
  grid->setContentsMargins(14, 10, 14, 10);
  grid->setHorizontalSpacing(12);
  grid->setVerticalSpacing(4);
  const QString unit = widgets::length_symbol();
  add_number_line(grid, table,
                  {LifeRow::tr("Job"), LifeRow::tr("Disc"), LifeRow::tr("Float (%1)").arg(unit), LifeRow::tr("± 95 %"),
                   LifeRow::tr("Limits (%1)").arg(unit), LifeRow::tr("Verdict")},
                  "soft");
  for (const store::JobOfVehicle& job : history.jobs) {
    for (const record::FloatInLife& each : job.life.floats) {
      const QString disc = each.side == sheet::Side::lower ? LifeRow::tr("lower") : LifeRow::tr("upper");
      const QString when = each.as_found     ? LifeRow::tr("as found")
                           : job.life.closed ? LifeRow::tr("final")
                                             : LifeRow::tr("so far");
      const QString u = each.expanded_u_um ? widgets::length_shown(in_mm(*each.expanded_u_um), 3) : QStringLiteral("–");
      add_number_line(
          grid, table,
          {qt(job.summary.number), disc + QStringLiteral(", ") + when, widgets::length_shown(in_mm(each.mean_um), 3), u,
           LifeRow::tr("%1 to %2")
               .arg(widgets::length_shown(in_mm(each.least.count()), 2),
                    widgets::length_shown(in_mm(each.most.count()), 2)),
           verdict_words(each.verdict)},
          nullptr);
    }
  }
}

QString vehicle_words(const store::VehicleHistory& history) {
  QStringList parts;
  if (!history.jobs.empty()) {
    parts << LifeRow::tr("Unit %1").arg(qt(history.jobs.front().summary.gearbox));
  }
  const auto number = vehicle::read_vehicle_number(history.vehicle, QDateTime::currentDateTime().date().year());
  if (number && !number->model_years.empty()) {
    parts << LifeRow::tr("model year by its code %1").arg(model_years_words(number->model_years));
  }
  if (number) {
    parts << (number->notes.empty() ? LifeRow::tr("check digit fits") : LifeRow::tr("check digit does not fit"));
  }
  const auto jobs = history.jobs.size() + history.older;
  parts << (jobs == 1 ? LifeRow::tr("1 job") : LifeRow::tr("%1 jobs").arg(jobs));
  return parts.join(QStringLiteral(" · "));
}

QString export_file_name(const std::string& vehicle_key, const QString& ending) {
  QString name = QStringLiteral("vehicle-") + qt(vehicle_key);
  for (QChar& each : name) {
    if (!each.isLetterOrNumber() && each != QLatin1Char('-')) {
      each = QLatin1Char('-');
    }
  }
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QDir(folder).filePath(name + QLatin1Char('.') + ending);
}

}  // namespace shimwright::past

#include "before_start.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "days.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

/// Enough to send an instrument away before it is missing.
constexpr qint64 near_days = 14;
/// The backup runs daily by itself: after two days something keeps it from running.
constexpr qint64 old_backup_days = 2;
constexpr int listed_shims = 6;

QString in_days(qint64 days) {
  if (days == 0) {
    return QCoreApplication::translate("bench", "today");
  }
  return days == 1 ? QCoreApplication::translate("bench", "tomorrow")
                   : QCoreApplication::translate("bench", "in %1 days").arg(days);
}

Heed calibration_heed(const job::Instrument& instrument, const QDate& due, qint64 days) {
  const QString name = widgets::qt(instrument.name);
  if (days < 0) {
    return {name, QCoreApplication::translate("bench", "Calibration overdue since %1.").arg(day_text(due)), true};
  }
  return {name, QCoreApplication::translate("bench", "Calibration due %1, %2.").arg(day_text(due), in_days(days)),
          false};
}

/// `1.65, 1.70 and 3 more`.
QString shim_list(const std::vector<job::TrayShim>& shims, int count) {
  QStringList names;
  for (const job::TrayShim& each : shims) {
    if (each.count == count) {
      names.append(widgets::qt(each.id));
    }
  }
  const auto more = names.size() - listed_shims;
  if (more <= 1) {
    return names.join(QStringLiteral(", "));
  }
  return QCoreApplication::translate("bench", "%1 and %2 more")
      .arg(names.mid(0, listed_shims).join(QStringLiteral(", ")))
      .arg(more);
}

QString wish_sentence(int jobs) {
  if (jobs == 0) {
    return QCoreApplication::translate("bench", "No open job waits for a shim of this tray.");
  }
  return jobs == 1 ? QCoreApplication::translate("bench", "One open job may want a shim of this tray.")
                   : QCoreApplication::translate("bench", "%1 open jobs may want a shim of this tray.").arg(jobs);
}

bool settled(const job::JobState& state, sheet::Side side) {
  if (state.shims.count(side) == 0) {
    return false;
  }
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* measured = std::get_if<sheet::FloatStep>(&step->body);
    if (measured != nullptr && !measured->as_found && step->side == side) {
      return job::passed(state.step(step->id));
    }
  }
  return true;
}

}  // namespace

std::vector<Heed> calibrations(const std::vector<job::Instrument>& instruments, const QDate& today) {
  std::vector<std::pair<qint64, Heed>> found;
  for (const job::Instrument& each : instruments) {
    const auto due = each.calibrated_to ? day_of(*each.calibrated_to) : std::nullopt;
    const qint64 days = due ? today.daysTo(*due) : near_days + 1;
    if (due && days <= near_days) {
      found.emplace_back(days, calibration_heed(each, *due, days));
    }
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& one, const auto& other) { return one.first < other.first; });
  std::vector<Heed> heeds;
  for (auto& [days, heed] : found) {
    heeds.push_back(std::move(heed));
  }
  return heeds;
}

void add_wishes(std::map<std::string, int>& jobs_by_tray, const job::JobState& state) {
  for (const sheet::Side side : {sheet::Side::lower, sheet::Side::upper}) {
    if (!settled(state, side)) {
      jobs_by_tray[state.sheets.spec->side(side).tray_name] += 1;
    }
  }
}

std::vector<Heed> low_trays(const std::vector<store::Tray>& trays, const std::map<std::string, int>& jobs_by_tray) {
  std::vector<Heed> wanted;
  std::vector<Heed> others;
  for (const store::Tray& tray : trays) {
    const QString none = shim_list(tray.shims, 0);
    const QString one = shim_list(tray.shims, 1);
    QStringList sentences;
    if (!none.isEmpty()) {
      sentences.append(QCoreApplication::translate("bench", "None left of %1.").arg(none));
    }
    if (!one.isEmpty()) {
      sentences.append(QCoreApplication::translate("bench", "One left of %1.").arg(one));
    }
    if (sentences.isEmpty()) {
      continue;
    }
    const auto wishing = jobs_by_tray.find(tray.name);
    const int jobs = wishing == jobs_by_tray.end() ? 0 : wishing->second;
    sentences.append(wish_sentence(jobs));
    const Heed heed{QCoreApplication::translate("bench", "Tray %1").arg(widgets::qt(tray.name)),
                    sentences.join(QLatin1Char(' ')), jobs > 0 && !none.isEmpty()};
    (jobs > 0 ? wanted : others).push_back(heed);
  }
  wanted.insert(wanted.end(), others.begin(), others.end());
  return wanted;
}

std::optional<Heed> backup_heed(const std::optional<job::Moment>& last, const job::Moment& now) {
  if (!last) {
    return Heed{
        QCoreApplication::translate("bench", "Backup"),
        QCoreApplication::translate("bench", "No verified backup is known. Make one under Workshop, Data and backup."),
        true};
  }
  const qint64 days = day_of(*last).daysTo(day_of(now));
  if (days < old_backup_days) {
    return std::nullopt;
  }
  return Heed{QCoreApplication::translate("bench", "Backup"),
              QCoreApplication::translate("bench",
                                          "The last verified backup is %1 days old. Look under Workshop what keeps it.")
                  .arg(days),
              true};
}

}  // namespace shimwright::bench

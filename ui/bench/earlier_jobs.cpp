#include "earlier_jobs.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "days.h"
#include "shimwright/record/record.h"
#include "shimwright/store/figures.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

constexpr std::int64_t metres_in_km = 1000;

bool has_new_pack(const job::JobState& state) {
  const auto steps = state.sheets.job->steps();
  return std::any_of(steps.begin(), steps.end(), [&](const sheet::Step* step) {
    return step->role == sheet::Role::new_pack_serial && job::latest<job::Written>(state, step->id) != nullptr;
  });
}

int completed_teach_in(const job::JobState& state) {
  int attempt = 0;
  for (const job::Entry* entry : state.live()) {
    const auto* tried = std::get_if<job::TeachInTried>(&entry->body);
    attempt = tried != nullptr && tried->completed ? std::max(attempt, tried->attempt) : attempt;
  }
  return attempt;
}

/// Of a side: `large 1.65, small 1.75`.
template <class Value, class Words>
QString of_both_sides(const std::map<sheet::Side, Value>& values, const QString& lower, const QString& upper,
                      const Words& words) {
  QStringList parts;
  for (const auto& [side, value] : values) {
    parts.append(QStringLiteral("%1 %2").arg(side == sheet::Side::lower ? lower : upper, words(value)));
  }
  return parts.join(QStringLiteral(", "));
}

QString standing_words(const EarlierJob& earlier) {
  switch (earlier.standing) {
    case store::JobStanding::open:
      return QCoreApplication::translate("bench", "still open");
    case store::JobStanding::parked:
      return QCoreApplication::translate("bench", "parked");
    case store::JobStanding::closed:
      break;
  }
  return {};
}

const EarlierJob* latest_renewal(const EarlierJobs& earlier) {
  const auto found = std::find_if(earlier.latest.begin(), earlier.latest.end(),
                                  [](const EarlierJob& each) { return each.pack_renewed && each.odometer; });
  return found == earlier.latest.end() ? nullptr : &*found;
}

const EarlierJob* farthest(const EarlierJobs& earlier) {
  const EarlierJob* found = nullptr;
  std::int64_t most = 0;
  for (const EarlierJob& each : earlier.latest) {
    if (each.odometer && (found == nullptr || each.odometer->base > most)) {
      found = &each;
      most = each.odometer->base;
    }
  }
  return found;
}

void add_odometer_notices(std::vector<EarlierNotice>& notices, const EarlierJobs& earlier, std::int64_t metres) {
  const EarlierJob* before = farthest(earlier);
  if (before != nullptr && before->odometer && metres < before->odometer->base) {
    notices.push_back(
        {QCoreApplication::translate("bench", "The odometer stands lower than before."),
         QCoreApplication::translate("bench", "Job %1 noted %2. Read it once more; another instrument may be fitted.")
             .arg(widgets::qt(before->number), widgets::qt(quantity::text_of(*before->odometer)))});
    return;
  }
  // A question and no verdict, so no value of a spec sheet.
  const EarlierJob* renewal = latest_renewal(earlier);
  if (renewal != nullptr && renewal->odometer) {
    const std::int64_t driven = metres - renewal->odometer->base;
    if (driven < store::BackWithin().distance_m) {
      notices.push_back({QCoreApplication::translate("bench", "Second pack in %1 km.").arg(driven / metres_in_km),
                         QCoreApplication::translate(
                             "bench", "Look for a cause first: seals, levers, pivot, flywheel, control unit.")});
    }
  }
}

}  // namespace

EarlierJob earlier_job(const store::JobSummary& summary, const job::JobState& state) {
  EarlierJob earlier;
  earlier.number = summary.number;
  earlier.standing = summary.standing;
  earlier.plate = summary.plate;
  earlier.gearbox = summary.gearbox;
  if (!state.entries.empty()) {
    earlier.opened = state.entries.front().moment;
  }
  if (const auto& opened = state.opened) {
    earlier.chassis_reason = opened->chassis_reason;
    earlier.odometer = opened->odometer;
    earlier.gearbox_serial = opened->gearbox_serial.value_or(std::string());
    earlier.build_date = opened->build_date.value_or(std::string());
  }
  earlier.pack_renewed = has_new_pack(state);
  earlier.shims = state.shims;
  for (const record::FloatSeries& each : record::make_record(state, {}).floats) {
    if (each.latest && each.judged && each.judged->mean) {
      earlier.final_float_um[each.side] = *each.judged->mean;
    }
  }
  earlier.teach_in_attempt = completed_teach_in(state);
  return earlier;
}

Result<EarlierJobs> read_earlier_jobs(store::Store& store, const std::string& vehicle_key, std::size_t most) {
  auto summaries = store.jobs_of_vehicle(vehicle_key);
  if (!summaries) {
    return tl::make_unexpected(summaries.error());
  }
  EarlierJobs earlier;
  const std::size_t read = std::min(most, summaries->size());
  for (std::size_t at = 0; at < read; ++at) {
    auto loaded = store::JobInHand::load(store, (*summaries)[at].id);
    if (!loaded) {
      return tl::make_unexpected(loaded.error());
    }
    earlier.latest.push_back(earlier_job((*summaries)[at], loaded->state()));
  }
  earlier.more = summaries->size() - read;
  return earlier;
}

QString heading_of(const EarlierJob& earlier) {
  QStringList parts{QCoreApplication::translate("bench", "Job %1").arg(widgets::qt(earlier.number)),
                    day_text(day_of(earlier.opened))};
  if (earlier.odometer) {
    parts.append(widgets::qt(quantity::text_of(*earlier.odometer)));
  }
  if (earlier.pack_renewed) {
    parts.append(earlier.standing == store::JobStanding::closed
                     ? QCoreApplication::translate("bench", "pack renewed")
                     : QCoreApplication::translate("bench", "renewing the pack"));
  }
  if (earlier.standing != store::JobStanding::closed) {
    parts.append(standing_words(earlier));
  }
  return parts.join(QStringLiteral(" · "));
}

QString details_of(const EarlierJob& earlier) {
  QStringList parts;
  if (!earlier.shims.empty()) {
    const QString shims = of_both_sides(earlier.shims, QCoreApplication::translate("bench", "large"),
                                        QCoreApplication::translate("bench", "small"),
                                        [](const std::string& shim) { return widgets::qt(shim); });
    parts.append(QCoreApplication::translate("bench", "shims %1").arg(shims));
  }
  if (!earlier.final_float_um.empty()) {
    const QString floats =
        of_both_sides(earlier.final_float_um, QCoreApplication::translate("bench", "lower"),
                      QCoreApplication::translate("bench", "upper"), [](std::int64_t micrometres) {
                        return widgets::length_shown(quantity::in_millimetres(quantity::micrometres(micrometres)), 2);
                      });
    const bool final = earlier.standing == store::JobStanding::closed;  // an open job may still measure again
    parts.append(widgets::with_length_unit(final ? QCoreApplication::translate("bench", "final float %1 mm")
                                                 : QCoreApplication::translate("bench", "float %1 mm so far"))
                     .arg(floats));
  }
  if (earlier.teach_in_attempt > 1) {
    parts.append(QCoreApplication::translate("bench", "teach-in at attempt %1").arg(earlier.teach_in_attempt));
  }
  return parts.join(QStringLiteral(" · "));
}

std::vector<EarlierNotice> notices_of(const EarlierJobs& earlier,
                                      const std::optional<quantity::TypedNumber>& odometer) {
  std::vector<EarlierNotice> notices;
  for (const EarlierJob& each : earlier.latest) {
    if (each.standing != store::JobStanding::closed) {
      notices.push_back({QCoreApplication::translate("bench", "Job %1 of this vehicle is not finished.")
                             .arg(widgets::qt(each.number)),
                         QCoreApplication::translate("bench", "Take it up on the bench if this is the same work.")});
    }
  }
  if (odometer) {
    add_odometer_notices(notices, earlier, odometer->base);
  }
  return notices;
}

}  // namespace shimwright::bench

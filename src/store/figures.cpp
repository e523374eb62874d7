#include "shimwright/store/figures.h"

#include <chrono>
#include <utility>

#include "connection.h"

namespace shimwright::store {

namespace {

Month month_of(std::int64_t at_ms, int offset_min) {
  using std::chrono::milliseconds;
  using std::chrono::minutes;
  const std::chrono::sys_time<milliseconds> local(milliseconds(at_ms) + minutes(offset_min));
  const std::chrono::year_month_day date(std::chrono::floor<std::chrono::days>(local));
  return {static_cast<int>(date.year()), static_cast<unsigned>(date.month())};
}

void take_trials(Figures& figures, const JobFacts& job) {
  for (const auto& [where, trials] : job.trials) {
    if (trials > 0) {
      figures.by_trials[trials].push_back(job.id);
      figures.trials += trials;
      ++figures.shims_found;
    }
  }
}

void take_return(Figures& figures, const JobFacts& job, const BackWithin& within) {
  if (!job.before || job.visit.opened_at_ms - job.before->opened_at_ms > within.time_ms) {
    return;
  }
  const auto& now = job.visit.odometer_m;
  const auto& then = job.before->odometer_m;
  if (!now || !then || *now < *then) {
    figures.back_by_time.push_back(job.id);
  } else if (*now - *then <= within.distance_m) {
    figures.back.push_back(job.id);
  }
}

// A page of jobs in the order they were opened, each with the job before on its vehicle.
constexpr const char* jobs_sql =
    "SELECT job.id, job.opened_at_ms, job.gearbox, job.assembly, opening.offset_min, odometer.base, "
    "before.opened_at_ms, odometer_before.base "
    "FROM job JOIN entry AS opening ON opening.job = job.id AND opening.seq = 1 "
    "LEFT JOIN measurement AS odometer ON odometer.job = job.id AND odometer.seq = 1 AND odometer.channel = 'odometer' "
    "LEFT JOIN job AS before ON before.id = (SELECT earlier.id FROM job AS earlier WHERE earlier.vehicle = job.vehicle "
    "AND (earlier.opened_at_ms, earlier.id) < (job.opened_at_ms, job.id) "
    "ORDER BY earlier.opened_at_ms DESC, earlier.id DESC LIMIT 1) "
    "LEFT JOIN measurement AS odometer_before ON odometer_before.job = before.id AND odometer_before.seq = 1 AND "
    "odometer_before.channel = 'odometer' "
    "WHERE (job.opened_at_ms, job.id) > (?, ?) AND job.opened_at_ms < ? ORDER BY job.opened_at_ms, job.id LIMIT ?";
// What was withdrawn counts no longer.
constexpr const char* chosen_sql =
    "SELECT chosen.job, chosen.side, chosen.assembly, chosen.shim FROM job JOIN shim_chosen AS chosen ON chosen.job = "
    "job.id WHERE (job.opened_at_ms, job.id) > (?, ?) AND (job.opened_at_ms, job.id) <= (?, ?) AND NOT EXISTS (SELECT "
    "1 FROM withdrawal WHERE withdrawal.job = chosen.job AND withdrawal.entry = chosen.seq) "
    "ORDER BY chosen.job, chosen.seq";
constexpr const char* tried_sql =
    "SELECT tried.job, tried.side, tried.assembly FROM job JOIN shim_trial AS tried ON tried.job = job.id WHERE "
    "(job.opened_at_ms, job.id) > (?, ?) AND (job.opened_at_ms, job.id) <= (?, ?) AND NOT EXISTS (SELECT 1 FROM "
    "withdrawal WHERE withdrawal.job = tried.job AND withdrawal.entry = tried.seq)";

constexpr std::int64_t jobs_of_page = 500;

/// Where a page begins or ends: a job by time and id.
struct Mark {
  std::int64_t opened_at_ms = 0;
  std::string id;
};

JobFacts facts_in(const Row& row) {
  JobFacts job;
  job.id = text_in(row, 0);
  job.visit.opened_at_ms = number_in(row, 1);
  job.gearbox = text_in(row, 2);
  job.assembly = static_cast<int>(number_in(row, 3));
  job.offset_min = static_cast<int>(number_in(row, 4));
  job.visit.odometer_m = optional_number_in(row, 5);
  if (const auto before = optional_number_in(row, 6); before) {
    job.before = JobFacts::Visit{*before, optional_number_in(row, 7)};
  }
  return job;
}

using Place = std::pair<sheet::Side, int>;

std::optional<Place> place_in(const Row& row) {
  const auto side = sheet::side_named(text_in(row, 1));
  return side ? std::optional(Place(*side, static_cast<int>(number_in(row, 2)))) : std::nullopt;
}

Result<void> add_shims(Connection& connection, std::map<std::string, JobFacts*>& jobs, const Row& from_to) {
  auto chosen = connection.rows(chosen_sql, from_to);
  auto tried = chosen ? connection.rows(tried_sql, from_to) : tl::make_unexpected(chosen.error());
  if (!tried) {
    return passed_on(tried);
  }
  for (const Row& row : *chosen) {
    const auto job = jobs.find(text_in(row, 0));
    const auto place = place_in(row);
    if (job != jobs.end() && place) {
      job->second->shims[place->first] = text_in(row, 3);
      job->second->trials[*place] = 0;
    }
  }
  for (const Row& row : *tried) {
    const auto job = jobs.find(text_in(row, 0));
    const auto place = place_in(row);
    if (job != jobs.end() && place) {
      const auto found = job->second->trials.find(*place);
      if (found != job->second->trials.end()) {
        ++found->second;
      }
    }
  }
  return {};
}

/// The jobs after `mark`, which moves on to the last of them.
Result<std::vector<JobFacts>> page_after(Connection& connection, Mark& mark, std::int64_t to_ms) {
  auto rows = connection.rows(
      jobs_sql, {number_value(mark.opened_at_ms), mark.id, number_value(to_ms), number_value(jobs_of_page)});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<JobFacts> page;
  for (const Row& row : *rows) {
    page.push_back(facts_in(row));
  }
  if (page.empty()) {
    return page;
  }
  std::map<std::string, JobFacts*> by_id;
  for (JobFacts& each : page) {
    by_id[each.id] = &each;
  }
  const Mark last{page.back().visit.opened_at_ms, page.back().id};
  if (auto added = add_shims(connection, by_id,
                             {number_value(mark.opened_at_ms), mark.id, number_value(last.opened_at_ms), last.id});
      !added) {
    return passed_on(added);
  }
  mark = last;
  return page;
}

}  // namespace

void take(Figures& figures, const JobFacts& job, const BackWithin& within) {
  figures.jobs.push_back(job.id);
  figures.by_month[month_of(job.visit.opened_at_ms, job.offset_min)].push_back(job.id);
  if (!job.shims.empty()) {
    figures.with_shim.push_back(job.id);
    if (job.assembly > 1) {
      figures.again.push_back(job.id);
    }
  }
  take_trials(figures, job);
  for (const auto& [side, shim] : job.shims) {
    figures.by_shim[{job.gearbox, side, shim}].push_back(job.id);
  }
  take_return(figures, job, within);
}

Result<JobIds> jobs_of_period(const Store& store, const Period& period) {
  auto rows = store.connection().rows(
      "SELECT id FROM job WHERE opened_at_ms >= ? AND opened_at_ms < ? ORDER BY opened_at_ms, id",
      {number_value(period.from_ms), number_value(period.to_ms)});
  if (!rows) {
    return passed_on(rows);
  }
  JobIds ids;
  for (const Row& row : *rows) {
    ids.push_back(text_in(row, 0));
  }
  return ids;
}

Result<Figures> figures_of(const Store& store, const Period& period, const BackWithin& within,
                           const BackupWatch& watch) {
  auto counted = store.connection().value("SELECT count(*) FROM job WHERE opened_at_ms >= ? AND opened_at_ms < ?",
                                          {number_value(period.from_ms), number_value(period.to_ms)});
  if (!counted) {
    return passed_on(counted);
  }
  const std::int64_t of_all = number_in({*counted}, 0);
  Figures figures;
  Mark mark{period.from_ms, {}};
  while (true) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "Stopped: the figures were not read to their end."));
    }
    auto page = page_after(store.connection(), mark, period.to_ms);
    if (!page) {
      return passed_on(page);
    }
    if (page->empty()) {
      return figures;
    }
    for (const JobFacts& each : *page) {
      take(figures, each, within);
    }
    if (watch.progress) {
      watch.progress(static_cast<std::int64_t>(figures.jobs.size()), of_all);
    }
  }
}

Result<Figures> figures_of(const std::string& store_path, const Period& period, const BackWithin& within,
                           const BackupWatch& watch) {
  auto store = Store::open(store_path, {Mode::look_only, "", period.to_ms});
  if (!store) {
    return passed_on(store);
  }
  return figures_of(**store, period, within, watch);
}

}  // namespace shimwright::store

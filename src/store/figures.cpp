#include "shimwright/store/figures.h"

#include <chrono>
#include <utility>

#include <nlohmann/json.hpp>

#include "connection.h"

namespace shimwright::store {

namespace {

std::chrono::sys_days day_of(const JobFacts::Visit& visit) {
  using std::chrono::milliseconds;
  using std::chrono::minutes;
  const std::chrono::sys_time<milliseconds> local(milliseconds(visit.opened_at_ms) + minutes(visit.offset_min));
  return std::chrono::floor<std::chrono::days>(local);
}

Month month_of(const JobFacts::Visit& visit) {
  const std::chrono::year_month_day date(day_of(visit));
  return {static_cast<int>(date.year()), static_cast<unsigned>(date.month())};
}

void take_trials(Figures& figures, const JobFacts& job) {
  for (const auto& [where, trials] : job.trials) {
    if (trials > 0) {
      FoundAfter& found = figures.by_trials[trials];
      ++found.shims;
      if (found.jobs.empty() || found.jobs.back() != job.id) {
        found.jobs.push_back(job.id);
      }
      figures.trials += trials;
      ++figures.shims_found;
    }
  }
}

void take_return(Figures& figures, const JobFacts& job, const BackWithin& within) {
  if (!job.before || (day_of(job.visit) - day_of(*job.before)).count() > within.days) {
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

// What came from elsewhere was measured with gauges and shims of elsewhere, and says nothing of this workshop.
#define SHIMWRIGHT_FROM_ELSEWHERE(job) \
  "EXISTS (SELECT 1 FROM register_change AS arrival WHERE arrival.register = 'job' AND arrival.item = " job ".id)"

// A page of jobs in the order they were opened, each with the job before on its vehicle.
constexpr const char* jobs_sql =
    "SELECT job.id, job.opened_at_ms, job.gearbox, job.assembly, opening.offset_min, odometer.base, "
    "before.opened_at_ms, opening_before.offset_min, odometer_before.base, " SHIMWRIGHT_FROM_ELSEWHERE("job") " "
    "FROM job JOIN entry AS opening ON opening.job = job.id AND opening.seq = 1 "
    "LEFT JOIN measurement AS odometer ON odometer.job = job.id AND odometer.seq = 1 AND odometer.channel = 'odometer' "
    "LEFT JOIN job AS before ON before.id = (SELECT earlier.id FROM job AS earlier WHERE earlier.vehicle = job.vehicle "
    "AND (earlier.opened_at_ms, earlier.id) < (job.opened_at_ms, job.id) AND NOT " SHIMWRIGHT_FROM_ELSEWHERE(
        "earlier") " "
    "ORDER BY earlier.opened_at_ms DESC, earlier.id DESC LIMIT 1) "
    "LEFT JOIN entry AS opening_before ON opening_before.job = before.id AND opening_before.seq = 1 "
    "LEFT JOIN measurement AS odometer_before ON odometer_before.job = before.id AND odometer_before.seq = 1 AND "
    "odometer_before.channel = 'odometer' "
    "WHERE (job.opened_at_ms, job.id) > (?, ?) AND job.opened_at_ms < ? ORDER BY job.opened_at_ms, job.id LIMIT ?";
// What was withdrawn counts no longer.
constexpr const char* chosen_sql =
    "SELECT chosen.job, chosen.side, chosen.assembly, chosen.seq, chosen.shim FROM job JOIN shim_chosen AS chosen ON "
    "chosen.job = "
    "job.id WHERE (job.opened_at_ms, job.id) > (?, ?) AND (job.opened_at_ms, job.id) <= (?, ?) AND NOT EXISTS (SELECT "
    "1 FROM withdrawal WHERE withdrawal.job = chosen.job AND withdrawal.entry = chosen.seq) "
    "ORDER BY chosen.job, chosen.seq";
constexpr const char* tried_sql =
    "SELECT tried.job, tried.side, tried.assembly, tried.seq FROM job JOIN shim_trial AS tried ON tried.job = job.id "
    "WHERE "
    "(job.opened_at_ms, job.id) > (?, ?) AND (job.opened_at_ms, job.id) <= (?, ?) AND NOT EXISTS (SELECT 1 FROM "
    "withdrawal WHERE withdrawal.job = tried.job AND withdrawal.entry = tried.seq)";
// Sides that came off again, where there was a second assembly at all.
constexpr const char* taken_off_sql =
    "SELECT begun.job, begun.seq, begun.body FROM job JOIN entry AS begun ON begun.job = job.id WHERE "
    "(job.opened_at_ms, job.id) > (?, ?) AND (job.opened_at_ms, job.id) <= (?, ?) AND job.assembly > 1 AND begun.kind "
    "= 'assembly_begun' AND NOT EXISTS (SELECT 1 FROM withdrawal WHERE withdrawal.job = begun.job AND "
    "withdrawal.entry = begun.seq)";

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
  job.visit.offset_min = static_cast<int>(number_in(row, 4));
  job.visit.odometer_m = optional_number_in(row, 5);
  if (const auto before = optional_number_in(row, 6); before) {
    job.before = JobFacts::Visit{*before, static_cast<int>(number_in(row, 7)), optional_number_in(row, 8)};
  }
  return job;
}

using Place = std::pair<sheet::Side, int>;

std::optional<Place> place_in(const Row& row) {
  const auto side = sheet::side_named(text_in(row, 1));
  return side ? std::optional(Place(*side, static_cast<int>(number_in(row, 2)))) : std::nullopt;
}

using ByJob = std::map<std::string, JobFacts*>;

/// The shims of a page of jobs as they came one after the other.
class Shims {
 public:
  explicit Shims(ByJob& jobs) : jobs_(&jobs) {}

  void take_chosen(const Row& row) {
    if (const auto [job, place] = found(row); job != nullptr && place) {
      job->shims[place->first] = text_in(row, 4);
      job->trials[*place] = 0;
      chosen_at_[{job, place->first}] = number_in(row, 3);
    }
  }
  void take_tried(const Row& row) {
    if (const auto [job, place] = found(row); job != nullptr && place) {
      if (const auto trials = job->trials.find(*place); trials != job->trials.end()) {
        ++trials->second;
      }
      take_off(*job, place->first, number_in(row, 3));
    }
  }
  void take_begun(const Row& row) {
    const auto job = jobs_->find(text_in(row, 0));
    const nlohmann::json body = nlohmann::json::parse(bytes_in(row, 2), nullptr, false);
    if (job == jobs_->end() || !body.is_object()) {
      return;
    }
    for (const auto& each : body.value("sides", nlohmann::json::array())) {
      if (const auto side = each.is_string() ? sheet::side_named(each.get<std::string>()) : std::nullopt; side) {
        take_off(*job->second, *side, number_in(row, 1));
      }
    }
  }

 private:
  [[nodiscard]] std::pair<JobFacts*, std::optional<Place>> found(const Row& row) const {
    const auto job = jobs_->find(text_in(row, 0));
    return {job == jobs_->end() ? nullptr : job->second, place_in(row)};
  }
  void take_off(JobFacts& job, sheet::Side side, std::int64_t seq) {
    const auto chosen = chosen_at_.find({&job, side});
    if (chosen != chosen_at_.end() && chosen->second < seq) {
      job.shims.erase(side);
    }
  }

  ByJob* jobs_;
  std::map<std::pair<JobFacts*, sheet::Side>, std::int64_t> chosen_at_;
};

Result<void> add_shims(Connection& connection, ByJob& jobs, const Row& from_to) {
  Shims shims(jobs);
  for (const auto& [sql, take] : {std::pair(chosen_sql, &Shims::take_chosen), std::pair(tried_sql, &Shims::take_tried),
                                  std::pair(taken_off_sql, &Shims::take_begun)}) {
    auto rows = connection.rows(sql, from_to);
    if (!rows) {
      return passed_on(rows);
    }
    for (const Row& row : *rows) {
      (shims.*take)(row);
    }
  }
  return {};
}

/// Jobs of the period as far as one step reads them.
struct Page {
  std::vector<JobFacts> own;
  JobIds elsewhere;
  [[nodiscard]] bool empty() const { return own.empty() && elsewhere.empty(); }
};

/// The jobs after `mark`, which moves on to the last of them.
Result<Page> page_after(Connection& connection, Mark& mark, std::int64_t to_ms, std::int64_t at_a_time) {
  auto rows = connection.rows(jobs_sql,
                              {number_value(mark.opened_at_ms), mark.id, number_value(to_ms), number_value(at_a_time)});
  if (!rows) {
    return passed_on(rows);
  }
  Page page;
  Mark last = mark;
  for (const Row& row : *rows) {
    JobFacts job = facts_in(row);
    last = {job.visit.opened_at_ms, job.id};
    if (number_in(row, 9) != 0) {
      page.elsewhere.push_back(std::move(job.id));
    } else {
      page.own.push_back(std::move(job));
    }
  }
  ByJob by_id;
  for (JobFacts& each : page.own) {
    by_id[each.id] = &each;
  }
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
  figures.by_month[month_of(job.visit)].push_back(job.id);
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

Result<Figures> figures_of(const Store& store, const Period& period, const BackWithin& within, const BackupWatch& watch,
                           std::int64_t at_a_time) {
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
    auto page = page_after(store.connection(), mark, period.to_ms, at_a_time);
    if (!page) {
      return passed_on(page);
    }
    if (page->empty()) {
      return figures;
    }
    for (const JobFacts& each : page->own) {
      take(figures, each, within);
    }
    figures.elsewhere.insert(figures.elsewhere.end(), page->elsewhere.begin(), page->elsewhere.end());
    if (watch.progress) {
      watch.progress(static_cast<std::int64_t>(figures.jobs.size() + figures.elsewhere.size()), of_all);
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

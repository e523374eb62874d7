#include "shimwright/store/stock.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "arrival.h"
#include "connection.h"
#include "sheet_shelf.h"
#include "shimwright/job/shims_wanted.h"
#include "shimwright/job/stock.h"
#include "shimwright/store/job_in_hand.h"

namespace shimwright::store {

namespace {

// A job in which nothing happened since the count holds what it held then.
constexpr const char* uses_sql =
    "SELECT chosen.job, chosen.side, chosen.seq, chosen.shim, entry.at_ms, back.at_ms, job.sheet_hash, job.spec_hash, "
    "CASE WHEN EXISTS (SELECT 1 FROM register_change WHERE register_change.register = 'job' AND register_change.item = "
    "job.id) THEN 1 ELSE 0 END "
    "FROM job "
    "JOIN shim_chosen AS chosen ON chosen.job = job.id "
    "JOIN entry ON entry.job = chosen.job AND entry.seq = chosen.seq "
    "LEFT JOIN withdrawal ON withdrawal.job = chosen.job AND withdrawal.entry = chosen.seq "
    "LEFT JOIN entry AS back ON back.job = withdrawal.job AND back.seq = withdrawal.seq "
    "WHERE job.last_at_ms >= ? ORDER BY chosen.job, chosen.seq";

Result<std::vector<job::ShimUse>> uses_of(const Store& store, const std::string& tray, std::int64_t since_ms) {
  auto rows = store.connection().rows(uses_sql, {number_value(since_ms)});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<job::ShimUse> uses;
  for (const Row& row : *rows) {
    // What was chosen elsewhere came out of a drawer elsewhere.
    auto elsewhere =
        number_in(row, 8) == 0 ? Result<bool>(false) : arrived(store.connection(), text_in(row, 0), number_in(row, 2));
    if (!elsewhere) {
      return passed_on(elsewhere);
    }
    if (*elsewhere) {
      continue;
    }
    const job::Side side = sheet::side_named(text_in(row, 1)).value_or(job::Side::lower);
    auto sheets = store.sheet_shelf().sheets(text_in(row, 6), text_in(row, 7));
    if (!sheets) {
      return passed_on(sheets);
    }
    if (sheets->spec->side(side).tray_name == tray) {
      uses.push_back(
          {text_in(row, 0), side, number_in(row, 2), text_in(row, 3), number_in(row, 4), optional_number_in(row, 5)});
    }
  }
  return uses;
}

std::optional<std::int64_t> first_count(const Tray& tray) {
  std::optional<std::int64_t> first;
  for (const auto& [shim, stock] : tray.stock) {
    if (stock.counted_at_ms) {
      first = std::min(first.value_or(std::numeric_limits<std::int64_t>::max()), *stock.counted_at_ms);
    }
  }
  return first;
}

void add_wants(TrayDemand& demand, const job::SideWants& wants) {
  ++demand.jobs;
  demand.without_belief += wants.no_belief ? 1 : 0;
  for (const auto& [shim, chance] : wants.chances) {
    demand.wanted[shim] += chance;
  }
}

}  // namespace

Result<Tray> as_it_lies(const Store& store, Tray tray) {
  const auto since = first_count(tray);
  if (!since) {
    return tray;
  }
  auto uses = uses_of(store, tray.name, *since);
  if (!uses) {
    return passed_on(uses);
  }
  std::map<std::int64_t, std::map<std::string, int>> taken;  // many shims are counted in one go
  for (job::TrayShim& shim : tray.shims) {
    const auto stock = tray.stock.find(shim.id);
    if (!shim.count || stock == tray.stock.end() || !stock->second.counted_at_ms) {
      continue;
    }
    const std::int64_t counted = *stock->second.counted_at_ms;
    if (taken.count(counted) == 0) {
      taken[counted] = job::taken_since(counted, *uses);
    }
    const auto found = taken[counted].find(shim.id);
    shim.count = std::max(0, *shim.count - (found == taken[counted].end() ? 0 : found->second));
  }
  return tray;
}

Result<std::map<std::string, TrayDemand>> wanted_by_open_jobs(Store& store, const By& by, std::int64_t most) {
  auto jobs = store.open_jobs(most);
  if (!jobs) {
    return passed_on(jobs);
  }
  std::map<std::string, TrayDemand> demands;
  for (const JobSummary& each : *jobs) {
    auto hand = JobInHand::load(store, each.id);
    if (!hand) {
      return passed_on(hand);
    }
    auto context = hand->context(by);
    if (!context) {
      return passed_on(context);
    }
    for (const auto& [side, wants] : job::shims_wanted(hand->state(), *context)) {
      add_wants(demands[hand->state().sheets.spec->side(side).tray_name], wants);
    }
  }
  return demands;
}

}  // namespace shimwright::store

#include <map>
#include <optional>
#include <utility>

#include "connection.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/stock.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

/// By assembly, of one job.
using ByAssembly = std::map<std::int64_t, std::int64_t>;
using ChangesByJob = std::map<std::string, ByAssembly>;

// A second assembly is what a pair is made of. The latest sixty jobs that had one say as much as all ever did, and no
// reading waits longer because a workshop is old. A job from elsewhere was measured with gauges and shims of elsewhere.
#define SHIMWRIGHT_LATEST_WITH_PAIRS                                                                                  \
  "(SELECT id FROM job WHERE gearbox = ? AND assembly >= 2 AND NOT EXISTS (SELECT 1 FROM register_change AS arrival " \
  "WHERE arrival.register = 'job' AND arrival.item = job.id) ORDER BY opened_at_ms DESC LIMIT 60) AS latest"

// What was withdrawn counts no longer; of what was said twice in an assembly the later counts.
constexpr const char* thicknesses_sql =
    "SELECT chosen.job, chosen.assembly, chosen.thickness_um FROM " SHIMWRIGHT_LATEST_WITH_PAIRS
    " JOIN shim_chosen AS chosen ON chosen.job = latest.id "
    "WHERE chosen.side = ? AND latest.id <> ? AND NOT EXISTS (SELECT 1 FROM withdrawal WHERE "
    "withdrawal.job = chosen.job AND withdrawal.entry = chosen.seq) ORDER BY chosen.job, chosen.seq";
constexpr const char* floats_sql =
    "SELECT advice.job, advice.assembly, advice.mean_um FROM " SHIMWRIGHT_LATEST_WITH_PAIRS
    " JOIN advice ON advice.job = latest.id "
    "WHERE advice.side = ? AND latest.id <> ? AND advice.mean_um IS NOT NULL AND advice.conclusion <> "
    "'for_information' AND NOT EXISTS (SELECT 1 FROM withdrawal WHERE withdrawal.job = advice.job AND withdrawal.entry "
    "= advice.seq) ORDER BY advice.job, advice.seq";
constexpr const char* final_floats_sql =
    "SELECT advice.side, advice.mean_um FROM advice WHERE advice.job = ? AND advice.mean_um IS NOT NULL AND "
    "advice.conclusion <> 'for_information' AND NOT EXISTS (SELECT 1 FROM withdrawal WHERE withdrawal.job = advice.job "
    "AND withdrawal.entry = advice.seq) ORDER BY advice.seq";
// A job not stored yet comes after all that are.
constexpr const char* job_before_sql =
    "SELECT id, number, pack_serial FROM job WHERE vehicle = ? AND NOT EXISTS (SELECT 1 FROM job AS this WHERE this.id "
    "= "
    "? AND (this.opened_at_ms < job.opened_at_ms OR (this.opened_at_ms = job.opened_at_ms AND this.id <= job.id))) "
    "ORDER "
    "BY opened_at_ms DESC, id DESC LIMIT 1";

Result<ChangesByJob> by_job(Connection& connection, const char* sql, const Row& values) {
  auto rows = connection.rows(sql, values);
  if (!rows) {
    return passed_on(rows);
  }
  ChangesByJob found;
  for (const Row& row : *rows) {
    found[text_in(row, 0)][number_in(row, 1)] = number_in(row, 2);
  }
  return found;
}

/// An assembly that kept its shim says nothing of it: it is the one chosen before.
std::optional<std::int64_t> thickness_in(const ByAssembly& chosen, std::int64_t assembly) {
  const auto after = chosen.upper_bound(assembly);
  return after == chosen.begin() ? std::nullopt : std::optional(std::prev(after)->second);
}

void add_pairs(std::vector<job::Pair>& pairs, const std::string& job, const ByAssembly& floats,
               const ByAssembly& chosen) {
  for (const auto& [assembly, mean] : floats) {
    const auto next = floats.find(assembly + 1);
    const auto before = thickness_in(chosen, assembly);
    const auto after = thickness_in(chosen, assembly + 1);
    if (next != floats.end() && before && after && *before != *after) {
      pairs.push_back({quantity::Length(*after - *before), quantity::Length(next->second - mean), job});
    }
  }
}

Result<std::map<job::Side, std::vector<job::TrayShim>>> trays_of(const Store& store, const Registers& registers,
                                                                 const sheet::SpecSheet& spec) {
  std::map<job::Side, std::vector<job::TrayShim>> trays;
  for (const job::Side side : {job::Side::lower, job::Side::upper}) {
    auto tray = registers.tray_named(spec.side(side).tray_name);
    if (!tray) {
      return passed_on(tray);
    }
    if (*tray) {
      auto today = as_it_lies(store, **std::move(tray));
      if (!today) {
        return passed_on(today);
      }
      trays[side] = std::move(today->shims);
    }
  }
  return trays;
}

}  // namespace

Result<std::vector<job::Pair>> Store::pairs(const std::string& gearbox, job::Side side,
                                            const std::string& without_job) const {
  const Row values = {gearbox, text_value(sheet::name_of(side)), without_job};
  auto thicknesses = by_job(*connection_, thicknesses_sql, values);
  if (!thicknesses) {
    return passed_on(thicknesses);
  }
  auto floats = by_job(*connection_, floats_sql, values);
  if (!floats) {
    return passed_on(floats);
  }
  std::vector<job::Pair> pairs;
  for (const auto& [job, by_assembly] : *floats) {
    const auto chosen = thicknesses->find(job);
    if (chosen != thicknesses->end()) {
      add_pairs(pairs, job, by_assembly, chosen->second);
    }
  }
  return pairs;
}

Result<std::optional<job::PreviousPack>> Store::previous_pack(const std::string& vehicle_key,
                                                              const std::string& before_job) const {
  auto jobs = connection_->rows(job_before_sql, {vehicle_key, before_job});
  if (!jobs) {
    return passed_on(jobs);
  }
  if (jobs->empty()) {
    return std::optional<job::PreviousPack>();
  }
  auto floats = connection_->rows(final_floats_sql, {text_in(jobs->front(), 0)});
  if (!floats) {
    return passed_on(floats);
  }
  job::PreviousPack pack;
  pack.job_number = text_in(jobs->front(), 1);
  pack.pack_serial = optional_text_in(jobs->front(), 2);
  for (const Row& row : *floats) {
    const auto side = sheet::side_named(text_in(row, 0));
    if (side) {
      pack.final_float[*side] = quantity::Length(number_in(row, 1));
    }
  }
  return std::optional(std::move(pack));
}

namespace {

Result<std::optional<std::int64_t>> feel_of(const Registers& registers, const std::string& person) {
  auto persons = registers.persons();
  if (!persons) {
    return passed_on(persons);
  }
  for (const Person& each : *persons) {
    if (each.id == person) {
      return each.feel_nm;
    }
  }
  return std::optional<std::int64_t>();
}

}  // namespace

Result<job::Context> Store::context(const std::string& job, const sheet::SpecSheet& spec,
                                    const std::string& vehicle_key, const By& by) const {
  job::Context context;
  context.now = by.moment;
  context.person = by.person;
  auto instruments = registers_->instruments();
  if (!instruments) {
    return passed_on(instruments);
  }
  context.instruments = std::move(*instruments);
  auto feel = feel_of(*registers_, by.person);
  if (!feel) {
    return passed_on(feel);
  }
  context.feel_nm = *feel;
  auto trays = trays_of(*this, *registers_, spec);
  if (!trays) {
    return passed_on(trays);
  }
  context.trays = std::move(*trays);
  for (const job::Side side : {job::Side::lower, job::Side::upper}) {
    auto found = pairs(spec.gearbox, side, job);
    if (!found) {
      return passed_on(found);
    }
    context.history[side] = std::move(*found);
  }
  auto previous = previous_pack(vehicle_key, job);
  if (!previous) {
    return passed_on(previous);
  }
  context.previous_pack = std::move(*previous);
  return context;
}

}  // namespace shimwright::store

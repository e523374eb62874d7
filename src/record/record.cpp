#include "shimwright/record/record.h"

#include "gather.h"
#include "shimwright/job/rounds.h"

namespace shimwright::record {

namespace {

std::vector<std::int64_t> entries_after_clock_went_back(const job::JobState& state) {
  std::vector<std::int64_t> found;
  for (const job::Entry& entry : state.entries) {
    if (entry.moment.clock_went_back) {
      found.push_back(entry.seq);
    }
  }
  return found;
}

void gather_events(const Source& source, Record& record) {
  record.deviations = deviations(source);
  record.disagreements = disagreements(source, record.floats);
  record.not_measured = not_measured(source);
  record.answers = answers(source);
  record.confirmations = confirmations(source);
  record.photos = photos(source);
  record.signatures = signatures(source);
  record.notes = notes(source);
  record.stops = stops(source);
  record.assemblies = assemblies(source);
  record.taken_back = taken_back(source);
}

void count_from(const Source& source, Record& record) {
  for (const sheet::Step* step : steps_of(source)) {
    record.step_counts_from[step->id] = job::round_start(source.state, *step);
  }
  for (const job::Entry* entry : source.live) {
    if (const auto* begun = std::get_if<job::AssemblyBegun>(&entry->body)) {
      for (const Side side : begun->sides) {
        record.side_counts_from[side] = begun->assembly;
      }
    }
  }
}

}  // namespace

Record make_record(const job::JobState& state, const RecordNames& names) {
  const Source source = source_of(state, names);
  Record record;
  record.workshop_name = names.workshop_name;
  record.workshop_address = names.workshop_address;
  record.logo = names.logo;
  record.job = job_head(source);
  record.vehicle = vehicle(source);
  record.shims = shim_uses(source);
  record.old_shims = old_shims(source);
  record.floats = float_series(source);
  record.readings = readings(source);
  record.peaks = peaks(source);
  record.teach_ins = teach_ins(source);
  record.parts = parts(source);
  record.work_values = work_values(source);
  gather_events(source, record);
  record.clock_went_back = entries_after_clock_went_back(state);
  record.entries = static_cast<std::int64_t>(state.entries.size());
  count_from(source, record);
  record.result = result_of(source, record);
  return record;
}

std::string shim_fitted(const Record& record, Side side) {
  std::string fitted;
  for (const ShimUse& use : record.shims) {
    fitted = use.side == side ? use.fitted : fitted;
  }
  return fitted;
}

}  // namespace shimwright::record

#include "shimwright/record/record.h"

#include "gather.h"

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
  record.result = result_of(source, record);
  return record;
}

}  // namespace shimwright::record

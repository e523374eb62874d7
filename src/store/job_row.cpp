#include "job_row.h"

#include <optional>

#include "shimwright/store/types.h"

namespace shimwright::store {

namespace {

std::optional<std::string> id_of(const std::optional<job::PrivateReference>& reference) {
  return reference ? std::optional(reference->id) : std::nullopt;
}

JobStanding standing_of(const job::JobState& state) {
  if (state.closed) {
    return JobStanding::closed;
  }
  return state.parked ? JobStanding::parked : JobStanding::open;
}

std::string stage_of(const sheet::JobSheet* sheet, const sheet::Step* step) {
  const sheet::Stage* stage = sheet == nullptr || step == nullptr ? nullptr : sheet->stage_of(step->id);
  return stage == nullptr ? std::string() : stage->id;
}

std::optional<std::string> pack_serial_of(const job::JobState& state) {
  if (state.sheets.job != nullptr) {
    for (const sheet::Step* step : state.sheets.job->steps()) {
      const auto* written =
          step->role == sheet::Role::new_pack_serial ? job::latest<job::Written>(state, step->id) : nullptr;
      if (written != nullptr) {
        return written->text;
      }
    }
  }
  return std::nullopt;
}

}  // namespace

Row job_row(const std::string& id, const job::JobState& state) {
  const job::Opened opened = state.opened ? *state.opened : job::Opened();
  const sheet::Step* next = state.next_step();
  const job::Entry last = state.entries.empty() ? job::Entry() : state.entries.back();
  const std::int64_t opened_at_ms = state.entries.empty() ? 0 : state.entries.front().moment.at_ms;
  Row row = {id,
             opened.number,
             opened.vehicle_key,
             opened.gearbox,
             optional_value(opened.gearbox_serial),
             optional_value(id_of(opened.plate)),
             optional_value(id_of(opened.customer_reference)),
             optional_value(id_of(opened.complaint)),
             opened.sheet_hash,
             opened.spec_hash,
             number_value(opened_at_ms),
             number_value(last.moment.at_ms),
             number_value(last.seq),
             text_value(name_of(standing_of(state)))};
  row.push_back(stage_of(state.sheets.job.get(), next));
  row.push_back(next == nullptr ? std::string() : next->id);
  row.push_back(number_value(state.assembly));
  row.push_back(state.parked ? state.parked->waits_for : std::string());
  row.push_back(state.parked ? optional_value(state.parked->due) : Value());
  row.push_back(state.at_bench ? *state.at_bench : last.person);
  row.push_back(optional_value(pack_serial_of(state)));
  return row;
}

}  // namespace shimwright::store

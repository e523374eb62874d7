#pragma once

#include <string>

#include "shimwright/job/state.h"
#include "value.h"

namespace shimwright::store {

/// The columns of table `job`, in the order job_row() fills them.
inline constexpr const char* job_columns =
    "id, number, vehicle, gearbox, gearbox_serial, plate, customer_reference, complaint, sheet_hash, spec_hash, "
    "opened_at_ms, last_at_ms, last_seq, standing, stage, next_step, assembly, waits_for, due, at_bench, pack_serial";

/// Writes a job's row, or brings it up to date.
inline constexpr const char* put_job_row =
    "INSERT INTO job (id, number, vehicle, gearbox, gearbox_serial, plate, customer_reference, complaint, sheet_hash, "
    "spec_hash, opened_at_ms, last_at_ms, last_seq, standing, stage, next_step, assembly, waits_for, due, at_bench, "
    "pack_serial) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
    "ON CONFLICT (id) DO UPDATE SET last_at_ms = excluded.last_at_ms, last_seq = excluded.last_seq, "
    "standing = excluded.standing, stage = excluded.stage, next_step = excluded.next_step, "
    "assembly = excluded.assembly, waits_for = excluded.waits_for, due = excluded.due, at_bench = excluded.at_bench, "
    "pack_serial = excluded.pack_serial";

/// A job as table `job` has it. The state must be of an opened job.
[[nodiscard]] Row job_row(const std::string& id, const job::JobState& state);

}  // namespace shimwright::store

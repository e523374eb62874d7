#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "fixed_text.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

/// The columns summary_of() reads, of `job` and of `private_text` as its plate.
inline constexpr const char* summary_columns =
    "job.id, job.number, job.vehicle, job.gearbox, plate.text, job.standing, job.stage, job.next_step, job.assembly, "
    "job.waits_for, job.due, job.at_bench, job.opened_at_ms, job.last_at_ms, job.last_seq";

[[nodiscard]] JobSummary summary_of(const Row& row, std::size_t first_column = 0);
/// `rest` is what follows the tables: WHERE …, ORDER BY …
[[nodiscard]] Result<std::vector<JobSummary>> job_list(Connection& connection, FixedText rest, const Row& values);

}  // namespace shimwright::store

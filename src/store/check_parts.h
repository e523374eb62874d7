#pragma once

#include <map>
#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/check.h"

/// The parts of check(), each of which adds what it finds. A refusal only where the file cannot be read at all.
namespace shimwright::store {

/// A job while it is checked. Where an entry cannot be read, `entries` ends before it.
struct CheckedJob {
  std::string id;
  std::vector<record::StoredEntry> stored;
  std::vector<job::Entry> entries;

  [[nodiscard]] bool readable() const { return entries.size() == stored.size(); }
};

void add_finding(CheckReport& report, std::string code, std::string table, std::string job,
                 std::optional<std::int64_t> seq, Message message);

/// SQLite's own checks, and whether the schema is the one this program makes.
[[nodiscard]] Result<void> check_file_and_schema(Connection& connection, CheckReport& report);
/// Chain and readability of one job.
void check_job_chain(const CheckedJob& job, CheckReport& report);
/// The list of chain heads by itself and against the jobs.
[[nodiscard]] Result<void> check_heads(Connection& connection, const std::vector<CheckedJob>& jobs,
                                       CheckReport& report);
/// What is derived from the entries, made anew and compared.
[[nodiscard]] Result<void> check_derived(Connection& connection, const std::vector<CheckedJob>& jobs,
                                         CheckReport& report);
[[nodiscard]] Result<void> check_sheets(Connection& connection, CheckReport& report);
[[nodiscard]] Result<void> check_private_texts(Connection& connection, const std::vector<CheckedJob>& jobs,
                                               CheckReport& report);
/// Photos on disk; `store_path` says where they lie.
void check_photos(const QString& store_path, const std::vector<CheckedJob>& jobs, CheckReport& report);

/// All but the photos, which may lie elsewhere.
[[nodiscard]] Result<CheckReport> check_connection(Connection& connection, std::vector<CheckedJob>& jobs);

}  // namespace shimwright::store

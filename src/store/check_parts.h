#pragma once

#include <map>
#include <string>
#include <vector>

#include "connection.h"
#include "sheet_shelf.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"

/// The parts of check(), each of which adds what it finds. A refusal only where the file cannot be read at all. One job
/// is held at a time: a store of many years need not fit into memory.
namespace shimwright::store {

/// A job while it is checked. Where an entry cannot be read, `entries` ends before it.
struct CheckedJob {
  std::string id;
  std::vector<record::StoredEntry> stored;  ///< one at least
  std::vector<job::Entry> entries;

  [[nodiscard]] bool readable() const { return entries.size() == stored.size(); }
};

/// What the list of chain heads says last of a job.
struct Head {
  std::int64_t seq = 0;
  std::string hash;
};
using LastHeads = std::map<std::string, Head>;

void add_finding(CheckReport& report, std::string code, std::string table, std::string job,
                 std::optional<std::int64_t> seq, Message message);

/// SQLite's own checks, and whether the schema is the one this program makes.
[[nodiscard]] Result<void> check_file_and_schema(Connection& connection, CheckReport& report);
/// The list of chain heads by itself; gives the last head of each job.
[[nodiscard]] Result<LastHeads> check_heads(Connection& connection, CheckReport& report);
/// Chain and readability of one job, and its end against the list of chain heads.
void check_job_chain(const CheckedJob& job, const LastHeads& heads, CheckReport& report);
/// What is derived from the entries of one job, made anew and compared.
[[nodiscard]] Result<void> check_derived(Connection& connection, SheetShelf& shelf, const CheckedJob& job,
                                         CheckReport& report);
/// Jobs that are in the lists and have no entry.
[[nodiscard]] Result<void> check_listed_jobs(Connection& connection, CheckReport& report);
[[nodiscard]] Result<void> check_sheets(Connection& connection, CheckReport& report);
/// Persons, instruments, trays and workshop against the last line of their history.
[[nodiscard]] Result<void> check_registers(Connection& connection, CheckReport& report);
/// Checks of sheets and what job sheets lost, against the history.
[[nodiscard]] Result<void> check_sheet_lives(Connection& connection, CheckReport& report);
[[nodiscard]] Result<void> check_private_texts(Connection& connection, const CheckedJob& job, CheckReport& report);
/// The seal of a job, where it has one: its signatures, and the end of the list of chain heads it names.
[[nodiscard]] Result<void> check_seal(Connection& connection, const CheckedJob& job, CheckReport& report);
/// Photos on disk; `store_path` says where they lie.
void check_photos(const QString& store_path, const CheckedJob& job, CheckReport& report);

/// Photos are looked for beside `photos_of`; not at all without. Stopped between jobs: `stopped`.
[[nodiscard]] Result<CheckReport> check_connection(Connection& connection, const std::optional<QString>& photos_of,
                                                   const BackupWatch& watch = {});

}  // namespace shimwright::store

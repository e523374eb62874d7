#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/types.h"

/// A whole job as one file, out of one store and into another (docs/formats/job-file.md).
namespace shimwright::store {

struct ExportReport {
  std::string file;
  std::string number;
  std::int64_t entries = 0;
  std::int64_t photos = 0;
};

/// Writes a job with its sheets, persons, personal texts that are not erased, seal and photos to the file `out`. Opens
/// its own connection, so it may run in any thread while the store is written. The file is made under another name,
/// read again as an import reads it, brought to the disk, and only then takes its name.
///
/// Codes: those of Store::open(); `unknown_job`, `job_damaged` (its chain does not hold), `photo_missing`,
/// `file_in_the_way` (something other than an older export of this job lies at `out`), `stopped`, `disk_full`,
/// `disk_fault`.
[[nodiscard]] Result<ExportReport> export_job(const std::string& store_path, const std::string& job,
                                              const std::string& out, const BackupWatch& watch = {});

/// What such a file is called: `job-2026-0147-<id>.jsonl`.
[[nodiscard]] std::string export_name(const std::string& number, const std::string& job);

struct ImportReport {
  std::string job;
  std::string number;
  std::string from_store;     ///< id of the store it came from
  std::string from_workshop;  ///< its name, as the file says
  std::int64_t entries_there = 0;
  std::int64_t entries_new = 0;
  std::int64_t photos_new = 0;
  bool sealed = false;
  std::vector<Message> told;  ///< what a person should know: an equal job number, another name for a person
};

/// Takes a job into the store at `store_path`, which this program has open for writing. Opens its own connection, so it
/// may run in any thread. The file is believed nothing: it is looked through to its end first, then its photos are
/// written, then all the rest in one transaction. The same file again changes nothing; where the file goes on from the
/// last entry here, what is new is added; texts erased here stay erased.
///
/// Codes: `not_job_file`, `newer_format`, `too_large`, `cannot_read`, `job_file_damaged` (cut off or changed on its
/// way), `job_file_wrong` (does not hold together), `job_forked` (the job went on differently here), those of
/// job::decode(), record::check_chain() and the readers of sheets; `look_only`, `stopped`, `disk_full`, `disk_fault`.
[[nodiscard]] Result<ImportReport> import_job(const std::string& store_path, const std::string& file, const By& by,
                                              const BackupWatch& watch = {});

}  // namespace shimwright::store

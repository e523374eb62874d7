#pragma once

#include <set>
#include <string>
#include <vector>

#include "job_file_lines.h"
#include "shimwright/job/state.h"

namespace shimwright::store {

/// What a job's file holds, found to hold together.
struct CheckedJobFile {
  JobLine line;
  std::vector<job::Entry> entries;
  job::Sheets sheets;
  job::Opened opened;
};

/// Hashes of the photos that entries name, each once.
[[nodiscard]] std::set<std::string> photos_of(const std::vector<job::Entry>& entries);
/// Persons that entries name, each once.
[[nodiscard]] std::set<std::string> persons_of(const std::vector<job::Entry>& entries);
/// Ids and digests of the personal texts of a job.
[[nodiscard]] std::vector<job::PrivateReference> texts_of(const job::Opened& opened);

/// Whether the job is one unbroken chain that can be read, on its own sheets, with its own texts, seal and photos, and
/// nothing beside. Codes: `job_file_wrong`, those of record::check_chain(), job::decode(), the readers of sheets, and
/// record::check_signed_record().
[[nodiscard]] Result<CheckedJobFile> checked(JobLine line);

}  // namespace shimwright::store

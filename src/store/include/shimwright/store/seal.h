#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/signed_record.h"
#include "shimwright/store/signing.h"
#include "shimwright/store/store.h"

/// Sealing a stored job, and what may come after.
namespace shimwright::store {

/// A person and the PIN they typed.
struct SealPin {
  std::string person;
  record::Pin pin;
};

/// The signed file of a job as write_job_file() leaves it. What was signed stands in the store whether it could be
/// written or not.
struct JobFile {
  std::string path;            ///< empty where there is none
  std::optional<Error> fault;  ///< why it could not be written
};

struct SealedJob {
  std::string digest;
  JobFile file;
};

/// Freezes the record of a job and signs it with the keys of those who signed the job: the technician, then the
/// checker where there was one. All of it is in one transaction; then the signed file is written into the folder, where
/// one is given. Codes: as job::decide(), as unlock(), `other_signers` (other persons than those), `unknown_job`.
[[nodiscard]] Result<SealedJob> seal_job(Store& store, const std::string& job, const std::vector<SealPin>& pins,
                                         const By& by, const SigningRules& rules = {}, const std::string& folder = {});

/// Adds to a sealed job, signed by who writes it (`by.person`), and writes its file anew. Codes: as job::decide(), as
/// unlock(), `unknown_job`.
[[nodiscard]] Result<JobFile> add_addendum(Store& store, const std::string& job, const std::string& reason,
                                           const std::string& text, const record::Pin& pin, const By& by,
                                           const SigningRules& rules = {}, const std::string& folder = {});

/// A sealed job with all that lies in the store for it. Codes: `not_sealed`, `seal_damaged`, `unknown_job`.
[[nodiscard]] Result<record::SignedRecord> signed_record_of(const Store& store, const std::string& job);

/// Whether a sealed job is whole, signed with keys of this workshop, and the store still holds all it held when it was
/// sealed. Codes: as signed_record_of(), record::check_signed_record(), record::check_keys(), `store_changed`, and
/// `sealed_elsewhere` (it came with its seal from another store).
[[nodiscard]] Result<void> verify_job(const Store& store, const std::string& job);

/// Writes a sealed job as one file into a folder, brings it to the disk and reads it again; gives its path. Codes: as
/// signed_record_of(), `cannot_write`.
[[nodiscard]] Result<std::string> write_job_file(const Store& store, const std::string& job, const std::string& folder);

}  // namespace shimwright::store

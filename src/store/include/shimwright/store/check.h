#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

/// One thing that is not as it was written.
struct Finding {
  std::string code;   ///< `chain_gap`, `entry_changed`, `dropped_tail`, `missing_job`, `projection_differs`, …
  std::string table;  ///< where it lies
  std::string job;    ///< blank where it is of no job
  std::optional<std::int64_t> seq;
  Message message;

  /// `job 0190…, entry 7, table measurement`.
  [[nodiscard]] std::string place() const;
};

struct CheckReport {
  std::vector<Finding> findings;
  std::int64_t jobs = 0;
  std::int64_t entries = 0;
  std::int64_t photos = 0;
  std::int64_t erased_texts = 0;
  std::int64_t sealed_elsewhere = 0;  ///< taken in with their seal, which stands for the store they came from

  [[nodiscard]] bool in_order() const { return findings.empty(); }
  /// Whether nothing is off but photos, which a backup is made and put back without.
  [[nodiscard]] bool whole_but_for_photos() const;
};

/// Whether all is as it was written: the file itself, the chain of every job, the list of chain heads, what is derived
/// from the entries (made anew and compared row by row), persons, instruments, trays and workshop against the last
/// line of their history, personal texts against their digests (erased ones are in order), photos against their names.
/// A finding is no refusal; refused is only what keeps from checking at all, and `stopped`.
[[nodiscard]] Result<CheckReport> check(const Store& store, const BackupWatch& watch = {});

}  // namespace shimwright::store

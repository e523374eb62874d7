#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/quantity/error.h"

/// What makes a job a chain: each entry's hash stands on the one before it.
namespace shimwright::record {

/// SHA-256 (FIPS 180-4) in 64 lower-case hexadecimal digits.
[[nodiscard]] std::string sha256_hex(std::string_view bytes);

/// What the chain holds of a personal text in its stead: SHA-256 over the salt and then the text. The salt is always 32
/// hexadecimal digits, so where it ends is never in doubt.
[[nodiscard]] std::string private_digest(std::string_view salt, std::string_view text);

/// An entry as it lies in the store: its body as the very bytes that were hashed.
struct StoredEntry {
  std::int64_t seq = 0;
  job::Moment moment;
  std::string person;
  std::string kind;
  int kind_version = 1;
  std::string body;           ///< canonical JSON as it was written, never written anew
  std::string previous_hash;  ///< empty for the first entry of a job
  std::string hash;
  friend bool operator==(const StoredEntry&, const StoredEntry&) = default;
};

/// SHA-256 over these parts, each led by its length in bytes as eight bytes, most significant first:
/// `shimwright.entry.1`, job id, seq, previous hash, at_ms, offset_min, `1` where the clock went back else `0`, person,
/// kind, kind_version, body. Numbers as decimal ASCII. The entry's own `hash` is not looked at.
[[nodiscard]] std::string entry_hash(std::string_view job, const StoredEntry& entry);

/// Encodes an entry and joins it to the chain of its job.
[[nodiscard]] StoredEntry chained(std::string_view job, const job::Entry& entry, std::string previous_hash);

/// The entry read back. Refused as job::decode() refuses.
[[nodiscard]] Result<job::Entry> decoded(const StoredEntry& stored);

/// Whether the entries of a job, in order, are one unbroken chain from seq 1. The place is `entry 7`.
/// Codes of refusal: `chain_gap` (a number left out or twice), `chain_broken` (stands on another entry than the one
/// before it), `entry_changed` (its hash is not that of what it holds).
[[nodiscard]] Result<void> check_chain(std::string_view job, const std::vector<StoredEntry>& entries);

/// A name for what happened in a job that is equal for two replays of the same commands, whatever ids they were given
/// and whenever they ran: SHA-256 over length-led parts, first `shimwright.fold.1`, then for each entry seq, the name
/// of its person, kind, kind_version and body, where in the body ids and digests of personal texts and ids of
/// instruments and the digest of a seal are empty and the person a job is handed to is the name. Moments and the job's
/// own id are left out; sheets and specs stay, for they are the same in both. `person_names` gives what is stable for
/// each person id (initials); a person not in it counts as an empty name.
[[nodiscard]] std::string fold_hash(const std::vector<job::Entry>& entries,
                                    const std::map<std::string, std::string>& person_names);

}  // namespace shimwright::record

#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/record/hash.h"

/// What is signed when a job is sealed, and what when something is added later. Both are canonical JSON, and those very
/// bytes are signed (docs/formats/signed-record.md).
namespace shimwright::record {

/// Who signed, as the workshop knew them that day.
struct SealSigner {
  std::string person;  ///< id
  std::string name;
  std::string initials;
  std::string role;        ///< `technician`, `checker`; of an addendum `author`
  std::string public_key;  ///< hexadecimal
  friend bool operator==(const SealSigner&, const SealSigner&) = default;
};

struct SealStatement {
  std::string job;     ///< id
  std::string number;  ///< for people
  job::Moment moment;
  std::int64_t entries = 0;   ///< how many the record was made from
  std::string last_hash;      ///< of the last of them: stands for all
  std::string record_sha256;  ///< of the canonical bytes of the record
  std::int64_t heads_position = 0;
  std::string heads_hash;  ///< end of the store's list of chain heads: stands for every other job in it
  std::vector<SealSigner> signers;
  friend bool operator==(const SealStatement&, const SealStatement&) = default;
};

struct AddendumStatement {
  std::string job;
  std::string seal;  ///< digest of the statement it is added to
  job::Moment moment;
  std::int64_t entry = 0;     ///< seq of its entry
  std::string previous_hash;  ///< of the entry before it
  std::string reason;
  std::string text;
  SealSigner signer;
  friend bool operator==(const AddendumStatement&, const AddendumStatement&) = default;
};

/// The bytes that are signed.
[[nodiscard]] std::string bytes_of(const SealStatement& statement);
[[nodiscard]] std::string bytes_of(const AddendumStatement& statement);

/// The way back. Code: `bad_statement`, for bytes that bytes_of() does not write.
[[nodiscard]] Result<SealStatement> read_seal_statement(std::string_view bytes);
[[nodiscard]] Result<AddendumStatement> read_addendum_statement(std::string_view bytes);

/// The name of a seal: SHA-256 over its statement, hexadecimal.
[[nodiscard]] std::string digest_of(const SealStatement& statement);
[[nodiscard]] std::string digest_of(const AddendumStatement& statement);

/// The entry that keeps a seal, or an addendum, in the chain of its job. It follows from what was signed, all of it.
[[nodiscard]] StoredEntry entry_of(const SealStatement& statement);
[[nodiscard]] StoredEntry entry_of(const AddendumStatement& statement);

}  // namespace shimwright::record

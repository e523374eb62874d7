#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/record/record.h"
#include "shimwright/record/seal.h"

/// A sealed job as one file: format `shimwright.signed-record`, version 1 (docs/formats/signed-record.md). It is
/// checked without the store, with public keys alone.
namespace shimwright::record {

struct SignedAddendum {
  AddendumStatement statement;
  std::string signature;  ///< hexadecimal
  friend bool operator==(const SignedAddendum&, const SignedAddendum&) = default;
};

struct SignedRecord {
  SealStatement statement;
  std::vector<std::string> signatures;  ///< one for each signer, in their order
  std::string record;                   ///< canonical bytes, as frozen
  std::string code;                     ///< payload of the printed code
  std::vector<StoredEntry> entries;     ///< all of the job: what was recorded, the seal, addenda
  std::vector<SignedAddendum> addenda;
  std::map<std::string, PersonalText> personal;  ///< by id; an erased text is not there
};

/// Canonical JSON and a line feed.
[[nodiscard]] std::string signed_record_json(const SignedRecord& signed_record);

/// Codes: `not_signed_record` (no such file), `newer_format`, `file_changed` (not byte for byte as it was written).
[[nodiscard]] Result<SignedRecord> read_signed_record(std::string_view bytes);

/// Whether it is whole: digest, signatures, chain and personal texts all agree. Code `changed`; the place says where:
/// `record`, `statement`, `signature 1`, `entry 7`, `addendum 1`, `code`, `personal text`.
[[nodiscard]] Result<void> check_signed_record(const SignedRecord& signed_record);

/// A key of the workshop.
struct KnownKey {
  std::string public_key;
  std::optional<std::string> invalid_from;  ///< ISO date: what is signed from then on does not hold
  std::string person = {};                  ///< id of whose it is; empty: whoever shows it
};

/// Whether every key that signed in it is known and was valid then. Code: `unknown_key`; the place is the signer.
[[nodiscard]] Result<void> check_keys(const SignedRecord& signed_record, const std::vector<KnownKey>& keys);

/// Both checks in one.
[[nodiscard]] SealCheck check_seal(const SignedRecord& signed_record, const std::vector<KnownKey>& keys);

/// The ISO date by the clock of the place.
[[nodiscard]] std::string date_of(const job::Moment& moment);

/// Names as a frozen record has them, so that a job made anew from its entries says the same whatever the registers say
/// today. Personal texts are those of today.
[[nodiscard]] RecordNames names_as_frozen(const std::string& record, RecordNames today);

}  // namespace shimwright::record

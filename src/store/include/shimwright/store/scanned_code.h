#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "shimwright/record/seal_code.h"
#include "shimwright/record/signed_record.h"
#include "shimwright/store/store.h"

/// The code of a printed record, read from paper and compared with a store.
namespace shimwright::store {

enum class KeyStanding {
  ours,    ///< a key of this workshop, valid when the job was sealed
  ended,   ///< one of this workshop that was marked as no longer valid; when the job was sealed is not known or after
           ///< that
  unknown  ///< no key of this workshop
};

struct ScannedCode {
  record::VitalValues values;  ///< as they were signed
  KeyStanding key = KeyStanding::unknown;
  std::string signer;          ///< name of whose key it is; blank for an unknown one
  std::optional<Error> fault;  ///< of a file: what does not hold of a key that signed in it; the place is whose it is
  std::optional<std::string> job;  ///< id of the job that was sealed with this very digest, where the store has it
};

/// Whether what was scanned or typed begins as such a code does: white space before it does not count.
[[nodiscard]] bool looks_like_code(std::string_view text);

/// The values of a scanned code and what this store knows of them. Codes: `not_seal_code`, `changed` (a code that is
/// not as it was printed), those of Store.
[[nodiscard]] Result<ScannedCode> read_scanned_code(Store& store, std::string_view text);

/// Whether a whole signed file is what this store has of its job. Nothing is wrong where the job is not here. Codes:
/// `older_than_here` (what was added later is not in it), `differs_here`, those of Store.
[[nodiscard]] Result<void> same_as_here(const Store& store, const record::SignedRecord& file);

/// The same as of a code of an exported signed file, once all of it has been found whole; its keys stand as they stood
/// when it was sealed. Codes: `cannot_read`, `too_large`, as record::read_signed_record(),
/// record::check_signed_record(), same_as_here() and read_scanned_code().
[[nodiscard]] Result<ScannedCode> check_signed_file(Store& store, const std::string& path);

}  // namespace shimwright::store

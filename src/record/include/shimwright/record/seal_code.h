#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "shimwright/record/record.h"
#include "shimwright/record/signing_key.h"

/// What of a sealed record fits on paper beside it: a short seal for eyes, and a code for a camera that holds the
/// values that matter, signed by themselves (docs/formats/code.md).
namespace shimwright::record {

/// 20 symbols in five groups of four, `7K2M-…`: the first 95 bits of the digest and a check symbol. Symbols are the ten
/// digits and the capitals but I, L, O and U. Empty for what is no digest.
[[nodiscard]] std::string seal_groups(std::string_view digest);
/// The groups as they are written, from what a person typed: small letters, spaces, O for 0, I and L for 1 are taken.
/// Code: `bad_seal_groups` (a symbol is wrong, missing, or two are swapped).
[[nodiscard]] Result<std::string> read_seal_groups(std::string_view typed);

struct VitalSide {
  std::string shim;                      ///< empty: none fitted
  std::optional<std::int64_t> worst_um;  ///< the float farthest from the middle of its limits; unset: not measured
  friend bool operator==(const VitalSide&, const VitalSide&) = default;
};

struct VitalValues {
  std::string vehicle;  ///< VIN or chassis number
  std::string number;   ///< of the job
  VitalSide lower;
  VitalSide upper;
  std::string digest;  ///< of the seal
  friend bool operator==(const VitalValues&, const VitalValues&) = default;
};

/// `0.54 mm`, as the record prints it; blank where nothing was measured.
[[nodiscard]] std::string worst_float_text(const VitalSide& side);

[[nodiscard]] VitalValues vital_values(const Record& record, std::string digest);

/// The payload: characters of the alphanumeric mode of QR codes only.
[[nodiscard]] std::string seal_code(const VitalValues& values, const SecretKey& key);

struct SealCode {
  VitalValues values;
  std::string public_key;  ///< whose signature it holds; whether that key is known is for the caller
};

/// The values, proved by the signature in it. Codes: `not_seal_code`, `changed`.
[[nodiscard]] Result<SealCode> read_seal_code(std::string_view payload);

}  // namespace shimwright::record

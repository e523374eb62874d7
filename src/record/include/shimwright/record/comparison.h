#pragma once

#include <optional>
#include <vector>

#include "shimwright/record/record.h"

/// Two jobs laid beside each other, reading by reading.
namespace shimwright::record {

struct ComparedValue {
  Message text;  ///< digits as typed, with the unit
  ReadingVerdict verdict = ReadingVerdict::none;
  friend bool operator==(const ComparedValue&, const ComparedValue&) = default;
};

struct ComparedRow {
  Message name;
  std::optional<ComparedValue> first;   ///< unset: not there in that job
  std::optional<ComparedValue> second;  ///< likewise
  /// One is missing, or they are not the same: numbers by their value (`0.5` and `0.50` are one), words letter by
  /// letter, and both by their verdict.
  bool differs = false;
  friend bool operator==(const ComparedRow&, const ComparedRow&) = default;
};

/// Of each reading the one that counts in the end; of a disc's float the last series, spot by spot, and its mean. Rows
/// are in the order of the first, and what only the second has comes after them.
[[nodiscard]] std::vector<ComparedRow> compare(const Record& first, const Record& second);

}  // namespace shimwright::record

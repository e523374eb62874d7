#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/record.h"

/// What the jobs of one vehicle say together.
namespace shimwright::record {

/// The float of a disc as a job judged it.
struct FloatInLife {
  Side side = Side::lower;
  bool as_found = false;
  std::int64_t mean_um = 0;                   ///< over the spots
  std::optional<std::int64_t> expanded_u_um;  ///< 95 %; unset: was not kept
  quantity::Length least;                     ///< limits of the job's own spec sheet
  quantity::Length most;
  ReadingVerdict verdict = ReadingVerdict::none;  ///< of all spots; not_equal: mixed
  friend bool operator==(const FloatInLife&, const FloatInLife&) = default;
};

/// A job as one line of a vehicle's life.
struct JobInLife {
  std::string number;
  job::Moment opened;
  std::optional<TypedNumber> odometer;
  std::map<Side, std::string> shims;    ///< those that stand in the end
  std::vector<FloatInLife> floats;      ///< of each disc at most one as found and one final
  std::optional<std::string> old_pack;  ///< serial of the pack that was found
  std::optional<std::string> new_pack;  ///< of the pack fitted
  bool closed = false;
  bool sealed = false;
  int addenda = 0;

  /// Nothing where it was not measured.
  [[nodiscard]] const FloatInLife* float_of(Side side, bool as_found) const;
};

/// Pure and total, as make_record().
[[nodiscard]] JobInLife job_in_life(const job::JobState& state);

/// How a pack wore: what was left in one job, and what was found of that very pack in a later one.
struct Wear {
  Side side = Side::lower;
  std::string pack;    ///< serial
  Message facts;       ///< both floats, and the distance where it is known
  Message conclusion;  ///< more, less, or that it cannot be told apart at 95 %
  friend bool operator==(const Wear&, const Wear&) = default;
};

/// Only where the serial found is the serial fitted in an earlier job that was closed, and both floats were judged.
/// Nothing is said of any other pack. `jobs` is in the order of time.
[[nodiscard]] std::vector<Wear> wear_of_packs(const std::vector<JobInLife>& jobs);

}  // namespace shimwright::record

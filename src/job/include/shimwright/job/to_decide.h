#pragma once

#include <string>
#include <vector>

#include "shimwright/job/state.h"

/// What stands between a job and its seal.
namespace shimwright::job {

enum class PointKind {
  hold_point,  ///< not passed
  question,    ///< asked in place, not answered
  finding,     ///< not as it should be, neither answered anew nor left with a reason
  unproven,    ///< may have moved while the job lay still
  signature,   ///< of the sheet, not given
  missing,     ///< asked for by the sheet and not there
};

struct OpenPoint {
  PointKind kind = PointKind::missing;
  std::string step;  ///< id; the place to go to
  Message message;
  friend bool operator==(const OpenPoint&, const OpenPoint&) = default;
};

/// Whether nothing is sealed over it. What is only missing stands on the record as not measured.
[[nodiscard]] bool keeps_from_sealing(const OpenPoint& point);

/// Every point that is open, in the order of the sheet. Pure.
[[nodiscard]] std::vector<OpenPoint> to_decide(const JobState& state);

/// Who seals the job: whose signatures stand, the technician first; empty before anybody signed.
[[nodiscard]] std::vector<std::string> signers_of(const JobState& state);

}  // namespace shimwright::job

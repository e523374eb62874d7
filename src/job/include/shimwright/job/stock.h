#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/sheet/words.h"

namespace shimwright::job {

/// A shim that was chosen for a side of a job.
struct ShimUse {
  std::string job;
  sheet::Side side = sheet::Side::lower;
  std::int64_t seq = 0;
  std::string shim;
  std::int64_t at_ms = 0;
  std::optional<std::int64_t> withdrawn_at_ms;
};

/// By how many the shims of a tray have become fewer since they were counted at that moment: chosen since and still so
/// counts one, chosen before and another one chosen since counts one less. Only shims whose number changed are named.
/// What a job holds is what was chosen last for its side and not taken back.
[[nodiscard]] std::map<std::string, int> taken_since(std::int64_t counted_at_ms, const std::vector<ShimUse>& uses);

/// Whether a shim is to be ordered: so few are left. Not where it is not counted, or has no such number.
[[nodiscard]] bool is_low(std::optional<int> left, std::optional<int> reorder_at);
/// Whether open jobs are expected to take as many as there are, or more.
[[nodiscard]] bool may_run_out(int left, double wanted);

}  // namespace shimwright::job

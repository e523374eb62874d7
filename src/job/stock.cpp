#include "shimwright/job/stock.h"

#include <utility>

namespace shimwright::job {

namespace {

/// What each side of each job holds.
using ShimsHeld = std::map<std::pair<std::string, sheet::Side>, const ShimUse*>;

void hold(ShimsHeld& held, const ShimUse& use) {
  const ShimUse*& last = held[{use.job, use.side}];
  if (last == nullptr || last->seq < use.seq) {
    last = &use;
  }
}

ShimsHeld shims_held_at(std::int64_t at_ms, const std::vector<ShimUse>& uses) {
  ShimsHeld held;
  for (const ShimUse& use : uses) {
    const bool stands = !use.withdrawn_at_ms || *use.withdrawn_at_ms > at_ms;
    if (use.at_ms <= at_ms && stands) {
      hold(held, use);
    }
  }
  return held;
}

ShimsHeld shims_held_now(const std::vector<ShimUse>& uses) {
  ShimsHeld held;
  for (const ShimUse& use : uses) {
    if (!use.withdrawn_at_ms) {
      hold(held, use);
    }
  }
  return held;
}

}  // namespace

std::map<std::string, int> taken_since(std::int64_t counted_at_ms, const std::vector<ShimUse>& uses) {
  std::map<std::string, int> taken;
  for (const auto& [place, use] : shims_held_now(uses)) {
    ++taken[use->shim];
  }
  for (const auto& [place, use] : shims_held_at(counted_at_ms, uses)) {
    --taken[use->shim];
  }
  std::erase_if(taken, [](const auto& each) { return each.second == 0; });
  return taken;
}

bool is_low(std::optional<int> left, std::optional<int> reorder_at) {
  return left && reorder_at && *left <= *reorder_at;
}

bool may_run_out(int left, double wanted) {
  constexpr double hardly_any = 0.05;  // a shim nobody expects to take need not be there
  return wanted >= hardly_any && wanted >= static_cast<double>(left);
}

}  // namespace shimwright::job

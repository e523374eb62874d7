#pragma once

#include <algorithm>
#include <chrono>
#include <functional>
#include <vector>

namespace shimwright::bench_timing {

using Clock = std::chrono::steady_clock;

[[nodiscard]] inline double milliseconds(const std::function<void()>& call) {
  const auto start = Clock::now();
  call();
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// Of at least one.
[[nodiscard]] inline double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

}  // namespace shimwright::bench_timing

#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace shimwright::metrology {

/// What a measured value says about its limits once its uncertainty is counted.
enum class Verdict { within, too_small, too_large, on_limit, mixed };

/// `within`, `too_small`, `too_large`, `on_limit`, `mixed`.
[[nodiscard]] std::string_view name_of(Verdict verdict);
[[nodiscard]] std::optional<Verdict> verdict_named(std::string_view name);

/// Limits in mm, lower below upper.
struct Limits {
  double lower_mm = 0.0;
  double upper_mm = 0.0;
};

/// Lengths nearer to each other than this are equal: it swallows the rounding of binary fractions, nothing else.
inline constexpr double length_slack_mm = 1e-9;

/// Guarded decision with the guard band w = guard_factor · u on both sides of both limits (JCGM 106:2012, 8.3:
/// guarded acceptance inside, guarded rejection outside, no decision between). Never `mixed`.
[[nodiscard]] Verdict guarded_verdict(double value_mm, const Limits& limits, double guard_mm);

/// The verdict on a whole disc from those on its spots: `mixed` with both too small and too large, else the first of
/// too small, too large, on limit that is found, else within. An empty list is `on_limit`: nothing is proved by
/// nothing.
[[nodiscard]] Verdict disc_verdict(const std::vector<Verdict>& spots);

}  // namespace shimwright::metrology

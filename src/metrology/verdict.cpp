#include "shimwright/metrology/verdict.h"

#include <algorithm>
#include <array>
#include <utility>

namespace shimwright::metrology {

namespace {

constexpr std::array<std::pair<Verdict, std::string_view>, 5> verdict_names{{
    {Verdict::within, "within"},
    {Verdict::too_small, "too_small"},
    {Verdict::too_large, "too_large"},
    {Verdict::on_limit, "on_limit"},
    {Verdict::mixed, "mixed"},
}};

bool holds(const std::vector<Verdict>& spots, Verdict wanted) {
  return std::find(spots.begin(), spots.end(), wanted) != spots.end();
}

}  // namespace

std::string_view name_of(Verdict verdict) {
  for (const auto& entry : verdict_names) {
    if (entry.first == verdict) {
      return entry.second;
    }
  }
  return {};
}

std::optional<Verdict> verdict_named(std::string_view name) {
  for (const auto& entry : verdict_names) {
    if (entry.second == name) {
      return entry.first;
    }
  }
  return std::nullopt;
}

Verdict guarded_verdict(double value_mm, const Limits& limits, double guard_mm) {
  if (value_mm >= limits.lower_mm + guard_mm - length_slack_mm &&
      value_mm <= limits.upper_mm - guard_mm + length_slack_mm) {
    return Verdict::within;
  }
  if (value_mm < limits.lower_mm - guard_mm - length_slack_mm) {
    return Verdict::too_small;
  }
  if (value_mm > limits.upper_mm + guard_mm + length_slack_mm) {
    return Verdict::too_large;
  }
  return Verdict::on_limit;
}

Verdict disc_verdict(const std::vector<Verdict>& spots) {
  const bool small = holds(spots, Verdict::too_small);
  const bool large = holds(spots, Verdict::too_large);
  if (small && large) {
    return Verdict::mixed;
  }
  if (small) {
    return Verdict::too_small;
  }
  if (large) {
    return Verdict::too_large;
  }
  return spots.empty() || holds(spots, Verdict::on_limit) ? Verdict::on_limit : Verdict::within;
}

}  // namespace shimwright::metrology

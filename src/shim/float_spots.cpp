#include "float_spots.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "shimwright/metrology/sample.h"

namespace shimwright::shim {

namespace {

using metrology::length_slack_mm;

constexpr std::int64_t sign_counts_from_um = 20;

template <class Condition>
bool any_run(const SpotRuns& runs, Condition condition) {
  return std::any_of(runs.begin(), runs.end(),
                     [&](const auto& spot) { return std::any_of(spot.begin(), spot.end(), condition); });
}

std::vector<double> scaled(std::vector<double> values, double factor) {
  for (double& value : values) {
    value *= factor;
  }
  return values;
}

/// Every unit the numbers would make sense in, where as millimetres they make none.
std::vector<UnitSuggestion> unit_suggestions(const FloatCase& disc_float, const std::vector<double>& floats_mm) {
  const double lower = quantity::in_millimetres(disc_float.lower_limit);
  const double upper = quantity::in_millimetres(disc_float.upper_limit);
  const double margin = (upper - lower) / 2.0;
  const double mean = metrology::mean_of(floats_mm);
  const bool far_too_large = mean > 5.0 * upper + length_slack_mm;
  const bool far_too_small = mean > length_slack_mm && mean < lower / 3.0 - length_slack_mm;
  const auto plausible = [&](double factor) {
    return factor * mean >= lower - margin - length_slack_mm && factor * mean <= upper + margin + length_slack_mm;
  };
  std::vector<UnitSuggestion> suggestions;
  const auto suggest = [&](bool asked, SuggestedUnit unit, double factor) {
    if (asked && plausible(factor)) {
      suggestions.push_back({unit, scaled(floats_mm, factor)});
    }
  };
  suggest(far_too_large, SuggestedUnit::hundredths, 0.01);
  suggest(far_too_large, SuggestedUnit::thou, 0.0254);
  suggest(far_too_small, SuggestedUnit::inch, 25.4);
  return suggestions;
}

}  // namespace

SpotRuns spot_runs(const FloatCase& disc_float) {
  SpotRuns runs;
  runs.reserve(disc_float.spots.size());
  for (const auto& spot : disc_float.spots) {
    std::vector<std::int64_t> floats;
    floats.reserve(spot.runs.size());
    for (const auto& run : spot.runs) {
      floats.push_back((run.lifted - run.rest).count());
    }
    runs.push_back(std::move(floats));
  }
  return runs;
}

SpotRuns sizes_of(SpotRuns runs) {
  for (auto& spot : runs) {
    for (auto& run : spot) {
      run = std::abs(run);
    }
  }
  return runs;
}

std::vector<double> spot_floats_mm(const SpotRuns& runs) {
  std::vector<double> floats;
  floats.reserve(runs.size());
  for (const auto& spot : runs) {
    std::int64_t sum = 0;
    for (const auto run : spot) {
      sum += run;
    }
    floats.push_back(static_cast<double>(sum) / (1000.0 * static_cast<double>(spot.size())));
  }
  return floats;
}

std::optional<SpotRuns> runs_without_question(const FloatCase& disc_float, FloatAnswer& answer) {
  SpotRuns runs = spot_runs(disc_float);
  const bool some_up = any_run(runs, [](std::int64_t run) { return run > sign_counts_from_um; });
  const bool some_down = any_run(runs, [](std::int64_t run) { return run < -sign_counts_from_um; });
  if (some_up && some_down) {
    answer.findings.push_back(FloatFinding::mixed_signs);
    answer.advice = FloatAdvice::zero_again;
    return std::nullopt;
  }
  if (some_down) {
    answer.findings.push_back(FloatFinding::dial_reversed);
    runs = sizes_of(std::move(runs));
    if (!disc_float.direction_confirmed) {
      answer.advice = FloatAdvice::confirm_direction;
      answer.suggest.push_back({SuggestedUnit::mm, spot_floats_mm(runs)});
      return std::nullopt;
    }
  }
  if (!disc_float.unit_confirmed) {
    answer.suggest = unit_suggestions(disc_float, spot_floats_mm(runs));
    if (!answer.suggest.empty()) {
      answer.findings.push_back(FloatFinding::unit_in_doubt);
      answer.advice = FloatAdvice::confirm_unit;
      return std::nullopt;
    }
  }
  return runs;
}

}  // namespace shimwright::shim

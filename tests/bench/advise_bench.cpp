#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "bench_cases.h"
#include "reference_gauge_fit.h"
#include "shimwright/shim/advise.h"

namespace {

using namespace shimwright;

/// The median time of one call in microseconds.
template <class Call>
double median_us(int repeats, Call call) {
  std::vector<double> times;
  for (int repeat = 0; repeat < repeats; ++repeat) {
    const auto start = std::chrono::steady_clock::now();
    call();
    times.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
  }
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

bool measure(const std::string& name, const shim::AdviseCase& advise_case, int repeats) {
  const auto checked = shim::checked(advise_case);
  if (!checked) {
    std::cerr << checked.error().in_english() << '\n';
    return false;
  }
  double engine_trials = 0.0;
  double reference_trials = 0.0;
  const double engine_us = median_us(repeats, [&] {
    const auto answer = shim::advise(*checked);
    engine_trials = answer.gauge_fit->seat->expected_trials_left;
  });
  const double reference_us = median_us(std::max(1, repeats / 100), [&] {
    reference::GaugeFit reference(advise_case.tray, *advise_case.gauge_fit);
    reference_trials = reference.plan().expected_trials;
  });
  std::cout << fmt::format("{:32} {:9.1f} {:12.1f} {:8.0f} {:10.4f} {:10.4f}\n", name, engine_us, reference_us,
                           reference_us / engine_us, engine_trials, reference_trials);
  return std::abs(engine_trials - reference_trials) < 1e-6;
}

}  // namespace

/// `advise_bench [repeats]`: median engine time on trays of 40 shims, beside a plain map-based implementation. Fails
/// only where the two do not agree.
int main(int argument_count, char** arguments) {
  const int repeats = argument_count > 1 ? std::max(1, std::atoi(arguments[1])) : 1001;
  std::cout << fmt::format("{:32} {:>9} {:>12} {:>8} {:>10} {:>10}\n", "40 shims, times in microseconds", "engine",
                           "reference", "ratio", "trials", "reference");
  bool alike = true;
  for (const auto& [name, advise_case] : shimwright::reference::forty_shim_cases()) {
    alike = measure(name, advise_case, repeats) && alike;
  }
  return alike ? EXIT_SUCCESS : EXIT_FAILURE;
}

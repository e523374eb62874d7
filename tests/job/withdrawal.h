#pragma once

#include <functional>
#include <vector>

#include <rapidcheck.h>

#include "bench.h"

/// The law of the withdrawal: withdrawing an entry equals never having made it, but for the trace.
namespace shimwright::job::test {

template <class Value>
Value one_of(const std::vector<Value>& values) {
  return values.at(*rc::gen::inRange<std::size_t>(0, values.size()));
}

/// As many commands as that, made for the state each meets; those that are refused leave it as it is.
[[nodiscard]] JobState random_job(JobState state, const Context& context,
                                  const std::function<Command(const JobState&)>& make, int commands);

/// Takes back one of the answers since that entry and holds the law against it.
void withdraw_one(const JobState& job, const Context& context, std::int64_t from);

}  // namespace shimwright::job::test

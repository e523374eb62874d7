#pragma once

#include <functional>
#include <iterator>
#include <set>
#include <string>

#include <QtGlobal>

#include <catch2/catch.hpp>

#include "faulty_disk.h"
#include "shimwright/quantity/error.h"

namespace shimwright::store::test {

constexpr Fault all_faults[] = {Fault::no_space, Fault::broken, Fault::read_only, Fault::not_permitted, Fault::removed};

/// The first call that a fault meets, and how far it is to the next.
struct CallsOf {
  explicit CallsOf(Fault fault)
      : first(is_long() ? 1 : 1 + static_cast<int>(fault) % int(std::size(all_faults))),
        step(is_long() ? 1 : int(std::size(all_faults))) {}
  /// How often something with so many calls is tried, the last time without a fault.
  [[nodiscard]] int attempts(int calls) const { return calls < first ? 1 : (calls - first) / step + 2; }
  static bool is_long() { return qEnvironmentVariableIsSet("SHIMWRIGHT_LONG"); }

  int first;
  int step;
};

/// Lets the nth call fail, for n from 1 on, until `attempt` meets no fault any more. In the short form the faults share
/// the calls: each call fails by one of them, in the long form by all. `after` sees each outcome with the disk whole
/// again; `told` are the codes a refusal may have. Gives how many calls there were.
inline int fail_each_call(FaultyDisk& disk, Fault fault, const std::function<Result<void>()>& attempt,
                          const std::function<void(bool succeeded)>& after, const std::set<std::string>& told) {
  const CallsOf which(fault);
  for (int nth = which.first;; nth += which.step) {
    INFO("fault " << int(fault) << ", call " << nth);
    disk.fail_at(nth, fault);
    const Result<void> outcome = attempt();
    const bool failed = disk.has_failed();
    const int calls = nth - disk.still_to_come();
    disk.heal();
    if (!outcome) {
      INFO(outcome.error().code << ": " << outcome.error().in_english());
      CHECK(failed);
      CHECK(told.count(outcome.error().code) == 1);
      CHECK(outcome.error().in_english().back() == '.');
    }
    after(outcome.has_value());
    if (!failed) {
      REQUIRE(outcome);
      return calls;
    }
  }
}

}  // namespace shimwright::store::test

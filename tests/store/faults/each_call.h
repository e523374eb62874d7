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

/// Lets the nth call fail, for n from 1 on, until `attempt` meets no fault any more. In the short form the faults share
/// the calls: each call fails by one of them, in the long form by all. `after` sees each outcome with the disk whole
/// again; `told` are the codes a refusal may have. Gives how many calls there were.
inline int fail_each_call(FaultyDisk& disk, Fault fault, const std::function<Result<void>()>& attempt,
                          const std::function<void(bool succeeded)>& after, const std::set<std::string>& told) {
  constexpr int faults = std::size(all_faults);
  const bool all = qEnvironmentVariableIsSet("SHIMWRIGHT_LONG");
  for (int nth = all ? 1 : 1 + static_cast<int>(fault) % faults;; nth += all ? 1 : faults) {
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

#pragma once

#include <functional>
#include <set>
#include <string>

#include <catch2/catch.hpp>

#include "faulty_disk.h"
#include "shimwright/quantity/error.h"

namespace shimwright::store::test {

constexpr Fault all_faults[] = {Fault::no_space, Fault::broken, Fault::read_only, Fault::not_permitted, Fault::removed};

/// Lets the nth call fail, for n from 1 on, until `attempt` meets no fault any more. `after` sees each outcome with the
/// disk whole again; `told` are the codes a refusal may have. Gives how many calls there were.
inline int fail_each_call(FaultyDisk& disk, Fault fault, const std::function<Result<void>()>& attempt,
                          const std::function<void(bool succeeded)>& after, const std::set<std::string>& told) {
  for (int nth = 1;; ++nth) {
    INFO("fault " << int(fault) << ", call " << nth);
    disk.fail_at(nth, fault);
    const Result<void> outcome = attempt();
    const bool failed = disk.has_failed();
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
      return nth - 1;
    }
  }
}

}  // namespace shimwright::store::test

#pragma once

#include <functional>
#include <string>

#include "key_technician.h"
#include "script.h"
#include "ui_bench.h"

namespace shimwright::test {

/// What surrounds a command done by keys.
struct ByKeys {
  std::function<void(const std::string& initials)> step_up;  ///< this person comes to the bench
  std::function<void()> after_parking;                       ///< find the job again
};

/// Goes through a demonstration script by keys from its second command on; the job is open and shown. Commands the
/// script expects to be refused are left out. Every command must have been kept, else the test fails and names it.
void do_script_by_keys(UiBench& rig, KeyTechnician& technician, const cli::Script& script, const ByKeys& by);

/// A script of data/demo, its names put into the ids of that workshop; photos keep their file.
[[nodiscard]] cli::Script demo_script(const std::string& name);

}  // namespace shimwright::test

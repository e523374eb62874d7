#pragma once

#include <functional>
#include <string>

#include "script.h"
#include "workshop.h"

namespace shimwright::cli {

struct ReplayResult {
  std::string job;        ///< id; empty where the script opened none
  std::string fold_hash;  ///< equal for two replays of one script, but for ids, times and signatures
  std::int64_t entries = 0;
  int unexpected = 0;  ///< commands that went another way than the script expects
  bool sealed = false;
};

/// Goes through the commands, one durable transaction each, and hands a JSON line to `say_line` once a command is on
/// the disk or was refused. Stops with an error where the store fails.
[[nodiscard]] Result<ReplayResult> replay(store::Store& store, const Script& script, const KnownHere& known,
                                          store::IdSource& ids, const std::string& script_folder,
                                          const std::function<void(const std::string&)>& say_line);

}  // namespace shimwright::cli

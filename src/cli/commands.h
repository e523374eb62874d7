#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output.h"

namespace shimwright::cli {

/// One command of the program.
struct CommandEntry {
  std::string_view name;
  std::string_view usage;  ///< the words after the program's name
  std::string_view help;   ///< sentences; what it does, prints and exits with
  bool draws = false;      ///< needs fonts
  Exit (*run)(const std::vector<std::string>& words);
};

[[nodiscard]] const std::vector<CommandEntry>& commands();

[[nodiscard]] Exit run_advise(const std::vector<std::string>& words);
[[nodiscard]] Exit run_reading(const std::vector<std::string>& words);
[[nodiscard]] Exit run_vin(const std::vector<std::string>& words);
[[nodiscard]] Exit run_replay(const std::vector<std::string>& words);
[[nodiscard]] Exit run_find(const std::vector<std::string>& words);
[[nodiscard]] Exit run_record(const std::vector<std::string>& words);
[[nodiscard]] Exit run_check(const std::vector<std::string>& words);
[[nodiscard]] Exit run_backup(const std::vector<std::string>& words);
[[nodiscard]] Exit run_rescue(const std::vector<std::string>& words);
[[nodiscard]] Exit run_restore(const std::vector<std::string>& words);
[[nodiscard]] Exit run_export(const std::vector<std::string>& words);
[[nodiscard]] Exit run_import(const std::vector<std::string>& words);
[[nodiscard]] Exit run_erase(const std::vector<std::string>& words);
[[nodiscard]] Exit run_vehicle(const std::vector<std::string>& words);
[[nodiscard]] Exit run_measurements(const std::vector<std::string>& words);
[[nodiscard]] Exit run_figures(const std::vector<std::string>& words);
[[nodiscard]] Exit run_make_demo(const std::vector<std::string>& words);
[[nodiscard]] Exit run_pin(const std::vector<std::string>& words);
[[nodiscard]] Exit run_sign(const std::vector<std::string>& words);
[[nodiscard]] Exit run_addendum(const std::vector<std::string>& words);
[[nodiscard]] Exit run_verify(const std::vector<std::string>& words);

}  // namespace shimwright::cli

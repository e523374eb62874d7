#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"

/// A job as a technician would type it: who and what is there, and the commands in order (docs/formats/script.md).
namespace shimwright::cli {

struct ScriptPerson {
  std::string initials;
  std::string name;
  std::string pin = {};  ///< invented, as all of a script; empty: seals nothing
};

/// The tray of a side as it was measured in the workshop.
struct ScriptTray {
  std::string name;
  std::vector<job::TrayShim> shims;
};

/// One command. Where a command holds ids of instruments or persons, or a photo's hash, the script's names and file
/// stand in their place; the personal texts of an opened job have text only; a seal has neither digest nor signers.
struct ScriptCommand {
  std::optional<job::Moment> at;  ///< else the clock
  std::string by;                 ///< initials
  bool expect_accepted = true;
  job::Command command;
  std::optional<std::string> withdraw_at;  ///< withdraw: the latest entry of that step, where no number is given
};

struct Script {
  std::string title;
  std::string workshop_name;
  std::string workshop_address;
  std::string sheet;  ///< name of a sheet that comes with the program: `dry-pack-renewal`
  std::string spec;   ///< gearbox and issue: `D7-3`
  std::vector<ScriptPerson> people;
  std::vector<job::Instrument> instruments;  ///< id empty
  std::vector<ScriptTray> trays;
  std::vector<ScriptCommand> commands;
};

/// Reads and checks all of a script before anything is done with it. The place of an error is a JSON pointer.
[[nodiscard]] Result<Script> read_script(std::string_view json_text);

/// One command of the list.
[[nodiscard]] Result<ScriptCommand> read_script_command(const json::Value& value, const std::string& place);

/// ISO 8601 with seconds or without, and an offset: `2026-11-24T10:58+00:00`.
[[nodiscard]] std::optional<job::Moment> read_moment(std::string_view text);

}  // namespace shimwright::cli

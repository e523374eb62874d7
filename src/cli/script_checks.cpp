#include "script_checks.h"

#include <QDir>
#include <QFileInfo>
#include <QString>
#include <algorithm>
#include <functional>
#include <set>

#include "shimwright/json/object_reader.h"

namespace shimwright::cli {

namespace {

const std::string* name_of_instrument(const job::Command& command) {
  if (const auto* peak = std::get_if<job::EnterPeak>(&command)) {
    return &peak->reading.instrument;
  }
  if (const auto* depths = std::get_if<job::EnterDepths>(&command)) {
    return &depths->instrument;
  }
  if (const auto* run = std::get_if<job::EnterFloatRun>(&command)) {
    return &run->instrument;
  }
  return nullptr;
}

bool known(const std::vector<job::Instrument>& instruments, const std::string& name) {
  return name.empty() || std::any_of(instruments.begin(), instruments.end(),
                                     [&](const job::Instrument& each) { return each.name == name; });
}

bool known(const std::vector<ScriptPerson>& people, const std::string& initials) {
  return std::any_of(people.begin(), people.end(), [&](const ScriptPerson& each) { return each.initials == initials; });
}

Result<void> names_are_known(const Script& script) {
  for (std::size_t at = 0; at < script.commands.size(); ++at) {
    const ScriptCommand& each = script.commands[at];
    const std::string place = json::pointer("/commands", at);
    if (!known(script.people, each.by)) {
      return refuse("unknown_person", place + "/by",
                    SHIMWRIGHT_TEXT("cli", "“{0}” is not among the people of this script: add the person."), {each.by});
    }
    std::vector<std::string> instruments;
    if (const std::string* name = name_of_instrument(each.command)) {
      instruments.push_back(*name);
    }
    if (const auto* readings = std::get_if<job::EnterReadings>(&each.command)) {
      for (const job::TypedReading& reading : readings->readings) {
        instruments.push_back(reading.instrument);
      }
    }
    for (const std::string& name : instruments) {
      if (!known(script.instruments, name)) {
        return refuse("unknown_instrument", place,
                      SHIMWRIGHT_TEXT("cli", "“{0}” is not among the instruments of this script: add the instrument."),
                      {name});
      }
    }
    const auto* handed = std::get_if<job::HandOver>(&each.command);
    if (handed != nullptr && !known(script.people, handed->to)) {
      return refuse("unknown_person", place + "/to",
                    SHIMWRIGHT_TEXT("cli", "“{0}” is not among the people of this script: add the person."),
                    {handed->to});
    }
  }
  return {};
}

template <class Item>
Result<void> each_once(const std::vector<Item>& items, const char* list, const char* field,
                       const std::function<std::string(const Item&)>& name) {
  std::set<std::string> seen;
  for (std::size_t at = 0; at < items.size(); ++at) {
    if (!seen.insert(name(items[at])).second) {
      return refuse("named_twice", json::pointer(list, at) + "/" + field,
                    SHIMWRIGHT_TEXT("cli", "“{0}” stands here twice: take one away."), {name(items[at])});
    }
  }
  return {};
}

/// Where the command stands at a step of the sheet; a note may stand at none.
std::optional<std::string> step_named_by(const job::Command& command) {
  return std::visit(
      [](const auto& each) -> std::optional<std::string> {
        if constexpr (requires { each.step; }) {
          return each.step;
        }
        return std::nullopt;
      },
      command);
}

Result<void> check_command(const ScriptCommand& scripted, const std::string& place, const sheet::JobSheet& job_sheet,
                           const std::string& folder) {
  const auto step = step_named_by(scripted.command);
  if (step && job_sheet.find(*step) == nullptr) {
    return refuse("unknown_step", place + "/step",
                  SHIMWRIGHT_TEXT("cli", "The job sheet has no step “{0}”: name one of its steps."), {*step});
  }
  if (const auto* photo = std::get_if<job::AddPhoto>(&scripted.command)) {
    const QString file = QDir(QString::fromStdString(folder)).absoluteFilePath(QString::fromStdString(photo->sha256));
    if (!QFileInfo(file).isFile()) {
      return refuse("photo_unreadable", place + "/file",
                    SHIMWRIGHT_TEXT("cli", "There is no photo “{0}” beside the script: put it there."),
                    {photo->sha256});
    }
  }
  const auto* open = std::get_if<job::OpenJob>(&scripted.command);
  if (open != nullptr && job_sheet.title.by_language.count(open->language) == 0) {
    return refuse("unknown_language", place + "/language",
                  SHIMWRIGHT_TEXT("cli", "The job sheet does not speak “{0}”: name one of its languages."),
                  {open->language});
  }
  return {};
}

}  // namespace

Result<void> check_names(const Script& script) {
  if (script.commands.empty()) {
    return refuse("nothing_to_do", "/commands", SHIMWRIGHT_TEXT("cli", "This script has no commands: add some."));
  }
  auto once =
      each_once<ScriptPerson>(script.people, "/people", "initials", [](const auto& each) { return each.initials; });
  once = once ? each_once<job::Instrument>(script.instruments, "/instruments", "name",
                                           [](const auto& each) { return each.name; })
              : once;
  once =
      once ? each_once<ScriptTray>(script.trays, "/trays", "name", [](const auto& each) { return each.name; }) : once;
  return once ? names_are_known(script) : once;
}

Result<void> check_against(const Script& script, const sheet::JobSheet& job_sheet, const sheet::SpecSheet& spec,
                           const std::string& folder) {
  for (std::size_t at = 0; at < script.trays.size(); ++at) {
    const std::string& name = script.trays[at].name;
    if (name != spec.lower.tray_name && name != spec.upper.tray_name) {
      return refuse("unknown_tray", json::pointer("/trays", at) + "/name",
                    SHIMWRIGHT_TEXT("cli", "The spec sheet has no tray “{0}”: name it as it stands there."), {name});
    }
  }
  for (std::size_t at = 0; at < script.commands.size(); ++at) {
    const ScriptCommand& each = script.commands[at];
    auto fits = check_command(each, json::pointer("/commands", at), job_sheet, folder);
    if (!fits && each.expect_accepted) {
      return fits;
    }
  }
  return {};
}

}  // namespace shimwright::cli

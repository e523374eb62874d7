#include "script_by_keys.h"

#include <QDir>
#include <QFile>
#include <algorithm>
#include <catch2/catch.hpp>

namespace shimwright::test {

namespace {

std::string person_with(const bench::Workbench& bench, const std::string& initials) {
  for (const store::Person& each : bench.persons()) {
    if (each.initials == initials) {
      return each.id;
    }
  }
  return {};
}

std::int64_t latest_at(const job::JobState& state, const std::string& step) {
  std::int64_t latest = 0;
  for (const job::Entry* entry : state.live(step)) {
    latest = std::holds_alternative<job::Advised>(entry->body) ? latest : entry->seq;
  }
  return latest;
}

/// The shim the script takes next for a side that is changed.
std::string next_shim(const cli::Script& script, std::size_t from, job::Side side) {
  const std::string step = side == job::Side::lower ? "large" : "small";
  for (std::size_t at = from; at < script.commands.size(); ++at) {
    const auto* choose = std::get_if<job::ChooseShim>(&script.commands[at].command);
    if (choose != nullptr && choose->step.rfind(step, 0) == 0) {
      return choose->shim;
    }
  }
  return {};
}

}  // namespace

cli::Script demo_script(const std::string& name) {
  QFile file(QString::fromStdString(UiBench::demo_folder() + "/" + name + ".json"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  auto script = cli::read_script(file.readAll().toStdString());
  REQUIRE(script);
  return std::move(*script);
}

void do_script_by_keys(UiBench& rig, KeyTechnician& technician, const cli::Script& script, const ByKeys& by) {
  const QDir photos(QString::fromStdString(UiBench::demo_folder()));
  for (std::size_t at = 1; at < script.commands.size(); ++at) {
    const cli::ScriptCommand& scripted = script.commands[at];
    const bool for_pins = std::holds_alternative<job::SealJob>(scripted.command) ||
                          std::holds_alternative<job::AddAddendum>(scripted.command);
    if (!scripted.expect_accepted || for_pins || std::holds_alternative<job::OpenJob>(scripted.command)) {
      continue;
    }
    INFO("command " << at);
    job::Command command = scripted.command;
    if (auto* handed = std::get_if<job::HandOver>(&command)) {
      handed->to = person_with(rig.workbench(), handed->to);
    }
    if (auto* withdraw = std::get_if<job::Withdraw>(&command); withdraw != nullptr && scripted.withdraw_at) {
      withdraw->entry = latest_at(rig.workbench().state(), *scripted.withdraw_at);
    }
    std::string shim;
    if (const auto* begun = std::get_if<job::BeginAssembly>(&command); begun != nullptr && !begun->sides.empty()) {
      shim = next_shim(script, at, begun->sides.front());
    }
    QString photo;
    if (const auto* taken = std::get_if<job::AddPhoto>(&command)) {
      photo = photos.absoluteFilePath(QString::fromStdString(taken->sha256));
    }
    by.step_up(scripted.by);
    rig.move_clock(2);
    const std::size_t before = rig.workbench().state().entries.size();
    technician.keep(command, shim, photo);
    REQUIRE(rig.workbench().state().entries.size() > before);
    if (std::holds_alternative<job::Park>(command)) {
      by.after_parking();
    }
  }
}

}  // namespace shimwright::test

#include "ui_bench.h"

#include <QFile>
#include <algorithm>
#include <catch2/catch.hpp>
#include <concepts>
#include <utility>

#include "replay.h"
#include "script.h"
#include "workshop.h"

namespace shimwright::test {

namespace {

constexpr std::int64_t start_ms = 1795421400000;  // 2026-11-23 08:50 UTC

using Changes = std::vector<std::pair<QByteArray, QByteArray>>;

cli::Script script_of(const std::string& name, const Changes& changes = {}) {
  QFile file(QString::fromStdString(UiBench::demo_folder() + "/" + name + ".json"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  QByteArray text = file.readAll();
  for (const auto& [before, after] : changes) {
    REQUIRE(text.contains(before));
    text.replace(before, after);
  }
  auto script = cli::read_script(text.toStdString());
  REQUIRE(script);
  return std::move(*script);
}

bool is_for(const job::Command& command, const std::string& step) {
  return std::visit(
      [&](const auto& each) {
        if constexpr (requires {
                        { each.step } -> std::convertible_to<std::string>;
                      }) {
          return each.step == step;
        } else {
          return false;
        }
      },
      command);
}

}  // namespace

UiBench::UiBench(const std::string& script, const QString& place)
    : place_(place.isEmpty() ? folder_.path() : place),
      now_ms_(std::make_shared<std::int64_t>(start_ms)),
      script_(script) {
  const cli::Script read = script_of(script);
  auto store =
      store::Store::open(file("workshop.shimwright").toStdString(), {store::Mode::read_write, "test", start_ms});
  REQUIRE(store);
  store_ = std::move(*store);
  store::IdSource ids;
  auto known = cli::settle_in(*store_, read, ids);
  REQUIRE(known);
  sheet_hash_ = known->sheet_hash;
  spec_hash_ = known->spec_hash;
  const auto clock = [now = now_ms_] { return job::Moment{*now, 60, false}; };
  workbench_ = std::make_unique<bench::Workbench>(*store_, clock, store::IdSource());
  REQUIRE(workbench_->read_persons());
  REQUIRE_FALSE(workbench_->persons().empty());
  workbench_->set_person(workbench_->persons().front());
}

std::string UiBench::go_through(const std::string& script, const Changes& changes) {
  const cli::Script read = script_of(script, changes);
  store::IdSource ids;
  auto known = cli::settle_in(*store_, read, ids);
  REQUIRE(known);
  auto result = cli::replay(*store_, read, *known, ids, UiBench::demo_folder(), [](const std::string&) {});
  REQUIRE(result);
  REQUIRE(result->unexpected == 0);
  return result->job;
}

std::string UiBench::demo_folder() {
  return SHIMWRIGHT_DATA_DIR "/demo";
}

std::string UiBench::go_to(const std::string& until, std::size_t further) {
  cli::Script script = script_of(script_);
  if (!until.empty()) {
    std::size_t at = 0;
    while (at < script.commands.size() && !is_for(script.commands[at].command, until)) {
      ++at;
    }
    REQUIRE(at + further < script.commands.size());
    script.commands.resize(at + further);
  }
  store::IdSource ids;
  auto known = cli::settle_in(*store_, script, ids);
  REQUIRE(known);
  auto result = cli::replay(*store_, script, *known, ids, UiBench::demo_folder(), [](const std::string&) {});
  REQUIRE(result);
  REQUIRE(result->unexpected == 0);
  auto taken = workbench_->take(result->job);
  REQUIRE(taken);
  // The script's days lie behind the bench's clock.
  *now_ms_ = std::max(*now_ms_, workbench_->state().entries.back().moment.at_ms + 60000);
  return result->job;
}

}  // namespace shimwright::test

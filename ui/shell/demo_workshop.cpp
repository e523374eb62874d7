#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <utility>
#include <vector>

#include "replay.h"
#include "script.h"
#include "shimwright/json/value.h"
#include "shimwright/shell/stores.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/say.h"
#include "workshop.h"

namespace shimwright::shell {

namespace {

constexpr std::int64_t day_in_ms = 24LL * 60 * 60 * 1000;
constexpr const char* demo_scripts = ":/shimwright/demo";

/// A script, and how many of its commands have been gone through when the demonstration begins; 0: all.
struct DemoJob {
  const char* script;
  std::size_t commands;
};

/// The float that asks for another shim; the fit by depth; shims laid and then parked; and one that is done.
const std::vector<DemoJob>& demo_jobs() {
  static const std::vector<DemoJob> jobs{{"01-smooth-day", 0},
                                         {"03-sum-on-the-border", 66},
                                         {"04-parked-at-the-wrong-moment", 86},
                                         {"02-bearing-not-home", 98}};
  return jobs;
}

Result<cli::Script> demo_script(const char* name) {
  QFile file(QStringLiteral("%1/%2.json").arg(QLatin1String(demo_scripts), QLatin1String(name)));
  if (!file.open(QIODevice::ReadOnly)) {
    return refuse("cannot_read", name,
                  SHIMWRIGHT_TEXT("shell", "The demonstration jobs are missing from this program: install it again."));
  }
  return cli::read_script(file.readAll().toStdString());
}

/// Whole days, so that working hours stay working hours.
void move_before(cli::Script& script, const job::Moment& now) {
  std::int64_t latest = 0;
  for (const cli::ScriptCommand& each : script.commands) {
    latest = each.at ? std::max(latest, each.at->at_ms) : latest;
  }
  const std::int64_t ahead = latest - now.at_ms;
  const std::int64_t days = ahead > 0 ? ahead / day_in_ms + 1 : 0;
  for (cli::ScriptCommand& each : script.commands) {
    if (each.at) {
      each.at->at_ms -= days * day_in_ms;
    }
  }
}

Result<void> fill(store::Store& store, const job::Moment& now) {
  store::IdSource ids;
  for (const DemoJob& each : demo_jobs()) {
    auto script = demo_script(each.script);
    if (!script) {
      return tl::make_unexpected(script.error());
    }
    if (each.commands != 0 && each.commands < script->commands.size()) {
      script->commands.resize(each.commands);
    }
    move_before(*script, now);
    auto known = cli::settle_in(store, *script, ids);
    if (!known) {
      return tl::make_unexpected(known.error());
    }
    auto done = cli::replay(store, *script, *known, ids, demo_scripts, [](const std::string&) {});
    if (!done) {
      return tl::make_unexpected(done.error());
    }
  }
  return {};
}

}  // namespace

Result<void> make_demo_workshop(const std::string& path, const job::Moment& now) {
  const QFileInfo wanted(widgets::qt(path));
  const QString folder = wanted.absolutePath();
  // Made beside it and given its name at the end: a demonstration that was cut off half way is none.
  const QString draft = folder + QStringLiteral(".new");
  QDir(draft).removeRecursively();
  {
    auto store = store::Store::open(widgets::plain(QDir(draft).absoluteFilePath(wanted.fileName())),
                                    {store::Mode::read_write, "demonstration", now.at_ms});
    if (!store) {
      return tl::make_unexpected(store.error());
    }
    if (auto filled = fill(**store, now); !filled) {
      return filled;
    }
  }
  QDir().rmdir(folder);
  if (!QDir().rename(draft, folder)) {
    return refuse("cannot_open", path,
                  SHIMWRIGHT_TEXT("shell",
                                  "The demonstration cannot be laid there: look whether something else has its "
                                  "name, then try again."));
  }
  return {};
}

namespace {

/// Only what the program itself laid there is thrown away.
Result<void> check_is_demo(const std::string& path) {
  if (const auto holder = store::Store::lock_holder(path)) {
    return refuse("locked", path,
                  SHIMWRIGHT_TEXT("shell", "The demonstration is open in another window; close it there first."));
  }
  auto store = store::Store::open(path, {store::Mode::look_only, "", 0});
  if (!store) {
    return tl::make_unexpected(store.error());
  }
  auto workshop = (*store)->registers().workshop();
  if (!workshop) {
    return tl::make_unexpected(workshop.error());
  }
  if (workshop->has_value() && !is_demo_workshop(**store)) {
    return refuse("not_the_demo", path,
                  SHIMWRIGHT_TEXT("shell", "Another workshop than the demonstration lies there: nothing was deleted."));
  }
  return {};
}

}  // namespace

Result<void> delete_demo_workshop(const StorePlaces& places) {
  const QFileInfo demo(widgets::qt(places.demo));
  const QString folder = demo.absolutePath();
  if (QFileInfo(widgets::qt(places.own)).absoluteFilePath().startsWith(folder + QLatin1Char('/'))) {
    return refuse("demo_not_apart", places.demo,
                  SHIMWRIGHT_TEXT("shell", "This workshop's own store lies in that folder: nothing was deleted."));
  }
  if (!demo.exists()) {
    return {};
  }
  if (auto checked = check_is_demo(places.demo); !checked) {
    return checked;
  }
  if (!QDir(folder).removeRecursively()) {
    return refuse("cannot_delete", places.demo,
                  SHIMWRIGHT_TEXT("shell",
                                  "Not all of the demonstration could be deleted: look whether a program has one of "
                                  "its files open, then try again."));
  }
  return {};
}

bool is_demo_workshop(store::Store& store) {
  const auto read = store.registers().workshop();
  const auto workshop = read ? *read : std::nullopt;
  const auto script = demo_script(demo_jobs().front().script);
  if (!workshop || !script) {
    return false;
  }
  // Its name can be changed, the history of it cannot.
  const auto changes = store.registers().changes("workshop", workshop->id);
  if (!changes || changes->empty()) {
    return false;
  }
  const auto first = json::parse(changes->front().body);
  if (!first) {
    return false;
  }
  const auto said = [&first](const char* key, const std::string& text) {
    const json::Value* member = first->find(key);
    return member != nullptr && member->string() != nullptr && *member->string() == text;
  };
  return said("name", script->workshop_name) && said("address", script->workshop_address);
}

}  // namespace shimwright::shell

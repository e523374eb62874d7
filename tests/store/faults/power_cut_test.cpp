// The disk's writes are written down and a power cut is played at any point: what was synced is there, of the rest any
// part, sector by sector. Each time the store opens whole, with every entry that was acknowledged before.
#include <algorithm>
#include <map>
#include <random>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "connection.h"
#include "faulty_disk.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr std::size_t sector = 512;

/// One file on the disk: what is there for certain, and what was written since the last sync.
struct DiskFile {
  std::string certain;
  std::vector<DiskEvent> since;
};

using Disk = std::map<std::string, DiskFile>;

void write_into(std::string& content, std::size_t offset, std::string_view bytes) {
  content.resize(std::max(content.size(), offset + bytes.size()), '\0');
  content.replace(offset, bytes.size(), bytes);
}

void apply(std::string& content, const DiskEvent& event) {
  if (event.kind == DiskEvent::Kind::write) {
    write_into(content, static_cast<std::size_t>(event.offset), event.bytes);
  } else if (event.kind == DiskEvent::Kind::truncate) {
    content.resize(static_cast<std::size_t>(event.offset), '\0');
  }
}

void reach(Disk& disk, const DiskEvent& event) {
  DiskFile& file = disk[event.file];
  if (event.kind == DiskEvent::Kind::remove) {
    disk.erase(event.file);
  } else if (event.kind == DiskEvent::Kind::sync) {
    for (const DiskEvent& each : file.since) {
      apply(file.certain, each);
    }
    file.since.clear();
  } else {
    file.since.push_back(event);
  }
}

/// What the disk holds after the cut: every sector not synced came or did not.
std::string after_the_cut(const DiskFile& file, std::mt19937& chance) {
  std::string content = file.certain;
  const auto of_eight = chance() % 9;
  const auto comes = [&] { return chance() % 8 < of_eight; };
  for (const DiskEvent& event : file.since) {
    if (event.kind == DiskEvent::Kind::truncate) {
      if (comes()) {
        apply(content, event);
      }
      continue;
    }
    for (std::size_t at = 0; at < event.bytes.size(); at += sector) {
      if (comes()) {
        write_into(content, static_cast<std::size_t>(event.offset) + at,
                   std::string_view(event.bytes).substr(at, sector));
      }
    }
  }
  return content;
}

/// A day of work with what the disk saw of it.
struct Day {
  std::vector<DiskEvent> events;
  std::map<std::size_t, std::size_t> entries_after;  ///< by number of events: entries acknowledged then
  std::string folder;
  std::string store;
  std::string job;
  std::vector<job::Entry> entries;
};

Day recorded_day() {
  Day day;
  FaultyDisk disk;
  disk.record();
  Workbench bench;
  // A small log, so that it is emptied into the file again and again.
  went(bench.store().connection().run_script("PRAGMA wal_autocheckpoint = 12"));
  TestJob job(bench, "10", "2026-0147");
  job.open();
  day.entries_after[disk.events().size()] = 1;
  for (int turn = 0; turn < 40; ++turn) {
    if (turn == 20) {
      bench.open();
    }
    job.add(job::Noted{std::nullopt, "Turn " + std::to_string(turn)});
    day.entries_after[disk.events().size()] = job.state().entries.size();
  }
  bench.close();
  day.events = disk.events();
  day.store = bench.path();
  day.folder = QFileInfo(QString::fromStdString(day.store)).absolutePath().toStdString();
  day.job = job.id();
  day.entries = job.state().entries;
  return day;
}

void lay_out(const Disk& disk, const Day& day, const QString& folder, std::mt19937& chance) {
  for (const auto& [name, file] : disk) {
    if (name.rfind(day.folder, 0) != 0) {
      continue;
    }
    QFile out(folder + QString::fromStdString(name.substr(day.folder.size())));
    REQUIRE(out.open(QIODevice::WriteOnly | QIODevice::Truncate));
    out.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    const std::string content = after_the_cut(file, chance);
    REQUIRE(out.write(content.data(), qint64(content.size())) == qint64(content.size()));
  }
}

/// Opens what the cut left, for writing as the technician would, and compares.
void opens_whole(const QString& folder, const Day& day, std::size_t acknowledged) {
  const std::string path = (folder + "/bench.sqlite").toStdString();
  const auto store = got(Store::open(path, {Mode::read_write, "Mara Kern", monday_ms}));
  const CheckReport report = got(check(*store));
  CHECK(report.in_order());
  CHECK(report.entries >= static_cast<std::int64_t>(acknowledged));
  if (report.entries > 0) {
    const auto there = got(store->load(day.job)).entries;
    REQUIRE(there.size() <= day.entries.size());
    CHECK(std::equal(there.begin(), there.end(), day.entries.begin()));
  }
}

void cut_at(const Disk& disk, const Day& day, std::size_t acknowledged, std::mt19937& chance) {
  const QTemporaryDir folder;
  lay_out(disk, day, folder.path(), chance);
  // Syncing for real would only cost time here.
  const FaultyDisk quick;
  opens_whole(folder.path(), day, acknowledged);
}

}  // namespace

TEST_CASE("a power cut at any point leaves a whole store with every acknowledged entry") {
  const Day day = recorded_day();
  REQUIRE(day.entries.size() == 41);
  REQUIRE(day.events.size() > 300);
  const bool all = qEnvironmentVariableIsSet("SHIMWRIGHT_LONG");
  const unsigned seed = all ? std::random_device()() : 20261127U;
  std::mt19937 chance(seed);
  Disk disk;
  std::size_t acknowledged = 0;
  for (std::size_t at = 0; at < day.events.size(); ++at) {
    if (const auto found = day.entries_after.find(at); found != day.entries_after.end()) {
      acknowledged = found->second;
    }
    INFO("seed " << seed << ", cut before event " << at << " of " << day.events.size());
    // Most ways to be half there has a store that is only just made.
    const bool thorough = all || at < 12;
    if (thorough || at % 8 == 0 || day.entries_after.count(at) != 0) {
      for (int turn = 0; turn < (thorough ? 20 : 1); ++turn) {
        cut_at(disk, day, acknowledged, chance);
      }
    }
    reach(disk, day.events[at]);
  }
  cut_at(disk, day, day.entries.size(), chance);
}

}  // namespace shimwright::store

// Files that went bad by themselves: no entry is ever read otherwise than it was stored without a sentence that says
// so.
#include <random>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "faulty_disk.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

/// A store with its log still full, as after a crash, and what was in it.
struct Sound {
  QByteArray file;
  QByteArray log;
  std::string job;
  std::vector<job::Entry> entries;
};

QByteArray bytes_of(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

void write_bytes(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(bytes) == bytes.size());
  file.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
}

Sound sound_store() {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.open();
  for (int turn = 0; turn < 12; ++turn) {
    job.add(job::Noted{std::nullopt, "Turn " + std::to_string(turn)});
  }
  const QString path = QString::fromStdString(bench.path());
  // Read while it is open: the log would go with the last connection. Only the locks are lost by that.
  return {bytes_of(path), bytes_of(path + "-wal"), job.id(), job.state().entries};
}

/// Told: refused on opening, refused on loading or checking, or found. Else everything acknowledged up to the end of
/// what the log still holds is as it was.
void told_or_whole(const Sound& sound, const QByteArray& file, const QByteArray& log, std::size_t least) {
  const QTemporaryDir folder;
  write_bytes(folder.filePath("bench.sqlite"), file);
  if (!log.isEmpty()) {
    write_bytes(folder.filePath("bench.sqlite-wal"), log);
  }
  const FaultyDisk quick;
  const auto store = Store::open(folder.filePath("bench.sqlite").toStdString(), {Mode::read_write, "", monday_ms});
  if (!store) {
    CHECK_FALSE(store.error().in_english().empty());
    CHECK(store.error().code != "store_fault");
    return;
  }
  const auto report = check(**store);
  if (!report || !report->in_order()) {
    CHECK((report || report.error().code != "store_fault"));
    return;
  }
  const auto loaded = (*store)->load(sound.job);
  if (!loaded) {
    CHECK(least == 0);
    return;
  }
  REQUIRE(loaded->entries.size() <= sound.entries.size());
  CHECK(loaded->entries.size() >= least);
  CHECK(std::equal(loaded->entries.begin(), loaded->entries.end(), sound.entries.begin()));
}

}  // namespace

TEST_CASE("a flipped bit is found, or changed no entry") {
  const Sound sound = sound_store();
  const bool all = qEnvironmentVariableIsSet("SHIMWRIGHT_LONG");
  std::mt19937 chance(20261127U);
  for (int turn = 0; turn < (all ? 20000 : 100); ++turn) {
    QByteArray file = sound.file;
    QByteArray log = sound.log;
    QByteArray& spoilt = turn % 2 == 0 ? file : log;
    const auto at = static_cast<qsizetype>(chance() % static_cast<std::uint_fast32_t>(spoilt.size()));
    spoilt[at] = static_cast<char>(spoilt[at] ^ (1 << (chance() % 8)));
    INFO((turn % 2 == 0 ? "file, byte " : "log, byte ") << at);
    // A log is as good as its first wrong frame: what follows it was never acknowledged or is lost with it.
    told_or_whole(sound, file, log, turn % 2 == 0 ? sound.entries.size() : 1);
  }
}

TEST_CASE("a file that was cut off or emptied in part is told") {
  const Sound sound = sound_store();
  const bool all = qEnvironmentVariableIsSet("SHIMWRIGHT_LONG");
  std::mt19937 chance(20261128U);
  for (int turn = 0; turn < (all ? 2000 : 30); ++turn) {
    const auto at = static_cast<qsizetype>(chance() % static_cast<std::uint_fast32_t>(sound.file.size()));
    INFO("at byte " << at);
    told_or_whole(sound, sound.file.left(at + 1), {}, 1);
    QByteArray emptied = sound.file;
    const qsizetype length = qMin<qsizetype>(4096, emptied.size() - at);
    emptied.replace(at, length, QByteArray(length, '\0'));
    told_or_whole(sound, emptied, {}, 1);
    const auto in_log = static_cast<qsizetype>(chance() % static_cast<std::uint_fast32_t>(sound.log.size()));
    told_or_whole(sound, sound.file, sound.log.left(in_log), 1);
  }
}

}  // namespace shimwright::store

#include "shimwright/store/backup.h"

#include <algorithm>
#include <atomic>
#include <thread>

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "sample_photos.h"
#include "shimwright/store/check.h"
#include "shimwright/store/rescue.h"
#include "shimwright/store/restore.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

void write_file(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(content) == content.size());
}

/// A store with a job and a photo.
struct Filled {
  Workbench bench;
  TestJob job{bench, "10", "2026-0147"};
  KeptPhoto photo;
  std::string out = bench.file("backups/monday.sqlite").toStdString();

  Filled() {
    job.open();
    write_file(bench.file("a.jpg"), bare_jpeg("pack"));
    photo = got(bench.store().keep_photo(bench.file("a.jpg").toStdString()));
    job.add(job::PhotoTaken{{"received-photos", 1}, photo.sha256, photo.media_type, photo.bytes, ""});
  }
  [[nodiscard]] Result<BackupReport> back_up(const BackupWatch& watch = {}) const {
    return store::back_up(bench.path(), out, watch);
  }
  [[nodiscard]] QString kept_photo() const {
    const QString name = QString::fromStdString(photo.sha256);
    return bench.file("backups/photos/" + name.left(2) + "/" + name);
  }
};

}  // namespace

TEST_CASE("a backup is a store that is in order and can be worked with") {
  const Filled filled;
  const BackupReport report = got(filled.back_up());
  CHECK(report.entries == 2);
  CHECK(report.photos_copied == 1);
  CHECK(report.photos_there == 0);
  const auto backup = got(Store::open(filled.out, {Mode::read_write, "Mara Kern", monday_ms}));
  CHECK(got(check(*backup)).in_order());
  CHECK(got(backup->load(filled.job.id())).entries == filled.job.state().entries);
  CHECK(QFileInfo::exists(filled.kept_photo()));
}

TEST_CASE("an older backup of the same store is written over, and photos are copied once") {
  Filled filled;
  static_cast<void>(got(filled.back_up()));
  filled.job.add(job::Done{{"battery-off", 1}});
  const BackupReport second = got(filled.back_up());
  CHECK(second.entries == 3);
  CHECK(second.photos_copied == 0);
  CHECK(second.photos_there == 1);
}

TEST_CASE("anything else is not written over") {
  Filled filled;
  REQUIRE(QDir().mkpath(filled.bench.file("backups")));
  const QString out = QString::fromStdString(filled.out);
  write_file(out, "a letter");
  CHECK(code_of(filled.back_up()) == "backup_in_the_way");
  CHECK(QFileInfo(out).size() == 8);

  REQUIRE(QFile::remove(out));
  {
    Filled other;
    other.out = filled.out;
    static_cast<void>(got(other.back_up()));
  }
  CHECK(code_of(filled.back_up()) == "backup_in_the_way");
  filled.out = filled.bench.path();
  CHECK(code_of(filled.back_up()) == "backup_in_the_way");
  filled.out = "monday.sqlite";
  CHECK(code_of(filled.back_up()) == "path_not_absolute");
}

TEST_CASE("a backup that went on after the store was put back is put aside, and the day's is written") {
  Filled filled;
  static_cast<void>(got(filled.back_up()));
  {
    const auto backup = got(Store::open(filled.out, {Mode::read_write, "Mara Kern", monday_ms}));
    job::JobState after = filled.job.state();
    after.entries.push_back({3, by_mk(3).moment, mk, job::Noted{{}, "only in the backup"}});
    went(backup->append(filled.job.id(), {after.entries.back()}, {}, after));
  }
  const BackupReport report = got(filled.back_up());
  CHECK(report.put_aside == filled.bench.file("backups/monday-before-1.sqlite").toStdString());
  const auto entries = [&filled](const std::string& file) {
    return got(got(Store::open(file, {Mode::look_only, "", monday_ms}))->load(filled.job.id())).entries.size();
  };
  CHECK(entries(report.put_aside) == 3);
  CHECK(entries(filled.out) == 2);
  CHECK(got(filled.back_up()).put_aside.empty());
}

TEST_CASE("two backups to one file at once leave a whole one, and each is made or told to wait") {
  Filled filled;
  for (int round = 0; round < 5; ++round) {
    std::vector<std::string> codes(2);
    std::vector<std::thread> both;
    for (std::string& code : codes) {
      both.emplace_back([&filled, &code] {
        const auto made = filled.back_up();
        code = made ? "made" : made.error().code;
      });
    }
    for (std::thread& each : both) {
      each.join();
    }
    CHECK(std::count(codes.begin(), codes.end(), "made") >= 1);
    CHECK(std::count(codes.begin(), codes.end(), "made") + std::count(codes.begin(), codes.end(), "backup_runs") == 2);
    CHECK(got(check(*got(Store::open(filled.out, {Mode::look_only, "", 0})))).in_order());
  }
  CHECK(QDir(filled.bench.file("backups")).entryList({"*.unfinished*", "*.part", "*.lock"}, QDir::Files).isEmpty());
}

TEST_CASE("a store that is not in order gives no backup, and the one before stays") {
  Filled filled;
  static_cast<void>(got(filled.back_up()));
  filled.bench.sabotage("UPDATE job SET next_step = 'x'");
  const auto second = filled.back_up();
  REQUIRE_FALSE(second);
  CHECK(second.error().code == "backup_wrong");
  CHECK(second.error().place.find("table job") != std::string::npos);
  const auto backup = got(Store::open(filled.out, {Mode::look_only, "", 0}));
  CHECK(got(check(*backup)).in_order());
}

TEST_CASE("a photo that was lost or changed keeps no entry from being backed up, and is told") {
  Filled filled;
  const QString photo = QString::fromStdString(filled.bench.store().photo_path(filled.photo.sha256));
  const bool gone = GENERATE(false, true);
  if (gone) {
    REQUIRE(QFile::remove(photo));
  } else {
    write_file(photo, "changed");
  }
  const BackupReport report = got(filled.back_up());
  CHECK(report.photos_gone == 1);
  CHECK(report.photos_copied == 0);
  CHECK_FALSE(QFileInfo::exists(filled.kept_photo()));
  const auto backup = got(Store::open(filled.out, {Mode::look_only, "", 0}));
  CHECK(got(backup->load(filled.job.id())).entries == filled.job.state().entries);
  const CheckReport checked = got(check(*backup));
  CHECK_FALSE(checked.in_order());
  CHECK(checked.whole_but_for_photos());
}

TEST_CASE("a photo that was lost after a backup stays in the next one") {
  Filled filled;
  static_cast<void>(got(filled.back_up()));
  REQUIRE(QFile::remove(QString::fromStdString(filled.bench.store().photo_path(filled.photo.sha256))));
  const BackupReport report = got(filled.back_up());
  CHECK(report.photos_gone == 0);
  CHECK(report.photos_there == 1);
  CHECK(got(check(*got(Store::open(filled.out, {Mode::look_only, "", 0})))).in_order());
}

TEST_CASE("a wrong photo in the backup folder is put right") {
  Filled filled;
  static_cast<void>(got(filled.back_up()));
  write_file(filled.kept_photo(), "rotten");
  CHECK(got(filled.back_up()).photos_copied == 1);
  const auto backup = got(Store::open(filled.out, {Mode::look_only, "", 0}));
  CHECK(got(check(*backup)).in_order());
}

TEST_CASE("a backup can be stopped, and tells how far it is") {
  Filled filled;
  std::atomic<bool> stop{false};
  std::vector<std::int64_t> steps;
  BackupWatch watch;
  watch.stop = &stop;
  watch.progress = [&](std::int64_t done, std::int64_t of_all) {
    CHECK(done <= of_all);
    steps.push_back(done);
  };
  static_cast<void>(got(filled.back_up(watch)));
  CHECK_FALSE(steps.empty());
  steps.clear();
  CHECK(got(check(filled.bench.store(), watch)).in_order());
  CHECK_FALSE(steps.empty());
  stop = true;
  CHECK(code_of(filled.back_up(watch)) == "stopped");
  CHECK(code_of(check(filled.bench.store(), watch)) == "stopped");
  CHECK(code_of(look_at_backup(filled.bench.path(), filled.out, watch)) == "stopped");
  CHECK(code_of(last_whole_backup(filled.bench.path(), filled.bench.file("backups").toStdString(), watch)) ==
        "stopped");
}

TEST_CASE("a backup is made while somebody writes") {
  Filled filled;
  std::thread background([&filled] { static_cast<void>(got(filled.back_up())); });
  for (int count = 0; count < 20; ++count) {
    filled.job.add(job::Noted{{}, "still writing"});
  }
  background.join();
  const auto backup = got(Store::open(filled.out, {Mode::look_only, "", 0}));
  CHECK(got(check(*backup)).in_order());
}

}  // namespace shimwright::store

#include "shimwright/store/rescue.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

/// A store with two backups and an entry after the second one.
struct Backed {
  Workbench bench;
  TestJob job{bench, "10", "2026-0147"};
  TestJob later{bench, "20", "2026-0148", "TESTVN0020A000123"};
  std::string folder = bench.file("backups").toStdString();
  std::string monday = folder + "/monday.sqlite";
  std::string tuesday = folder + "/tuesday.sqlite";

  Backed() {
    job.open();
    static_cast<void>(got(back_up(bench.path(), monday)));
    job.add(job::Done{{"battery-off", 1}});
    static_cast<void>(got(back_up(bench.path(), tuesday)));
    job.add(job::Noted{std::nullopt, "After the backup"});
    later.open();
  }
  void spoil(const std::string& path, qint64 at) {
    QFile file(QString::fromStdString(path));
    REQUIRE(file.open(QIODevice::ReadWrite));
    REQUIRE(file.seek(at));
    REQUIRE(file.write(QByteArray(64, '\0')) == 64);
  }
  [[nodiscard]] std::optional<BackupOffer> offer() const { return got(last_whole_backup(bench.path(), folder)); }
};

}  // namespace

TEST_CASE("the latest whole backup is offered with what would be missing") {
  Backed backed;
  backed.bench.close();
  const auto offer = backed.offer();
  REQUIRE(offer);
  CHECK(offer->file == backed.tuesday);
  CHECK(offer->entries == 2);
  REQUIRE(offer->missing);
  CHECK(offer->missing->entries == 2);
  CHECK(offer->missing->jobs == 2);
  const std::string told = offer->told().in_english();
  CHECK(told.find("Entered after it, and then missing: 2 entries, in jobs: 2") != std::string::npos);
}

TEST_CASE("a backup that is spoilt itself is not offered") {
  Backed backed;
  backed.bench.close();
  backed.spoil(backed.tuesday, 0);
  CHECK(backed.offer()->file == backed.monday);
  backed.spoil(backed.monday, 0);
  CHECK_FALSE(backed.offer());
}

TEST_CASE("where the store shows nothing any more, that is said") {
  Backed backed;
  backed.bench.close();
  backed.spoil(backed.bench.path(), 0);
  const auto offer = backed.offer();
  REQUIRE(offer);
  CHECK_FALSE(offer->missing);
  CHECK(offer->told().in_english().find("cannot be read from the damaged store") != std::string::npos);
}

TEST_CASE("a backup of another workshop is not offered") {
  Backed backed;
  Workbench other;
  static_cast<void>(got(back_up(other.path(), backed.folder + "/wednesday.sqlite")));
  CHECK(backed.offer()->file == backed.tuesday);
}

TEST_CASE("a backup is put in the place of a damaged store, which is kept") {
  Backed backed;
  const auto entries = got(got(Store::open(backed.tuesday, {Mode::look_only, "", monday_ms}))->load(backed.job.id()));
  backed.bench.close();
  backed.spoil(backed.bench.path(), 0);
  CHECK(code_of(Store::open(backed.bench.path(), {Mode::read_write, "Mara Kern", monday_ms})) == "not_a_store");
  const Opening by{Mode::read_write, "Mara Kern", monday_ms};
  const std::string kept = got(put_back(backed.bench.path(), backed.tuesday, by));
  CHECK(kept == backed.bench.path() + ".damaged-1");
  QFile damaged(QString::fromStdString(kept));
  REQUIRE(damaged.open(QIODevice::ReadOnly));
  CHECK(damaged.read(64) == QByteArray(64, '\0'));
  backed.bench.open();
  CHECK(got(check(backed.bench.store())).in_order());
  CHECK(got(backed.bench.store().load(backed.job.id())).entries == entries.entries);
  CHECK_FALSE(QFileInfo::exists(QString::fromStdString(backed.bench.path() + ".restored")));
}

TEST_CASE("a text that was erased stays erased though a backup is put back") {
  Backed backed;
  const auto opened = std::get<job::Opened>(backed.job.state().entries.front().body);
  went(backed.bench.store().erase_private_text(opened.plate->id, by_mk()));
  backed.bench.close();
  static_cast<void>(got(put_back(backed.bench.path(), backed.tuesday, {Mode::read_write, "Mara Kern", monday_ms})));
  backed.bench.open();
  CHECK_FALSE(got(backed.bench.store().load(backed.job.id())).private_texts.at(opened.plate->id));
  CHECK(got(backed.bench.store().search("HLMK412")).empty());
  CHECK(got(check(backed.bench.store())).in_order());
}

TEST_CASE("the log of what is replaced is kept with it, and is none of what takes its place") {
  Backed backed;
  // As a program that was killed leaves it: the last entries stand in the log alone.
  const QString place = backed.bench.file("killed/bench.sqlite");
  REQUIRE(QDir().mkpath(backed.bench.file("killed")));
  const QString from = QString::fromStdString(backed.bench.path());
  const auto bytes = [](const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  };
  for (const char* ending : {"", "-wal"}) {
    REQUIRE(QFile::copy(from + QLatin1String(ending), place + QLatin1String(ending)));
  }
  REQUIRE(QFileInfo(place + "-wal").size() > 0);
  const QByteArray log = bytes(place + "-wal");
  QFile journal(place + "-journal");
  REQUIRE(journal.open(QIODevice::WriteOnly));
  REQUIRE(journal.write("not of this store") > 0);
  journal.close();
  const std::string kept =
      got(put_back(place.toStdString(), backed.tuesday, {Mode::read_write, "Mara Kern", monday_ms}));
  CHECK(bytes(QString::fromStdString(kept) + "-wal") == log);
  CHECK(bytes(QString::fromStdString(kept) + "-journal") == "not of this store");
  CHECK_FALSE(QFileInfo::exists(place + "-journal"));
  CHECK(QDir(backed.bench.file("killed")).entryList({"*.aside", "*.restored*"}, QDir::Files).isEmpty());
  const auto store = got(Store::open(place.toStdString(), {Mode::look_only, "", monday_ms}));
  CHECK(got(store->load(backed.job.id())).stored.size() == 2);
  CHECK(got(check(*store)).in_order());
  REQUIRE(QFile::remove(QString::fromStdString(kept) + "-journal"));
  const auto old = got(Store::open(kept, {Mode::look_only, "", monday_ms}));
  CHECK(got(old->load(backed.job.id())).stored.size() == 3);
}

TEST_CASE("a store that somebody writes in is not replaced") {
  Backed backed;
  CHECK(code_of(put_back(backed.bench.path(), backed.tuesday, {Mode::read_write, "Rui Tavares", monday_ms})) ==
        "locked");
  backed.bench.close();
  const Opening by{Mode::read_write, "Mara Kern", monday_ms};
  CHECK(code_of(put_back(backed.bench.path(), backed.folder + "/none.sqlite", by)) == "cannot_open");
  backed.bench.open();
  CHECK(got(check(backed.bench.store())).entries == 4);
}

}  // namespace shimwright::store

#include <QFile>

#include "connection.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

bool holds(const QString& path, const QByteArray& text) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) && file.readAll().contains(text);
}

}  // namespace

TEST_CASE("an erased text is gone from the job, the search and the disk, and the job stays") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("PLATE-TO-ERASE", "Miller/77");
  const std::string id = job.state().opened->plate->id;
  CHECK(got(bench.store().search("platetoerase")).size() == 1);

  went(bench.store().erase_private_text(id, by_mk(9)));
  const LoadedJob loaded = got(bench.store().load(job.id()));
  CHECK(loaded.private_texts.at(id) == std::nullopt);
  CHECK(loaded.entries == job.state().entries);
  CHECK(got(bench.store().search("platetoerase")).empty());
  CHECK(got(bench.store().search("miller")).size() == 1);
  CHECK_FALSE(got(bench.store().jobs()).front().plate);
  CHECK(got(bench.store().connection().value("SELECT salt FROM private_text WHERE id = ?", {id})) == Value());
  for (const char* file : {"workshop/bench.sqlite", "workshop/bench.sqlite-wal"}) {
    CHECK_FALSE(holds(bench.file(file), "PLATE-TO-ERASE"));
    CHECK_FALSE(holds(bench.file(file), "PLATET0ERASE"));
  }
  const auto changes = got(bench.store().registers().changes("private_text", id));
  REQUIRE(changes.size() == 1);
  CHECK(changes[0].by.moment == by_mk(9).moment);
}

TEST_CASE("all personal texts of a vehicle are erased, from later backups as well, and the check holds") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147");
  first.open("ERASEPLATE-1", "Erasename/77");
  TestJob second(bench, "20", "2026-0148");
  second.open("ERASEPLATE-2", "Erasename/78");
  TestJob other(bench, "30", "2026-0149", "TESTVN0020A000123");
  other.open("KEPTPLATE-3", "Keptname/79");
  const std::string vehicle = second.state().opened->vehicle_key;
  CHECK(got(bench.store().erase_vehicle_texts(vehicle, by_mk(9))) == 4);
  CHECK(got(bench.store().erase_vehicle_texts(vehicle, by_mk(10))) == 0);
  CHECK(code_of(bench.store().erase_vehicle_texts("TESTVN00NOBODY000", by_mk())) == "unknown_vehicle");

  const CheckReport report = got(check(bench.store()));
  CHECK(report.in_order());
  CHECK(report.erased_texts == 4);
  static_cast<void>(got(back_up(bench.path(), bench.file("backup.sqlite").toStdString())));
  for (const char* file : {"workshop/bench.sqlite", "workshop/bench.sqlite-wal", "backup.sqlite"}) {
    for (const char* text : {"ERASEPLATE", "ERASEP1ATE", "Erasename", "ERASENAME"}) {
      INFO(file << " " << text);
      CHECK_FALSE(holds(bench.file(file), text));
    }
  }
  CHECK(holds(bench.file("backup.sqlite"), "KEPTPLATE-3"));
}

TEST_CASE("while somebody reads, erasing says that the log could not be emptied") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("PLATE-TO-ERASE", "Miller/77");
  const std::string vehicle = job.state().opened->vehicle_key;
  went(bench.store().connection().run_script("PRAGMA busy_timeout = 0"));
  {
    const auto reader = got(Connection::open(QString::fromStdString(bench.path()), Access::look));
    went(reader->run_script("BEGIN; SELECT * FROM job"));
    CHECK(code_of(bench.store().erase_vehicle_texts(vehicle, by_mk())) == "erased_in_use");
  }
  CHECK(got(bench.store().erase_vehicle_texts(vehicle, by_mk())) == 0);
  CHECK_FALSE(holds(bench.file("workshop/bench.sqlite-wal"), "PLATE-TO-ERASE"));
}

TEST_CASE("a text that is not there cannot be erased") {
  Workbench bench;
  CHECK(code_of(bench.store().erase_private_text(mk, by_mk())) == "unknown_text");
  bench.open(Mode::look_only);
  CHECK(code_of(bench.store().erase_private_text(mk, by_mk())) == "look_only");
}

}  // namespace shimwright::store

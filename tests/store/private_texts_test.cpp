#include <QFile>

#include "connection.h"
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

TEST_CASE("a text that is not there cannot be erased") {
  Workbench bench;
  CHECK(code_of(bench.store().erase_private_text(mk, by_mk())) == "unknown_text");
  bench.open(Mode::look_only);
  CHECK(code_of(bench.store().erase_private_text(mk, by_mk())) == "look_only");
}

}  // namespace shimwright::store

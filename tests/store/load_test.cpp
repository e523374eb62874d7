#include "load.h"

#include "sample_entries.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a job loads with all that was stored for it") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("HL-MK 412", "Miller/77");
  for (const job::EntryBody& body : job::test::sample_bodies()) {
    if (!std::holds_alternative<job::Opened>(body)) {
      job.add(body);
    }
  }
  const LoadedJob loaded = got(bench.store().load(job.id()));
  CHECK(loaded.id == job.id());
  CHECK(loaded.entries == job.state().entries);
  CHECK(loaded.stored.size() == loaded.entries.size());
  went(record::check_chain(job.id(), loaded.stored));
  CHECK(loaded.sheets.job_hash == record::sha256_hex(shipped("sheets/dry-pack-renewal.json")));
  CHECK(loaded.sheets.spec_hash == record::sha256_hex(shipped("specs/D7-2.json")));
  const auto& opened = *job.state().opened;
  CHECK(loaded.private_texts == std::map<std::string, std::optional<std::string>>{
                                    {opened.plate->id, "HL-MK 412"}, {opened.customer_reference->id, "Miller/77"}});
}

TEST_CASE("a job that is not there is said to be not there") {
  Workbench bench;
  CHECK(code_of(bench.store().load(mk)) == "unknown_job");
}

TEST_CASE("an entry of a newer program is named with its place") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(job::Noted{{}, "a"});
  bench.sabotage("DROP TRIGGER entry_is_not_changed; UPDATE entry SET kind = 'sung' WHERE seq = 2");
  const auto loaded = bench.store().load(job.id());
  REQUIRE_FALSE(loaded);
  CHECK(loaded.error().code == "unknown_kind");
  CHECK(loaded.error().place == "entry 2");
}

TEST_CASE("a job that does not begin with its opening is refused with its place") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(job::Noted{{}, "a"});
  bench.sabotage(
      "PRAGMA foreign_keys = OFF; DROP TRIGGER entry_is_not_deleted; DELETE FROM entry WHERE seq = 1 AND job = '" +
      QByteArray::fromStdString(job.id()) + "'");
  const auto loaded = bench.store().load(job.id());
  REQUIRE_FALSE(loaded);
  CHECK(loaded.error().code == "not_foldable");
  CHECK(loaded.error().place == "entry 1");
}

}  // namespace shimwright::store

#include "connection.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("what was appended is there for another connection at once, and after closing") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(job::Done{{"battery-off", 1}});
  const auto other = got(Store::open(bench.path(), {Mode::look_only, "", 0}));
  CHECK(got(other->load(job.id())).entries == job.state().entries);
  bench.open();
  CHECK(got(bench.store().load(job.id())).entries == job.state().entries);
}

TEST_CASE("a commit reaches the disk before it is acknowledged") {
  Workbench bench;
  Connection& connection = bench.store().connection();
  CHECK(got(connection.value("PRAGMA journal_mode")) == text_value("wal"));
  CHECK(got(connection.value("PRAGMA synchronous")) == number_value(2));
}

TEST_CASE("entries of one command stand or fall together") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const auto tried = job.try_to_add({job::Done{{"battery-off", 1}}, job::Noted{{}, "broken \xff"}});
  CHECK(code_of(tried) == "not_utf8");
  CHECK(got(bench.store().load(job.id())).entries.size() == 1);
  job.add(job::Noted{{}, "whole"});
  CHECK(got(bench.store().load(job.id())).entries.size() == 2);
}

TEST_CASE("an entry is neither changed nor deleted by plain SQL") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  Connection& connection = bench.store().connection();
  for (const char* sql :
       {"UPDATE entry SET person = 'x'", "DELETE FROM entry", "UPDATE chain_head SET seq = 9", "DELETE FROM chain_head",
        "DELETE FROM register_change", "UPDATE job_sheet SET issue = 9", "DELETE FROM spec_sheet",
        "DELETE FROM private_text", "UPDATE private_text SET text = 'another'"}) {
    INFO(sql);
    CHECK(code_of(connection.execute(sql)) == "kept_for_ever");
  }
}

TEST_CASE("who comes second with the same entry is told to load again") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  TestJob behind = job;
  job.add(job::Done{{"battery-off", 1}});
  const auto tried = behind.try_to_add({job::Noted{{}, "late"}});
  REQUIRE_FALSE(tried);
  CHECK(tried.error().code == "lost_race");
  CHECK(tried.error().place == "entry 2");
  CHECK(tried.error().in_english().find("open the job again") != std::string::npos);
  CHECK(got(bench.store().load(job.id())).entries.size() == 2);
}

TEST_CASE("a job on a sheet that is not in the store is refused") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job::Opened opened;
  opened.sheet_hash = std::string(64, '0');
  opened.spec_hash = bench.spec();
  CHECK(code_of(job.try_to_add({opened})) == "unknown_sheet");
  CHECK(code_of(job.try_to_add({job::Noted{{}, "before it was opened"}})) == "not_opened");
}

TEST_CASE("a full disk refuses the entry and keeps the job as it was") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  Connection& connection = bench.store().connection();
  const auto pages = got(connection.value("PRAGMA page_count"));
  went(
      connection.run_script("PRAGMA max_page_count = " + QByteArray::number(qlonglong{std::get<std::int64_t>(pages)})));
  const auto tried = job.try_to_add({job::Noted{{}, std::string(100000, 'x')}});
  REQUIRE_FALSE(tried);
  CHECK(tried.error().code == "disk_full");
  CHECK(tried.error().in_english().find("not saved") != std::string::npos);
  went(connection.run_script("PRAGMA max_page_count = 1000000"));
  job.add(job::Noted{{}, "room again"});
  CHECK(got(bench.store().load(job.id())).entries.size() == 2);
}

TEST_CASE("nothing is written through a store opened for looking") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.open(Mode::look_only);
  CHECK(code_of(job.try_to_add({job::Done{{"battery-off", 1}}})) == "look_only");
  CHECK(code_of(bench.store().connection().execute("DELETE FROM photo")) == "look_only");
}

TEST_CASE("no entries are no transaction") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const HeadsEnd before = got(bench.store().heads_end());
  went(job.try_to_add({}));
  CHECK(got(bench.store().heads_end()) == before);
}

}  // namespace shimwright::store

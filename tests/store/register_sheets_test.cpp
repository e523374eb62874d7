#include "shimwright/record/hash.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a sheet is kept byte for byte under the hash of its bytes") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const std::string json = shipped("specs/D7-2.json");
  CHECK(bench.spec() == record::sha256_hex(json));
  const SheetIssue issue = got(registers.spec_sheet(bench.spec()));
  CHECK(issue.json == json);
  CHECK(issue.name == "D7");
  CHECK(issue.issue == 2);
  CHECK(issue.added_at_ms == by_mk().moment.at_ms);
  CHECK(got(registers.job_sheet(bench.sheet())).name == "dry-pack-renewal");
  CHECK(code_of(registers.job_sheet(bench.spec())) == "unknown_sheet");
}

TEST_CASE("the same bytes again change nothing") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  CHECK(got(registers.add_spec_sheet(shipped("specs/D7-2.json"), by_mk(9))) == bench.spec());
  CHECK(got(registers.changes("spec_sheet", bench.spec())).size() == 1);
}

TEST_CASE("an issue number stands for one set of values") {
  Workbench bench;
  const auto added = bench.store().registers().add_spec_sheet(shipped("specs/D7-2.json") + "\n", by_mk());
  REQUIRE_FALSE(added);
  CHECK(added.error().code == "issue_taken");
  CHECK(added.error().in_english().find("Issue 2 of D7") != std::string::npos);
}

TEST_CASE("the latest issue of each is offered") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  static_cast<void>(got(registers.add_spec_sheet(shipped("specs/D7-1.json"), by_mk())));
  static_cast<void>(got(registers.add_spec_sheet(shipped("specs/D6-1.json"), by_mk())));
  const auto latest = got(registers.spec_sheets());
  REQUIRE(latest.size() == 2);
  CHECK(latest[0].name == "D6");
  CHECK(latest[1].name == "D7");
  CHECK(latest[1].issue == 2);
  CHECK(got(registers.job_sheets()).size() == 1);
}

TEST_CASE("a sheet that is not valid is refused at its place") {
  Workbench bench;
  CHECK_FALSE(bench.store().registers().add_spec_sheet("{}", by_mk()));
  CHECK_FALSE(bench.store().registers().add_job_sheet("no json", by_mk()));
}

}  // namespace shimwright::store

#include "shimwright/shell/stores.h"

#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <map>

#include "sheets.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/check.h"
#include "shimwright/store/registers.h"

using namespace shimwright;

namespace {

/// The shipped job sheet under another issue number.
std::string job_sheet_of_issue(int issue) {
  std::string text = *cli::shipped_job_sheet("dry-pack-renewal");
  const std::string shipped = R"("issue": 3)";
  REQUIRE(text.find(shipped) != std::string::npos);
  return text.replace(text.find(shipped), shipped.size(), R"("issue": )" + std::to_string(issue));
}

struct OldStore {
  QTemporaryDir folder;
  std::unique_ptr<store::Store> store =
      *store::Store::open(folder.filePath("s.shimwright").toStdString(), {store::Mode::read_write, "", 1});
  job::Moment now{1795770000000, 0, false};

  store::Registers& registers() { return store->registers(); }
  void add_job_sheet(int issue) { REQUIRE(registers().add_job_sheet(job_sheet_of_issue(issue), {"", now})); }
  void add_spec_sheet(const char* name) {
    REQUIRE(registers().add_spec_sheet(*cli::shipped_spec_sheet(name), {"", now}));
  }
};

std::map<std::string, std::int64_t> issues(const Result<std::vector<store::SheetIssue>>& sheets) {
  std::map<std::string, std::int64_t> latest;
  for (const store::SheetIssue& each : *sheets) {
    latest[each.name] = each.issue;
  }
  return latest;
}

}  // namespace

TEST_CASE("the own store and the demonstration lie in folders of their own") {
  const shell::StorePlaces places = shell::places_of_this_person();
  CHECK(places.own.front() == '/');
  CHECK(places.demo.find("/demo/") != std::string::npos);
  CHECK(places.own.find("/demo/") == std::string::npos);
}

TEST_CASE("a workshop is begun with sheets and its first person, and may be begun again after a refusal") {
  const QTemporaryDir folder;
  auto store = store::Store::open(folder.filePath("s.shimwright").toStdString(), {store::Mode::read_write, "", 1});
  REQUIRE(store);
  store::IdSource ids;
  const job::Moment now{1795770000000, 0, false};
  const shell::Beginning beginning{"Own Workshop", "1 Lane", "Ada Bench", "AB"};
  REQUIRE(shell::begin_workshop(**store, beginning, ids, now));
  REQUIRE(shell::begin_workshop(**store, beginning, ids, now));
  store::Registers& registers = (*store)->registers();
  CHECK(registers.persons()->size() == 1);
  CHECK(registers.job_sheets()->size() == 1);
  CHECK(registers.spec_sheets()->size() == 2);
  const auto workshop = registers.workshop();
  REQUIRE(workshop);
  REQUIRE(*workshop);
  CHECK((**workshop).name == "Own Workshop");
  CHECK_FALSE(shell::is_demo_workshop(**store));
  const shell::Beginning another{"", "", "Rui Tavares", "RT"};
  REQUIRE(shell::begin_workshop(**store, another, ids, now));
  CHECK((**registers.workshop()).name == "Own Workshop");
  CHECK(registers.persons()->size() == 2);
}

TEST_CASE("a workshop is offered the later issues of its sheets, beside those it has, once") {
  OldStore old;
  old.add_job_sheet(1);
  old.add_spec_sheet("D7-2");
  for (int time = 0; time < 2; ++time) {
    REQUIRE(shell::add_later_issues(*old.store, old.now));
    CHECK(issues(old.registers().job_sheets()) == std::map<std::string, std::int64_t>{{"dry-pack-renewal", 3}});
    CHECK(issues(old.registers().spec_sheets()) == std::map<std::string, std::int64_t>{{"D7", 3}});
  }
  const std::string first = record::sha256_hex(job_sheet_of_issue(1));
  CHECK(old.registers().job_sheet(first)->issue == 1);
  CHECK(store::check(*old.store)->in_order());
}

TEST_CASE("a workshop's own issues stay the latest, and what it never had is not brought") {
  OldStore old;
  old.add_job_sheet(7);
  REQUIRE(shell::add_later_issues(*old.store, old.now));
  CHECK(issues(old.registers().job_sheets()) == std::map<std::string, std::int64_t>{{"dry-pack-renewal", 7}});
  CHECK(old.registers().spec_sheets()->empty());
}

#include "shimwright/store/stock.h"

#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* tray_id = "01930000-0000-7000-8000-000000000041";

/// The tray the shipped sheet takes the large bearing's shims from, counted at that minute.
Tray counted_tray(Workbench& bench, std::int64_t minute, const std::string& name) {
  Tray tray{tray_id,
            name,
            {{"1.60", quantity::Length(1601), 0.002, 5},
             {"1.65", quantity::Length(1650), 0.002, 1},
             {"1.70", quantity::Length(1702), 0.002, std::nullopt}}};
  for (const char* each : {"1.60", "1.65", "1.70"}) {
    tray.stock[each].counted_at_ms = by_mk(minute).moment.at_ms;
  }
  went(bench.store().registers().put(tray, by_mk(minute)));
  return tray;
}

job::EntryBody chosen(const std::string& shim) {
  job::ShimChosen body;
  body.at = {"large-gauge-fit", 1};
  body.side = job::Side::lower;
  body.shim = shim;
  body.thickness = quantity::Length(1600);
  return body;
}

std::vector<std::optional<int>> counts(const Tray& tray) {
  std::vector<std::optional<int>> found;
  for (const job::TrayShim& each : tray.shims) {
    found.push_back(each.count);
  }
  return found;
}

std::string large_tray_name(Workbench& bench) {
  const auto issue = got(bench.store().registers().spec_sheet(bench.spec()));
  return got(sheet::read_spec_sheet(issue.json)).side(job::Side::lower).tray_name;
}

using Counts = std::vector<std::optional<int>>;

}  // namespace

TEST_CASE("a count goes down by what jobs took since, and up by what came back") {
  Workbench bench;
  const std::string name = large_tray_name(bench);
  TestJob before(bench, "a1", "101");
  before.open();
  before.add(chosen("1.65"));  // entries are a minute apart: this one lies before the count
  const Tray tray = counted_tray(bench, 30, name);
  CHECK(counts(got(as_it_lies(bench.store(), tray))) == Counts{5, 1, std::nullopt});
  for (int filler = 0; filler < 40; ++filler) {
    before.add(job::Noted{{}, "later"});
  }
  before.add(chosen("1.60"));
  CHECK(counts(got(as_it_lies(bench.store(), tray))) == Counts{4, 2, std::nullopt});
  before.add(job::Withdrawn{before.last().seq, "slip"});
  CHECK(counts(got(as_it_lies(bench.store(), tray))) == Counts{5, 1, std::nullopt});
}

TEST_CASE("a count never goes below nothing, and one without its day stays as it is") {
  Workbench bench;
  Tray tray = counted_tray(bench, -10, large_tray_name(bench));
  for (const char* last : {"a1", "a2"}) {
    TestJob job(bench, last, last);
    job.open();
    job.add(chosen("1.65"));
  }
  CHECK(counts(got(as_it_lies(bench.store(), tray))) == Counts{5, 0, std::nullopt});
  tray.stock.clear();
  CHECK(counts(got(as_it_lies(bench.store(), tray))) == Counts{5, 1, std::nullopt});
}

TEST_CASE("shims of another tray are not counted") {
  Workbench bench;
  const Tray other = counted_tray(bench, -10, "another tray");
  TestJob job(bench, "a1", "101");
  job.open();
  job.add(chosen("1.65"));
  CHECK(counts(got(as_it_lies(bench.store(), other))) == Counts{5, 1, std::nullopt});
}

TEST_CASE("a job sees the tray as it lies there, and the person's feel") {
  Workbench bench;
  static_cast<void>(counted_tray(bench, -10, large_tray_name(bench)));
  went(bench.store().registers().put(
      Person{mk, "Mara Kern", "MK", std::nullopt, true, PersonRole::technician, std::nullopt, 9000, "2026-11-20"},
      by_mk()));
  TestJob job(bench, "a1", "101");
  job.open();
  job.add(chosen("1.65"));
  const auto spec = got(sheet::read_spec_sheet(got(bench.store().registers().spec_sheet(bench.spec())).json));
  const auto context = got(bench.store().context("new", spec, "TESTVN009TA030417", by_mk(50)));
  CHECK(context.trays.at(job::Side::lower)[1].count == std::optional<int>(0));
  CHECK(context.feel_nm == std::optional<std::int64_t>(9000));
  By nobody = by_mk(50);
  nobody.person = rt;
  CHECK_FALSE(got(bench.store().context("new", spec, "TESTVN009TA030417", nobody)).feel_nm);
}

TEST_CASE("open jobs want shims of the trays their sheets name, closed ones none") {
  Workbench bench;
  CHECK(got(wanted_by_open_jobs(bench.store(), by_mk())).empty());
  TestJob one(bench, "a1", "101");
  one.open();
  TestJob two(bench, "a2", "102");
  two.open();
  const auto demands = got(wanted_by_open_jobs(bench.store(), by_mk(60)));
  const auto large = demands.find(large_tray_name(bench));
  REQUIRE(large != demands.end());
  CHECK(large->second.jobs >= 2);
  double all = 0;
  for (const auto& [shim, count] : large->second.wanted) {
    CHECK(count >= 0);
    all += count;
  }
  CHECK(all <= large->second.jobs + 1e-9);
  CHECK(large->second.without_belief <= large->second.jobs);
  CHECK(got(wanted_by_open_jobs(bench.store(), by_mk(60), 1)).at(large_tray_name(bench)).jobs < large->second.jobs);
}

}  // namespace shimwright::store

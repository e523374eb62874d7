#include "shimwright/store/sheet_checks.h"

#include <nlohmann/json.hpp>

#include "connection.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* check_id = "01930000-0000-7000-8000-0000000000c1";
constexpr const char* other_id = "01930000-0000-7000-8000-0000000000c2";
constexpr std::int64_t a_day = 24 * 60;

By by_rt(std::int64_t minutes = 0) {
  return {rt, by_mk(minutes).moment};
}

/// A shipped file under another name and without its mark, as a workshop's own would be.
std::string real_file(const std::string& file, const char* name_field, const std::string& name, int issue = 1) {
  auto sheet = nlohmann::ordered_json::parse(shipped(file));
  sheet["demonstration"] = false;
  sheet[name_field] = name;
  sheet["issue"] = issue;
  return sheet.dump();
}

std::string real_spec(int issue = 1) {
  return real_file("specs/D7-2.json", "gearbox", "K9", issue);
}

std::string real_job_sheet(int issue = 1) {
  return real_file("sheets/dry-pack-renewal.json", "name", "own-sheet", issue);
}

Result<void> open_on(Workbench& bench, const std::string& last, const std::string& sheet, const std::string& spec) {
  TestJob job(bench, last, "20" + last);
  job::Opened opened;
  opened.number = "20" + last;
  opened.vehicle_key = "TESTVN009TA030417";
  opened.gearbox = "K9";
  opened.sheet_hash = sheet;
  opened.spec_hash = spec;
  opened.language = "en";
  return job.try_to_add({opened});
}

}  // namespace

TEST_CASE("a sheet is checked by another person on the same day, by the same one later and then said so") {
  Workbench bench;
  const std::string spec = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
  CHECK(got(sheet_entered_by(bench.store(), spec)).person == mk);
  CHECK(code_of(check_sheet(bench.store(), check_id, spec, by_mk(5))) == "check_too_soon");
  CHECK(got(checks_of_sheet(bench.store(), spec)).empty());
  const SheetCheck second = got(check_sheet(bench.store(), check_id, spec, by_rt(5)));
  CHECK(second.second_person);
  const SheetCheck own = got(check_sheet(bench.store(), other_id, spec, by_mk(a_day)));
  CHECK_FALSE(own.second_person);
  const auto checks = got(checks_of_sheet(bench.store(), spec));
  REQUIRE(checks.size() == 2);
  CHECK(checks[0] == second);
  CHECK(checks[1] == own);
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a person checks an issue once") {
  Workbench bench;
  const std::string spec = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
  const SheetCheck first = got(check_sheet(bench.store(), check_id, spec, by_rt(5)));
  CHECK(got(check_sheet(bench.store(), other_id, spec, by_rt(9))) == first);
  CHECK(got(checks_of_sheet(bench.store(), spec)).size() == 1);
}

TEST_CASE("what is no check is refused") {
  Workbench bench;
  const std::string spec = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
  CHECK(code_of(check_sheet(bench.store(), "x", spec, by_rt())) == "bad_id");
  CHECK(code_of(check_sheet(bench.store(), check_id, "no hash", by_rt())) == "unknown_sheet");
  CHECK(code_of(check_sheet(bench.store(), check_id, spec, {other_id, by_mk().moment})) == "unknown_person");
  bench.open(Mode::look_only);
  CHECK(code_of(check_sheet(bench.store(), check_id, spec, by_rt())) == "look_only");
}

TEST_CASE("a job is opened on sheets that were checked or carry the demonstration mark") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const std::string spec = got(registers.add_spec_sheet(real_spec(), by_mk()));
  const std::string sheet = got(registers.add_job_sheet(real_job_sheet(), by_mk()));
  CHECK(got(sheet_may_be_used(bench.store(), bench.spec())));
  CHECK(got(sheet_may_be_used(bench.store(), bench.sheet())));
  CHECK_FALSE(got(sheet_may_be_used(bench.store(), spec)));
  went(open_on(bench, "41", bench.sheet(), bench.spec()));
  CHECK(code_of(open_on(bench, "42", bench.sheet(), spec)) == "not_checked");
  CHECK(code_of(open_on(bench, "42", sheet, bench.spec())) == "not_checked");
  static_cast<void>(got(check_sheet(bench.store(), check_id, spec, by_rt())));
  CHECK(code_of(open_on(bench, "42", sheet, spec)) == "not_checked");
  CHECK(got(bench.store().job_count()) == 1);
  static_cast<void>(got(check_sheet(bench.store(), other_id, sheet, by_rt())));
  went(open_on(bench, "42", sheet, spec));
  CHECK(got(use_of_sheet(bench.store(), spec)).jobs == 1);
  CHECK(got(use_of_sheet(bench.store(), sheet)).open == 1);
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a new issue is checked anew, and a job that is open keeps its own") {
  Workbench bench;
  const std::string first = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
  static_cast<void>(got(check_sheet(bench.store(), check_id, first, by_rt())));
  went(open_on(bench, "43", bench.sheet(), first));
  const std::string second = got(bench.store().registers().add_spec_sheet(real_spec(2), by_mk()));
  CHECK_FALSE(got(sheet_may_be_used(bench.store(), second)));
  CHECK(got(sheet_may_be_used(bench.store(), first)));
  const auto usable = got(usable_spec_sheets(bench.store()));
  REQUIRE(usable.size() == 2);
  CHECK(usable[0].hash == bench.spec());
  CHECK(usable[1].hash == first);
  CHECK(got(usable_job_sheets(bench.store())).size() == 1);
  CHECK(got(bench.store().load("01930000-0000-7000-8000-000000004300")).sheets.spec_hash == first);
  const auto issues = got(issues_of_spec_sheet(bench.store(), "K9"));
  REQUIRE(issues.size() == 2);
  CHECK(issues[0].hash == second);
  CHECK(issues[1].hash == first);
}

TEST_CASE("a demonstration sheet does not lose its mark by a new issue") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  CHECK(code_of(registers.add_spec_sheet(real_file("specs/D7-2.json", "gearbox", "D7", 3), by_mk())) == "mark_lost");
  CHECK(code_of(registers.add_job_sheet(real_file("sheets/dry-pack-renewal.json", "name", "dry-pack-renewal", 4),
                                        by_mk())) == "mark_lost");
}

TEST_CASE("an issue of a job sheet that lost a hold point is not taken without a reason") {
  Workbench bench;
  auto sheet = nlohmann::ordered_json::parse(shipped("sheets/dry-pack-renewal.json"));
  sheet["issue"] = 4;
  sheet["stages"][0]["steps"].erase(sheet["stages"][0]["steps"].size() - 1);
  CHECK(code_of(bench.store().registers().add_job_sheet(sheet.dump(), by_mk())) == "no_reason");
  CHECK(got(issues_of_job_sheet(bench.store(), "dry-pack-renewal")).size() == 1);
}

TEST_CASE("a check made or changed beside the program is found") {
  const std::vector<std::pair<const char*, const char*>> cases = {
      {"INSERT INTO sheet_check SELECT '01930000-0000-7000-8000-0000000000c9', hash, "
       "'01930000-0000-7000-8000-000000000031', 1, 0, 1 FROM spec_sheet WHERE name = 'D7'",
       "sheet_check_differs"},
      {"DROP TRIGGER sheet_check_is_not_changed; UPDATE sheet_check SET second_person = 0", "sheet_check_differs"},
      {"DROP TRIGGER sheet_check_is_not_deleted; DELETE FROM sheet_check", "sheet_check_missing"},
      {"INSERT INTO taken_away SELECT hash, 1, 'a', 'caution', 'b', 'c' FROM job_sheet", "taken_away_differs"}};
  for (const auto& [sql, code] : cases) {
    INFO(sql);
    Workbench bench;
    const std::string spec = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
    static_cast<void>(got(check_sheet(bench.store(), check_id, spec, by_rt())));
    bench.sabotage(sql);
    const CheckReport report = got(check(bench.store()));
    CHECK(std::any_of(report.findings.begin(), report.findings.end(),
                      [&code](const Finding& each) { return each.code == code; }));
  }
}

TEST_CASE("triggers keep checks and what was taken away") {
  Workbench bench;
  const std::string spec = got(bench.store().registers().add_spec_sheet(real_spec(), by_mk()));
  static_cast<void>(got(check_sheet(bench.store(), check_id, spec, by_rt())));
  Connection& connection = bench.store().connection();
  CHECK_FALSE(connection.execute("UPDATE sheet_check SET second_person = 0"));
  CHECK_FALSE(connection.execute("DELETE FROM sheet_check"));
}

}  // namespace shimwright::store

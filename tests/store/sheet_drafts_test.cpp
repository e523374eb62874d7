#include "shimwright/store/sheet_drafts.h"

#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/sheet/taken_over.h"
#include "shimwright/store/check.h"
#include "shimwright/store/sheet_checks.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* draft_id = "01930000-0000-7000-8000-0000000000d1";
constexpr const char* sheet_id = "01930000-0000-7000-8000-0000000000d2";

KeptDraft begun(Begun how, sheet::SheetDraft draft, std::optional<std::string> from = std::nullopt) {
  return {draft_id, std::move(draft), how, std::move(from), {}, "", 0, "", 0};
}

sheet::SheetDraft put(const sheet::SheetDraft& draft, const std::string& place, const std::string& text) {
  return got(sheet::with_text(draft, place, text));
}

KeptDraft next_job_sheet(Workbench& bench) {
  const SheetIssue issue = got(bench.store().registers().job_sheet(bench.sheet()));
  return begun(Begun::as_next_issue,
               sheet::next_issue_of(sheet::SheetKind::job_sheet, issue.json, sheet_id, issue.issue + 1), bench.sheet());
}

/// The first step of the shipped job sheet that is a hold point.
const std::string hold_point = "/stages/0/steps/12/hold_point";

}  // namespace

TEST_CASE("a draft is on the disk at each field, whatever was typed, and is found after the program ended") {
  Workbench bench;
  const auto job_sheet = got(sheet::read_job_sheet(shipped("sheets/dry-pack-renewal.json")));
  KeptDraft draft = begun(Begun::from_nothing, sheet::empty_spec_sheet(sheet_id, job_sheet));
  went(keep_draft(bench.store(), draft, by_mk()));
  draft.draft = put(put(draft.draft, "/gearbox", "K9"), "/lower/float/least_mm", "0,2,5 ?");
  went(keep_draft(bench.store(), draft, {rt, by_mk(7).moment}));
  bench.close();
  bench.open();
  const auto drafts = got(sheet_drafts(bench.store(), sheet::SheetKind::spec_sheet));
  REQUIRE(drafts.size() == 1);
  CHECK(drafts[0].draft == draft.draft);
  CHECK(drafts[0].begun_by == mk);
  CHECK(drafts[0].changed_by == rt);
  CHECK(drafts[0].changed_at_ms == by_mk(7).moment.at_ms);
  CHECK(got(sheet_drafts(bench.store(), sheet::SheetKind::job_sheet)).empty());
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a draft with a fault becomes no issue and stays") {
  Workbench bench;
  const auto job_sheet = got(sheet::read_job_sheet(shipped("sheets/dry-pack-renewal.json")));
  went(keep_draft(bench.store(), begun(Begun::from_nothing, sheet::empty_spec_sheet(sheet_id, job_sheet)), by_mk()));
  CHECK_FALSE(make_issue(bench.store(), draft_id, by_mk()));
  CHECK(got(sheet_drafts(bench.store(), sheet::SheetKind::spec_sheet)).size() == 1);
  went(throw_draft_away(bench.store(), draft_id));
  CHECK(got(sheet_drafts(bench.store(), sheet::SheetKind::spec_sheet)).empty());
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "unknown_draft");
}

TEST_CASE("a next issue is kept and its draft is gone") {
  Workbench bench;
  const SheetIssue issue = got(bench.store().registers().spec_sheet(bench.spec()));
  const auto draft = sheet::next_issue_of(sheet::SheetKind::spec_sheet, issue.json, sheet_id, 3);
  went(keep_draft(bench.store(), begun(Begun::as_next_issue, put(draft, "/lower/float/least_mm", "0.30"), bench.spec()),
                  by_mk()));
  const std::string hash = got(make_issue(bench.store(), draft_id, by_mk()));
  CHECK(got(bench.store().registers().spec_sheet(hash)).issue == 3);
  CHECK(got(sheet_entered_by(bench.store(), hash)).person == mk);
  CHECK(got(sheet_drafts(bench.store(), sheet::SheetKind::spec_sheet)).empty());
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a copy keeps the demonstration mark, even if its file was changed by hand") {
  Workbench bench;
  const SheetIssue issue = got(bench.store().registers().spec_sheet(bench.spec()));
  auto draft = put(sheet::copy_of(sheet::SheetKind::spec_sheet, issue.json, sheet_id), "/gearbox", "K9");
  const std::size_t mark = draft.body.find("\"demonstration\": true");
  REQUIRE(mark != std::string::npos);
  draft.body.replace(mark, 21, "\"demonstration\": false");
  went(keep_draft(bench.store(), begun(Begun::as_copy, draft, bench.spec()), by_mk()));
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "mark_lost");
}

TEST_CASE("a hold point goes with a reason, which stays beside the issue and in its history") {
  Workbench bench;
  KeptDraft draft = next_job_sheet(bench);
  REQUIRE(sheet::read_job_sheet(draft.draft.body)->steps()[12]->hold_point);
  draft.draft = put(draft.draft, hold_point, "no");
  went(keep_draft(bench.store(), draft, by_mk()));
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "no_reason");
  draft.reasons = got(lost_by_draft(bench.store(), draft));
  REQUIRE(draft.reasons.size() == 1);
  draft.reasons[0].reason = "It is decided at the reception.";
  went(keep_draft(bench.store(), draft, by_mk()));
  CHECK(got(sheet_draft(bench.store(), draft_id)).reasons == draft.reasons);
  const std::string hash = got(make_issue(bench.store(), draft_id, by_mk()));
  CHECK(got(lost_by_sheet(bench.store(), hash)) == draft.reasons);
  const auto changes = got(bench.store().registers().changes("job_sheet", hash));
  CHECK(changes.front().body.find("It is decided at the reception.") != std::string::npos);
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a copy under another name does not lose a hold point without a reason either") {
  Workbench bench;
  const SheetIssue issue = got(bench.store().registers().job_sheet(bench.sheet()));
  auto draft = sheet::copy_of(sheet::SheetKind::job_sheet, issue.json, sheet_id);
  draft = put(put(draft, "/name", "own-sheet"), hold_point, "no");
  KeptDraft kept = begun(Begun::as_copy, draft, bench.sheet());
  went(keep_draft(bench.store(), kept, by_mk()));
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "no_reason");
  kept.reasons = got(lost_by_draft(bench.store(), kept));
  kept.reasons.at(0).reason = "Not in this kind of job.";
  went(keep_draft(bench.store(), kept, by_mk()));
  CHECK(got(lost_by_sheet(bench.store(), got(make_issue(bench.store(), draft_id, by_mk())))).size() == 1);
}

TEST_CASE("a hold point that came with a stage taken over goes with a reason, also on a sheet written from nothing") {
  Workbench bench;
  const std::string other = got(bench.store().registers().job_sheet(bench.sheet())).json;
  sheet::SheetDraft draft = sheet::empty_job_sheet(sheet_id);
  for (const char* place : {"/name", "/title/en", "/stages/0/id", "/stages/0/title/en", "/stages/0/steps/0/title/en"}) {
    draft = put(draft, place, "own");
  }
  const auto with = got(sheet::with_stage(draft, other, "receive", "/stages/0"));
  KeptDraft own = begun(Begun::from_nothing, put(with.draft, hold_point, "no"));
  const auto lost = got(lost_by_draft(bench.store(), own));
  REQUIRE(lost.size() == 1);
  went(keep_draft(bench.store(), own, by_mk()));
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "no_reason");
  own.reasons = lost;
  own.reasons[0].reason = "It is decided at the reception.";
  went(keep_draft(bench.store(), own, by_mk()));
  const std::string hash = got(make_issue(bench.store(), draft_id, by_mk()));
  CHECK(got(lost_by_sheet(bench.store(), hash)) == own.reasons);
  // What the draft kept beside the sheet is no part of the issue.
  CHECK(got(bench.store().registers().job_sheet(hash)).json.find('#') == std::string::npos);
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("nothing is kept where the store is only looked at") {
  Workbench bench;
  const KeptDraft draft = next_job_sheet(bench);
  bench.open(Mode::look_only);
  CHECK(code_of(keep_draft(bench.store(), draft, by_mk())) == "look_only");
  CHECK(code_of(throw_draft_away(bench.store(), draft_id)) == "look_only");
  CHECK(code_of(make_issue(bench.store(), draft_id, by_mk())) == "look_only");
}

}  // namespace shimwright::store

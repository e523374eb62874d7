#include <algorithm>
#include <cstdlib>
#include <set>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"
#include "shimwright/sheet/taken_away.h"

namespace shimwright::sheet {

using namespace test;

namespace {

SheetDraft shipped_job_draft() {
  return shipped_draft(SheetKind::job_sheet);
}

std::string place_of_step(const SheetDraft& draft, const std::string& id) {
  for (const DraftField& field : fields_of(draft)) {
    const bool of_step = field.place.find("/steps/") != std::string::npos;
    if (of_step && field.text == id && field.place.substr(field.place.rfind('/')) == "/id") {
      return field.place.substr(0, field.place.rfind('/'));
    }
  }
  throw std::logic_error("no such step: " + id);
}

std::string code_of_move(const SheetDraft& draft, const std::string& id, int by) {
  const auto turned = moved(draft, place_of_step(draft, id), by);
  CHECK((turned || is_sentence(turned.error().in_english())));
  return turned ? "" : turned.error().code;
}

std::multiset<std::string> steps_in(const SheetDraft& draft) {
  std::multiset<std::string> ids;
  const JobSheet sheet = good_job_sheet(file_of(draft));
  for (const Step* each : sheet.steps()) {
    ids.insert(each->id);
  }
  return ids;
}

}  // namespace

TEST_CASE("a row that stands at the end already stays where it is") {
  const SheetDraft spec = shipped_draft(SheetKind::spec_sheet);
  CHECK(moved(spec, "/parts/0", -1) == MovedRow{spec, "/parts/0"});
  CHECK(moved(spec, "/parts/5", 1) == MovedRow{spec, "/parts/5"});
  const SheetDraft job = shipped_job_draft();
  CHECK(moved(job, "/stages/0/steps/0", -1) == MovedRow{job, "/stages/0/steps/0"});
  CHECK(moved(job, "/stages/11/steps/6", 1) == MovedRow{job, "/stages/11/steps/6"});
  CHECK(moved(job, "/stages/0", -1) == MovedRow{job, "/stages/0"});
}

TEST_CASE("the first step of a stage goes up to the end of the stage before, the last one down to the next") {
  const SheetDraft draft = shipped_job_draft();
  const std::string first = field_text(draft, "/stages/1/steps/0/id");
  const auto up = moved(draft, "/stages/1/steps/0", -1);
  REQUIRE(up);
  CHECK(up->place == "/stages/0/steps/15");
  CHECK(field_text(up->draft, up->place + "/id") == first);
  CHECK(moved(up->draft, up->place, 1)->draft.body == moved(draft, "/stages/1/steps/0", 0)->draft.body);
  const std::string last = field_text(draft, "/stages/0/steps/14/id");
  const auto down = moved(draft, "/stages/0/steps/14", 1);
  REQUIRE(down);
  CHECK(down->place == "/stages/1/steps/0");
  CHECK(field_text(down->draft, "/stages/1/steps/0/id") == last);
}

TEST_CASE("a caution or a reading never leaves its step") {
  SheetDraft draft = with_row(shipped_job_draft(), "/stages/0/steps/1/cautions");
  const auto turned = moved(draft, "/stages/0/steps/1/cautions/0", -1);
  CHECK(turned == MovedRow{draft, "/stages/0/steps/1/cautions/0"});
}

TEST_CASE("a step that another one refers to does not go past it, within its stage or over its border") {
  SheetDraft draft = shipped_job_draft();
  // The laid shim counts until the ring is seated.
  const JobSheet sheet = default_job_sheet();
  const auto& steps = sheet.stage_of("pack-ring-new")->steps;
  REQUIRE(steps.back().id == "pack-ring-seated");
  REQUIRE(steps[steps.size() - 2].id == "pack-ring-new");
  CHECK(code_of_move(draft, "pack-ring-seated", -1) == "wrong_order");
  CHECK(code_of_move(draft, "pack-ring-new", 1) == "wrong_order");
  const auto over = moved(draft, place_of_step(draft, "pack-ring-seated"), 1);
  REQUIRE(over);
  CHECK(faults_of(over->draft).empty());
  CHECK(code_of_move(draft, "locks-out", 1).empty());
  // A whole stage is held to it as well.
  const std::string closing = place_of_step(draft, "locks-out");
  std::string refused;
  for (std::string stage = closing.substr(0, closing.find("/steps")); refused.empty() && stage != "/stages/0";) {
    const auto up = moved(draft, stage, -1);
    refused = up ? "" : up.error().code;
    draft = up ? up->draft : draft;
    stage = up ? up->place : stage;
  }
  CHECK(refused == "wrong_order");
}

TEST_CASE("the signature stays last, and a stage keeps a step") {
  const SheetDraft draft = shipped_job_draft();
  const JobSheet sheet = default_job_sheet();
  const std::string last = sheet.steps().back()->id;
  REQUIRE(std::holds_alternative<SignStep>(sheet.steps().back()->body));
  std::string before_signatures;
  int signatures = 0;
  for (const Step* each : sheet.steps()) {
    const bool signs = std::holds_alternative<SignStep>(each->body);
    signatures += signs ? 1 : 0;
    before_signatures = signs ? before_signatures : each->id;
  }
  SheetDraft turned = draft;
  for (int at = 1; at < signatures; ++at) {
    turned = moved(turned, place_of_step(turned, before_signatures), 1)->draft;
  }
  CHECK(code_of_move(turned, before_signatures, 1) == "no_signature");
  CHECK(code_of_move(with_row(empty_job_sheet(draft_id), "/stages"), "sign", 1) == "too_few");
}

TEST_CASE("a stage takes no more steps than the file may have") {
  SheetDraft draft = shipped_job_draft();
  for (int at = 15; at < 100; ++at) {
    draft = with_row(draft, "/stages/0/steps");
  }
  CHECK(moved(draft, "/stages/1/steps/0", -1).error().code == "too_many");
}

TEST_CASE("an order that is wrong already is no hindrance to putting it right") {
  SheetDraft draft = shipped_job_draft();
  const std::string place = place_of_step(draft, "pack-ring-seated");
  draft = *with_text(draft, place + "/unproven_until", "pack-ring-new");
  REQUIRE(faults_of(draft).size() == 1);
  draft = *with_text(draft, place_of_step(draft, "pack-ring-new") + "/unproven_until", "");
  const auto up = moved(draft, place, -1);
  REQUIRE(up);
  CHECK(faults_of(up->draft).empty());
}

TEST_CASE("however steps and stages are moved, the sheet is read, has all its steps and all that guards them") {
  const SheetDraft shipped = shipped_job_draft();
  const JobSheet before = good_job_sheet(file_of(shipped));
  CHECK(rc::check("for any moves", [&] {
    SheetDraft draft = shipped;
    for (int at = *rc::gen::inRange(1, 12); at > 0; --at) {
      const int by = *rc::gen::element(-1, 1);
      const auto stage = *rc::gen::inRange<std::size_t>(0, before.stages.size());
      const std::string at_stage = "/stages/" + std::to_string(stage);
      // Borders are where it matters.
      const JobSheet now = good_job_sheet(file_of(draft));
      const std::size_t border = by < 0 ? 0 : now.stages[stage].steps.size() - 1;
      const bool whole = *rc::gen::inRange(0, 4) == 0;
      const std::string place = whole ? at_stage : at_stage + "/steps/" + std::to_string(border);
      const auto turned = moved(draft, place, by);
      if (turned && turned->place != place) {
        const bool comes_back = moved(turned->draft, turned->place, -by)->draft == moved(draft, place, 0)->draft;
        RC_ASSERT(comes_back);
        draft = turned->draft;
      }
    }
    RC_ASSERT(faults_of(draft).empty());
    RC_ASSERT(steps_in(draft) == steps_in(shipped));
    RC_ASSERT(taken_away(before, good_job_sheet(file_of(draft))).empty());
  }));
}

}  // namespace shimwright::sheet

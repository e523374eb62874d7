#include "shimwright/sheet/taken_over.h"

#include <algorithm>
#include <set>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"

namespace shimwright::sheet {

using namespace test;

namespace {

std::string shipped_job_file() {
  return shipped_file("sheets/dry-pack-renewal.json");
}

/// Nothing but a signature, in English.
SheetDraft own_draft() {
  SheetDraft draft = empty_job_sheet(draft_id);
  for (const auto& [place, text] :
       std::vector<std::pair<std::string, std::string>>{{"/name", "own-sheet"},
                                                        {"/title/en", "Our own"},
                                                        {"/stages/0/id", "end"},
                                                        {"/stages/0/title/en", "End"},
                                                        {"/stages/0/steps/0/title/en", "Sign"}}) {
    draft = *with_text(draft, place, text);
  }
  return draft;
}

MovedRow taken(const SheetDraft& draft, const std::string& stage, const std::string& before) {
  auto with = with_stage(draft, shipped_job_file(), stage, before);
  INFO((with ? std::string() : with.error().in_english()));
  REQUIRE(with);
  return *with;
}

const Stage& stage_named(const JobSheet& sheet, const std::string& id) {
  const auto found =
      std::find_if(sheet.stages.begin(), sheet.stages.end(), [&id](const Stage& each) { return each.id == id; });
  if (found == sheet.stages.end()) {
    throw std::logic_error("no such stage: " + id);
  }
  return *found;
}

}  // namespace

TEST_CASE("a stage comes with its steps, cautions and hold points, in the languages of the sheet") {
  const MovedRow with = taken(own_draft(), "press-on", "/stages/0");
  CHECK(with.place == "/stages/0");
  CHECK(faults_of(with.draft).empty());
  const JobSheet shipped = default_job_sheet();
  const JobSheet sheet = good_job_sheet(file_of(with.draft));
  const auto& there = stage_named(shipped, "press-on").steps;
  const auto& here = stage_named(sheet, "press-on").steps;
  REQUIRE(here.size() == there.size());
  for (std::size_t at = 0; at < here.size(); ++at) {
    CHECK(here[at].id == there[at].id);
    CHECK(here[at].hold_point == there[at].hold_point);
    CHECK(here[at].cautions.size() == there[at].cautions.size());
    CHECK(here[at].title.by_language.size() == 1);
    CHECK(here[at].unproven_until == there[at].unproven_until);
  }
  CHECK(taken_away_since_taken_over(with.draft).empty());
  const auto german = with_text(own_draft(), "/#languages", "de");
  const JobSheet in_german = good_job_sheet(file_of(taken(*german, "press-on", "/stages/0").draft));
  CHECK(in_german.stages[0].steps[0].title.in("de") == there[0].title.in("de"));
  CHECK(in_german.stages[0].steps[0].title.by_language.size() == 2);
}

TEST_CASE("what comes from a demonstration sheet makes the sheet one") {
  REQUIRE_FALSE(head_of(own_draft()).demonstration);
  CHECK(head_of(taken(own_draft(), "press-on", "/stages/0").draft).demonstration);
  const std::string own = file_of(own_draft());
  CHECK_FALSE(head_of(with_stage(own_draft(), own, "end", "/stages/0")->draft).demonstration);
}

TEST_CASE("short names the sheet has already get a number, and what refers to them follows") {
  const SheetDraft once = taken(own_draft(), "press-on", "/stages/0").draft;
  const SheetDraft twice = taken(once, "press-on", "/stages/1").draft;
  CHECK(field_text(twice, "/stages/1/id") == "press-on-2");
  CHECK(field_text(twice, "/stages/1/steps/0/id") == field_text(twice, "/stages/0/steps/0/id") + "-2");
  CHECK(field_text(twice, "/stages/1/steps/0/unproven_until") == "pack-ring-seated-2");
  CHECK(field_text(twice, "/stages/0/steps/0/unproven_until") == "pack-ring-seated");
  CHECK(faults_of(twice).empty());
  const SheetDraft thrice = taken(twice, "press-on", "/stages/2").draft;
  CHECK(field_text(thrice, "/stages/2/id") == "press-on-3");
  CHECK(faults_of(thrice).empty());
}

TEST_CASE("a long short name keeps to its length with a number") {
  const std::string longest(40, 'a');
  const SheetDraft draft = *with_text(own_draft(), "/stages/0/steps/0/id", longest);
  const MovedRow with = *with_stage(draft, file_of(draft), "end", "/stages/0");
  CHECK(field_text(with.draft, "/stages/0/steps/0/id") == longest.substr(2) + "-2");
  CHECK(faults_of(with.draft).empty());
}

TEST_CASE("what a stage refers to outside of itself is a fault at a field until it is put right") {
  // The locks that come out equal those that went in, in another stage.
  SheetDraft draft = taken(own_draft(), "close-up", "/stages/0").draft;
  const auto faults = faults_of(draft);
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].code == "unknown_step");
  CHECK(field_text(draft, faults[0].place) == "locks-in");
  const std::string equal = faults[0].place.substr(0, faults[0].place.rfind('/'));
  CHECK(faults_of(taken(draft, default_job_sheet().stage_of("locks-in")->id, "/stages/0").draft).empty());
  draft = *with_text(*with_text(draft, equal + "/step", ""), equal + "/channel", "");
  CHECK(faults_of(draft).empty());
}

TEST_CASE("a stage that is not there, and one stage too many, are refused with a sentence") {
  const auto none = with_stage(own_draft(), shipped_job_file(), "no-such-stage", "/stages/0");
  REQUIRE_FALSE(none);
  CHECK(none.error().code == "unknown_stage");
  CHECK(is_sentence(none.error().in_english()));
  SheetDraft draft = own_draft();
  for (int at = 1; at < 40; ++at) {
    draft = with_row(draft, "/stages");
  }
  const auto too_many = with_stage(draft, shipped_job_file(), "press-on", "/stages/0");
  REQUIRE_FALSE(too_many);
  CHECK(too_many.error().code == "too_many");
  CHECK(is_sentence(too_many.error().in_english()));
}

TEST_CASE("a caution or hold point that came with a stage is taken away with a reason only") {
  SheetDraft draft = taken(own_draft(), "press-on", "/stages/0").draft;
  const JobSheet sheet = good_job_sheet(file_of(draft));
  const auto& steps = sheet.stages[0].steps;
  const auto warned = std::find_if(steps.begin(), steps.end(), [](const Step& each) { return !each.cautions.empty(); });
  const auto held = std::find_if(steps.begin(), steps.end(), [](const Step& each) { return each.hold_point; });
  REQUIRE(warned != steps.end());
  REQUIRE(held != steps.end());
  const auto place = [&steps](auto step) { return "/stages/0/steps/" + std::to_string(step - steps.begin()); };
  const SheetDraft unheld = *with_text(draft, place(held) + "/hold_point", "no");
  auto lost = taken_away_since_taken_over(unheld);
  REQUIRE(lost.size() == 1);
  CHECK(lost[0] == TakenAway{held->id, Guard::hold_point, held->title.in_english(), ""});
  CHECK(with_reasons(lost, {}).error().code == "no_reason");
  SheetDraft weaker = *with_text(draft, place(warned) + "/cautions/0/hazard/en", "Mind it.");
  // Another name of the step changes nothing about it, nor does its place.
  weaker = *with_text(weaker, place(warned) + "/id", "other-name");
  const auto turned = moved(taken(weaker, "shim-large", "/stages/0").draft, "/stages/1", -1);
  REQUIRE(turned);
  weaker = turned->draft;
  lost = taken_away_since_taken_over(weaker);
  REQUIRE(lost.size() == 1);
  CHECK(lost[0] == TakenAway{"other-name", Guard::caution, warned->cautions[0].hazard.in_english(), ""});
  // What was taken over by mistake goes as it came.
  CHECK(taken_away_since_taken_over(without(weaker, "/stages/0")).empty());
}

TEST_CASE("whatever stages are taken over, no short name is there twice and nothing they warn of is lost") {
  const JobSheet shipped = default_job_sheet();
  CHECK(rc::check("for any stages", [&shipped] {
    SheetDraft draft = *rc::gen::inRange(0, 2) == 0 ? own_draft() : shipped_draft(SheetKind::job_sheet);
    for (int at = *rc::gen::inRange(1, 5); at > 0; --at) {
      const auto& stage = shipped.stages[*rc::gen::inRange<std::size_t>(0, shipped.stages.size())];
      draft = with_stage(draft, shipped_job_file(), stage.id, "/stages/0")->draft;
    }
    std::set<std::string> ids;
    for (const DraftField& field : fields_of(draft)) {
      const std::string& place = field.place;
      const bool of_step =
          place.find("/steps/") != std::string::npos && std::count(place.begin(), place.end(), '/') == 5;
      if (of_step && place.substr(place.rfind('/')) == "/id") {
        RC_ASSERT(ids.insert(field.text).second);
      }
    }
    for (const Error& each : faults_of(draft)) {
      RC_ASSERT(each.code != "repeated_id");
    }
    RC_ASSERT(taken_away_since_taken_over(draft).empty());
  }));
}

}  // namespace shimwright::sheet

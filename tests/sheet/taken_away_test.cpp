#include "shimwright/sheet/taken_away.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "sheet_files.h"

namespace shimwright::sheet {

namespace {

JobSheet shipped_sheet() {
  return test::default_job_sheet();
}

Step& step_of(JobSheet& sheet, const std::string& id) {
  for (Stage& stage : sheet.stages) {
    for (Step& step : stage.steps) {
      if (step.id == id) {
        return step;
      }
    }
  }
  throw std::logic_error("no such step: " + id);
}

/// How many cautions and hold points a sheet has.
std::size_t guards_of(const JobSheet& sheet) {
  std::size_t count = 0;
  for (const Step* step : sheet.steps()) {
    count += step->cautions.size() + (step->hold_point ? 1 : 0);
  }
  return count;
}

const Caution new_caution{{{{"en", "It can burn."}}}, {{{"en", "Wait."}}}};

}  // namespace

TEST_CASE("a caution or hold point is added freely") {
  const JobSheet before = shipped_sheet();
  JobSheet after = before;
  step_of(after, "odometer").cautions.push_back(new_caution);
  step_of(after, "odometer").hold_point = true;
  CHECK(taken_away(before, after).empty());
  CHECK(taken_away_for(before, after, {})->empty());
}

TEST_CASE("a hold point is taken away with a reason only") {
  const JobSheet before = shipped_sheet();
  JobSheet after = before;
  step_of(after, "diagnosis").hold_point = false;
  const auto refused = taken_away_for(before, after, {});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == "no_reason");
  CHECK(refused.error().place == "diagnosis");
  auto lost = taken_away(before, after);
  REQUIRE(lost.size() == 1);
  CHECK(lost[0].guard == Guard::hold_point);
  for (const char* blank : {"", "  ", "\t"}) {
    lost[0].reason = blank;
    CHECK_FALSE(taken_away_for(before, after, lost));
  }
  lost[0].reason = "It is decided at the reception.";
  CHECK(taken_away_for(before, after, lost) == lost);
}

TEST_CASE("a caution in other words is another caution in any language; one more language takes nothing away") {
  const JobSheet before = shipped_sheet();
  JobSheet after = before;
  Caution& caution = step_of(after, "road-test-before").cautions.front();
  caution.hazard.by_language["it"] = "Il veicolo può fermarsi.";
  CHECK(taken_away(before, after).empty());
  const JobSheet in_italian = after;
  for (const char* words : {"Il veicolo può rallentare.", ""}) {
    JobSheet weaker = in_italian;
    auto& said = step_of(weaker, "road-test-before").cautions.front().hazard.by_language;
    said["it"] = words;
    CHECK(taken_away(in_italian, weaker).size() == 1);
    said.erase("it");
    CHECK(taken_away(in_italian, weaker).size() == 1);
  }
  caution.precaution.by_language["en"] = "Drive with care.";
  const auto lost = taken_away(before, after);
  REQUIRE(lost.size() == 1);
  CHECK(lost[0].step == "road-test-before");
  CHECK(lost[0].guard == Guard::caution);
}

TEST_CASE("whatever steps are taken out, all that stood at them is named, and nothing else") {
  const JobSheet before = shipped_sheet();
  CHECK(rc::check("for any steps taken out", [&before] {
    JobSheet after = before;
    for (Stage& stage : after.stages) {
      std::vector<Step> kept;
      for (const Step& step : stage.steps) {
        if (*rc::gen::inRange(0, 4) != 0) {
          kept.push_back(step);
        }
      }
      stage.steps = kept;
    }
    RC_ASSERT(taken_away(before, after).size() == guards_of(before) - guards_of(after));
    RC_ASSERT(taken_away(after, before).empty());
  }));
}

}  // namespace shimwright::sheet

#include <algorithm>

#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"

namespace shimwright::sheet {

using namespace test;

namespace {

std::vector<std::string> places_of(const std::vector<Error>& faults) {
  std::vector<std::string> places;
  for (const Error& each : faults) {
    places.push_back(each.place);
  }
  std::sort(places.begin(), places.end());
  return places;
}

}  // namespace

TEST_CASE("an empty spec sheet names every field that has to be filled in, and no other") {
  const SheetDraft draft = empty_spec_sheet(draft_id, default_job_sheet());
  std::vector<std::string> expected{"/lower/tray/shims", "/upper/tray/shims"};
  for (const DraftField& field : fields_of(draft)) {
    const bool is_limit = field.kind == FieldKind::measure && field.place.find("/most") != std::string::npos;
    if ((field.text.empty() && !field.may_be_blank && field.kind != FieldKind::word) || is_limit) {
      expected.push_back(field.place);
    }
  }
  std::sort(expected.begin(), expected.end());
  const auto faults = faults_of(draft);
  CHECK(places_of(faults) == expected);
  CHECK(std::all_of(faults.begin(), faults.end(), is_still_blank));
}

TEST_CASE("each value spoilt alone is the one fault, at its field") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  for (const DraftField& field : fields_of(draft)) {
    const bool is_number = field.kind == FieldKind::length || field.kind == FieldKind::decimal ||
                           field.kind == FieldKind::measure || field.kind == FieldKind::count;
    if (!is_number) {
      continue;
    }
    INFO(field.place);
    const auto faults = faults_of(*with_text(draft, field.place, "1.2.3"));
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].place == field.place);
    CHECK_FALSE(is_still_blank(faults[0]));
    CHECK(is_sentence(faults[0].message.in_english()));
  }
}

TEST_CASE("faults far apart are all told at once") {
  SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const std::vector<std::string> spoilt{"/limits/gear_oil/least", "/lower/float/least_mm",
                                        "/lower/tray/shims/3/thickness_mm", "/parts/2/number",
                                        "/upper/gauge_fit/feel_u_mm"};
  for (const std::string& place : spoilt) {
    draft = *with_text(draft, place, place == "/parts/2/number" ? "" : "abc");
  }
  CHECK(places_of(faults_of(draft)) == spoilt);
}

TEST_CASE("limits in the wrong order are told at the upper one") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  CHECK(places_of(faults_of(*with_text(draft, "/upper/float/least_mm", "0.90"))) ==
        std::vector<std::string>{"/upper/float/most_mm"});
  CHECK(places_of(faults_of(*with_text(draft, "/limits/gear_oil/least", "2"))) ==
        std::vector<std::string>{"/limits/gear_oil/most"});
}

TEST_CASE("faults of a job sheet in several steps are all told") {
  SheetDraft draft = shipped_draft(SheetKind::job_sheet);
  const std::vector<std::string> spoilt{"/stages/0/steps/0/title/en", "/stages/1/steps/0/id", "/stages/2/title/en"};
  for (const std::string& place : spoilt) {
    draft = *with_text(draft, place, "");
  }
  CHECK(places_of(faults_of(draft)) == spoilt);
}

}  // namespace shimwright::sheet

#include "shimwright/sheet/draft.h"

#include <algorithm>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"

namespace shimwright::sheet {

using namespace test;

TEST_CASE("a draft of a shipped sheet has no fault, and is the file byte for byte") {
  for (const std::string& name : shipped_specs()) {
    INFO(name);
    const std::string file = shipped_file(name);
    const auto draft = draft_of_file(SheetKind::spec_sheet, file);
    REQUIRE(draft);
    CHECK(faults_of(*draft).empty());
    CHECK(file_of(*draft) == file);
  }
  const std::string sheet = shipped_file("sheets/dry-pack-renewal.json");
  const auto draft = draft_of_file(SheetKind::job_sheet, sheet);
  INFO((draft ? std::string() : draft.error().in_english()));
  REQUIRE(draft);
  CHECK(faults_of(*draft).empty());
  CHECK(file_of(*draft) == sheet);
}

TEST_CASE("an empty spec sheet has a row for each limit and part the job sheet asks for") {
  const SheetDraft draft = empty_spec_sheet(draft_id, default_job_sheet());
  const SpecSheet shipped = good_spec_sheet(shipped_file("specs/D7-2.json"));
  const auto has = [&draft](const std::string& place) { return !field_text(draft, place).empty(); };
  for (const auto& [key, limit] : shipped.limits) {
    INFO(key);
    CHECK(has("/limits/" + key + "/#name"));
    CHECK(field_text(draft, "/limits/" + key + "/unit") == quantity::symbol_of(limit.unit));
    CHECK(field_text(draft, "/limits/" + key + "/most").empty());
  }
  CHECK(field_text(draft, "/parts/0/id") == shipped.parts[0].id);
  CHECK_FALSE(head_of(draft).demonstration);
}

TEST_CASE("an empty spec sheet that is filled in is read, fits its job sheet, and has its own source everywhere") {
  const SheetDraft filled = filled_spec();
  const auto faults = faults_of(filled);
  for (const Error& each : faults) {
    FAIL_CHECK(each.in_english());
  }
  const SpecSheet spec = good_spec_sheet(file_of(filled));
  CHECK(fits(default_job_sheet(), spec));
  CHECK(spec.limits.at("press_torque").source == spec.source);
  CHECK(spec.upper.disc_float.source == spec.source);
  CHECK_FALSE(spec.demonstration);
}

TEST_CASE("every field of a shipped sheet holds what is put in, as it was typed") {
  for (const auto kind : {SheetKind::spec_sheet, SheetKind::job_sheet}) {
    const SheetDraft draft = shipped_draft(kind);
    const auto fields = fields_of(draft);
    // Of the thousands of a job sheet some in every part.
    const std::size_t step = kind == SheetKind::spec_sheet ? 1 : 41;
    for (std::size_t at = 0; at < fields.size(); at += step) {
      const DraftField& field = fields[at];
      if (field.kind == FieldKind::word || field.place.find('#') != std::string::npos) {
        continue;
      }
      INFO(field.place);
      for (const char* typed : {"1,2,3 x", "007", "yes", " \u00b5", "{"}) {
        const auto changed = with_text(draft, field.place, typed);
        REQUIRE(changed);
        CHECK(field_text(*changed, field.place) == typed);
      }
    }
  }
}

TEST_CASE("what is typed and typed back is the draft of before") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const SpecSheet before = good_spec_sheet(file_of(draft));
  for (const DraftField& field : fields_of(draft)) {
    if (field.place.find('#') != std::string::npos) {
      continue;
    }
    INFO(field.place);
    const auto changed = with_text(draft, field.place, field.kind == FieldKind::word ? field.choices[1].word : "7");
    REQUIRE(changed);
    const auto back = with_text(*changed, field.place, field.text);
    REQUIRE(back);
    CHECK(good_spec_sheet(file_of(*back)) == before);
  }
}

TEST_CASE("a method chosen and chosen back keeps what was filled in for both") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const auto depth = with_text(draft, "/lower/method", "depth");
  REQUIRE(depth);
  CHECK(field_text(*depth, "/lower/gauge_fit/snug_band_mm").empty());
  const auto places = with_text(*depth, "/lower/depth/places", "4");
  const auto back = with_text(*places, "/lower/method", "gauge_fit");
  CHECK(field_text(*back, "/lower/gauge_fit/snug_band_mm") == "0.05");
  CHECK(good_spec_sheet(file_of(*back)) == good_spec_sheet(file_of(draft)));
  CHECK(field_text(*with_text(*back, "/lower/method", "depth"), "/lower/depth/places") == "4");
}

TEST_CASE("copies and next issues keep values and the demonstration mark") {
  const std::string file = shipped_file("specs/D7-2.json");
  const SheetDraft copy = copy_of(SheetKind::spec_sheet, file, draft_id);
  CHECK(head_of(copy).name.empty());
  CHECK(head_of(copy).issue == 1);
  CHECK(head_of(copy).demonstration);
  const SheetDraft next = next_issue_of(SheetKind::spec_sheet, file, draft_id, 3);
  CHECK(head_of(next).name == "D7");
  CHECK(head_of(next).issue == 3);
  CHECK(faults_of(next).empty());
  SpecSheet expected = good_spec_sheet(file);
  expected.id = draft_id;
  expected.issue = 3;
  CHECK(good_spec_sheet(file_of(next)) == expected);
  CHECK(head_of(copy_of(SheetKind::job_sheet, shipped_file("sheets/dry-pack-renewal.json"), draft_id)).demonstration);
}

TEST_CASE("no field of a form takes the demonstration mark away") {
  for (const auto kind : {SheetKind::spec_sheet, SheetKind::job_sheet}) {
    const SheetDraft draft = shipped_draft(kind);
    const auto untouched = with_text(draft, "/demonstration", "no");
    CHECK(head_of(*untouched).demonstration);
    for (const DraftField& field : fields_of(draft)) {
      CHECK(field.place.find("demonstration") == std::string::npos);
    }
  }
}

TEST_CASE("rows are added, moved and taken out again") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const SheetDraft longer = with_row(draft, "/lower/tray/shims");
  CHECK(field_text(longer, "/lower/tray/shims/18/id").empty());
  CHECK(file_of(without(longer, "/lower/tray/shims/18")) == file_of(without(with_row(draft, "/parts"), "/parts/6")));
  const auto turned = moved(draft, "/parts/0", 1);
  REQUIRE(turned);
  CHECK(field_text(turned->draft, "/parts/1/id") == "clutch-pack");
  CHECK(turned->place == "/parts/1");
  CHECK(field_text(with_row(draft, "/lower/gauge_fit/prior"), "/lower/gauge_fit/prior/sd_mm").empty());
  CHECK(good_spec_sheet(file_of(without(draft, "/upper/gauge_fit/prior"))).upper.gauge_fit->prior == std::nullopt);
}

TEST_CASE("a row gets another name, but not that of another row") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const auto named = with_text(draft, "/limits/press_torque/#name", "press_torque_dry");
  REQUIRE(named);
  CHECK(field_text(*named, "/limits/press_torque_dry/most") == "12");
  CHECK(with_text(draft, "/limits/press_torque/#name", "gear_oil").error().code == "repeated_field");
  CHECK(faults_of(*with_text(draft, "/limits/press_torque/#name", "Press torque")).size() == 1);
}

TEST_CASE("a tray is laid by its sizes") {
  const SheetDraft draft = empty_spec_sheet(draft_id, default_job_sheet());
  const auto laid = with_shims(draft, Side::upper, "1,30", "2.15", "0.05", "0.003");
  REQUIRE(laid);
  CHECK(field_text(*laid, "/upper/tray/shims/0/id") == "1.30");
  CHECK(field_text(*laid, "/upper/tray/shims/17/thickness_mm") == "2.15");
  CHECK(field_text(*laid, "/lower/tray/shims/0/id").empty());
  CHECK(with_shims(draft, Side::upper, "1.30", "2.15", "0", "0.003").error().code == "out_of_range");
  // Nothing is left out silently.
  CHECK(with_shims(draft, Side::upper, "1.30", "2.16", "0.05", "0.003").error().code == "out_of_range");
  CHECK(with_shims(draft, Side::upper, "2.15", "1.30", "0.05", "0.003").error().code == "out_of_range");
  CHECK(with_shims(draft, Side::upper, "1.30", "9", "0.001", "0.003").error().code == "out_of_range");
  CHECK_FALSE(with_shims(draft, Side::upper, "1.3.0", "9", "0.1", "0.003"));
}

TEST_CASE("a job sheet gets another language in every text, and loses one only where it is blank") {
  const SheetDraft draft = shipped_draft(SheetKind::job_sheet);
  const auto italian = with_text(draft, "/#languages", "de, fr, it");
  REQUIRE(italian);
  CHECK(faults_of(*italian).empty());
  CHECK(good_job_sheet(file_of(*italian)) == default_job_sheet());
  const auto worded = with_text(*italian, "/stages/0/steps/0/title/it", "Leggere");
  REQUIRE(worded);
  const auto dropped = with_text(*worded, "/#languages", "");
  CHECK(good_job_sheet(file_of(*dropped)).stages[0].steps[0].title.in("it") == "Leggere");
  CHECK(good_job_sheet(file_of(*dropped)).stages[0].steps[1].title.by_language.size() == 3);
  CHECK(with_text(draft, "/#languages", "Deutsch").error().code == "wrong_language");
}

TEST_CASE("a job sheet is written from nothing") {
  SheetDraft draft = empty_job_sheet(draft_id);
  for (const auto& [place, text] :
       std::vector<std::pair<std::string, std::string>>{{"/name", "own-sheet"},
                                                        {"/title/en", "Our own"},
                                                        {"/stages/0/id", "all"},
                                                        {"/stages/0/title/en", "All of it"},
                                                        {"/stages/0/steps/0/title/en", "Sign"}}) {
    draft = *with_text(draft, place, text);
  }
  CHECK(faults_of(draft).empty());
  draft = moved(with_row(draft, "/stages/0/steps"), "/stages/0/steps/1", -1)->draft;
  for (const auto& [place, text] :
       std::vector<std::pair<std::string, std::string>>{{"/stages/0/steps/0/id", "torque"},
                                                        {"/stages/0/steps/0/title/en", "Read it"},
                                                        {"/stages/0/steps/0/kind", "read"},
                                                        {"/stages/0/steps/0/channels/0/id", "peak"},
                                                        {"/stages/0/steps/0/channels/0/title/en", "Peak"},
                                                        {"/stages/0/steps/0/channels/0/unit", "N·m"},
                                                        {"/stages/0/steps/0/channels/0/limit", "press_torque"},
                                                        {"/stages/0/steps/0/hold_point", "yes"}}) {
    draft = *with_text(draft, place, text);
  }
  draft = with_row(draft, "/stages/0/steps/0/cautions");
  CHECK_FALSE(faults_of(draft).empty());
  draft = *with_text(draft, "/stages/0/steps/0/cautions/0/hazard/en", "It can slip.");
  draft = *with_text(draft, "/stages/0/steps/0/cautions/0/precaution/en", "Hold it.");
  const JobSheet sheet = good_job_sheet(file_of(draft));
  CHECK(sheet.find("torque")->hold_point);
  CHECK(sheet.find("torque")->cautions.size() == 1);
  CHECK(std::get<ReadStep>(sheet.find("torque")->body).channels[0].limit == "press_torque");
}

TEST_CASE("a file of another kind or of nothing is no draft") {
  CHECK(draft_of_file(SheetKind::spec_sheet, "{").error().code == "no_json");
  CHECK(draft_of_file(SheetKind::spec_sheet, shipped_file("sheets/dry-pack-renewal.json")).error().code ==
        "wrong_format");
}

TEST_CASE("however a sheet is changed, faults are none exactly where the reader takes it, each at a field or a list") {
  CHECK(rc::check("for any changes", [] {
    const auto kind = *rc::gen::element(SheetKind::spec_sheet, SheetKind::job_sheet);
    SheetDraft draft = shipped_draft(kind);
    const int changes = *rc::gen::inRange(1, 5);
    for (int at = 0; at < changes; ++at) {
      const auto fields = fields_of(draft);
      const DraftField& field = fields[*rc::gen::inRange<std::size_t>(0, fields.size())];
      const auto typed = *rc::gen::element<std::string>("", "0.5", "-3", "yes", "x y", "12", "0.5.5", "60");
      if (const auto changed = with_text(draft, field.place, typed)) {
        draft = *changed;
      }
    }
    const std::string file = file_of(draft);
    const bool good =
        kind == SheetKind::spec_sheet ? read_spec_sheet(file).has_value() : read_job_sheet(file).has_value();
    RC_ASSERT(faults_of(draft).empty() == good);
  }));
}

}  // namespace shimwright::sheet

#include "shimwright/sheet/compare.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"

namespace shimwright::sheet {

using namespace test;

TEST_CASE("a sheet beside itself has no difference") {
  for (const auto kind : {SheetKind::spec_sheet, SheetKind::job_sheet}) {
    const std::string file = file_of(shipped_draft(kind));
    const Comparison comparison = compare(kind, file, file);
    CHECK(comparison.differences.empty());
    CHECK(comparison.same > 50);
  }
}

TEST_CASE("one value changed is one difference, with what it was and what it is") {
  CHECK(rc::check("for any field", [] {
    const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
    std::vector<DraftField> fields;
    for (const DraftField& each : fields_of(draft)) {
      const bool names_its_row =
          each.place.find("/id") != std::string::npos || each.place.find('#') != std::string::npos;
      if (each.kind != FieldKind::word && !names_its_row) {
        fields.push_back(each);
      }
    }
    const DraftField& field = fields[*rc::gen::inRange<std::size_t>(0, fields.size())];
    const std::string typed = field.kind == FieldKind::yes_no ? (field.text == "yes" ? "no" : "yes") : "9.125";
    const auto changed = with_text(draft, field.place, typed);
    const Comparison comparison = compare(SheetKind::spec_sheet, draft.body, changed->body);
    RC_ASSERT(comparison.differences.size() == 1U);
    RC_ASSERT(comparison.differences[0].before == field.text);
    RC_ASSERT(comparison.differences[0].after == typed);
    RC_ASSERT(comparison.differences[0].label == field.label);
  }));
}

TEST_CASE("the other way round each difference is the other way round") {
  const std::string one = shipped_file("specs/D7-1.json");
  const std::string two = shipped_file("specs/D7-2.json");
  const Comparison there = compare(SheetKind::spec_sheet, one, two);
  const Comparison back = compare(SheetKind::spec_sheet, two, one);
  CHECK_FALSE(there.differences.empty());
  CHECK(there.same == back.same);
  REQUIRE(there.differences.size() == back.differences.size());
  for (const Difference& each : there.differences) {
    Difference turned = each;
    std::swap(turned.before, turned.after);
    CHECK(std::count(back.differences.begin(), back.differences.end(), turned) ==
          std::count(there.differences.begin(), there.differences.end(), each));
  }
}

TEST_CASE("a shim taken out of the middle of a tray is one shim less, not all after it another") {
  const SheetDraft draft = shipped_draft(SheetKind::spec_sheet);
  const SheetDraft shorter = without(draft, "/lower/tray/shims/4");
  const Comparison comparison = compare(SheetKind::spec_sheet, draft.body, shorter.body);
  REQUIRE(comparison.differences.size() == 3);
  for (const Difference& each : comparison.differences) {
    CHECK(each.before.has_value());
    CHECK_FALSE(each.after.has_value());
  }
  CHECK(comparison.differences[0].before == "1.50");
}

TEST_CASE("steps that change places are told by what they stand after, and steps added are no change of the others") {
  const SheetDraft draft = shipped_draft(SheetKind::job_sheet);
  const SheetDraft turned = moved(draft, "/stages/0/steps/1", 1)->draft;
  const Comparison comparison = compare(SheetKind::job_sheet, draft.body, turned.body);
  REQUIRE(comparison.differences.size() == 3);
  for (const Difference& each : comparison.differences) {
    CHECK(each.label.in_english() == "Stands after");
  }
  const SheetDraft longer = with_row(draft, "/stages/0/steps");
  for (const Difference& each : compare(SheetKind::job_sheet, draft.body, longer.body).differences) {
    CHECK_FALSE(each.before.has_value());
  }
}

}  // namespace shimwright::sheet

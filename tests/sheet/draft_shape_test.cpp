#include "draft_shape.h"

#include <cstdlib>
#include <set>

#include <catch2/catch.hpp>

#include "draft_values.h"
#include "sheet_files.h"

namespace shimwright::sheet {

using namespace test;

namespace {

using Json = nlohmann::ordered_json;
using Way = Json::json_pointer;

/// `/stages/#/steps/#/title of read`: places that the same code goes through.
std::string kind_of_way(const Json& file, const Way& way) {
  std::string kind;
  for (const char each : way.to_string()) {
    kind += each >= '0' && each <= '9' ? '#' : each;
  }
  for (Way at = way; !at.empty(); at = at.parent_pointer()) {
    const Json& holder = file.at(at.parent_pointer());
    if (holder.is_object() && holder.contains("kind")) {
      return kind + " of " + holder["kind"].get<std::string>();
    }
  }
  return kind;
}

void add_ways(const Json& file, const Way& at, std::set<std::string>& seen, std::vector<Way>& ways) {
  const Json& value = file.at(at);
  const auto add = [&](const Way& way) {
    if (seen.insert(kind_of_way(file, way)).second) {
      ways.push_back(way);
    }
    add_ways(file, way, seen, ways);
  };
  if (value.is_object()) {
    for (const auto& [key, each] : value.items()) {
      add(at / key);
    }
  }
  for (std::size_t index = 0; value.is_array() && index < value.size(); ++index) {
    add(at / index);
  }
}

/// One place of each kind in a shipped sheet.
std::vector<Way> ways_into(const Json& file) {
  std::set<std::string> seen;
  std::vector<Way> ways;
  add_ways(file, Way(), seen, ways);
  return ways;
}

const std::vector<Json>& others() {
  static const std::vector<Json> values{Json(),        Json(7),        Json("D7"),           Json::object(),
                                        Json::array(), Json{{"a", 1}}, Json::array({Json()})};
  return values;
}

bool is_near(const std::string& place, const std::string& way) {
  return place.rfind(way, 0) == 0 || way.rfind(place, 0) == 0;
}

/// Everything a person can do to what stands near that place.
void go_through(const SheetDraft& draft, const std::string& way) {
  static_cast<void>(head_of(draft));
  for (const DraftSection& section : sections_of(draft)) {
    for (const DraftGroup& group : section.groups) {
      if (!group.place.empty() && is_near(group.place, way)) {
        CHECK(without(draft, group.place).body != "");
        const auto turned = moved(draft, group.place, 1);
        CHECK((!turned || !turned->draft.body.empty()));
      }
      for (const DraftField& field : group.fields) {
        if (is_near(field.place, way)) {
          for (const char* typed : {"", "depth"}) {
            const auto changed = with_text(draft, field.place, typed);
            CHECK((!changed || !sections_of(*changed).empty()));
          }
        }
      }
    }
    for (const RowWay& row : section.ways) {
      if (is_near(row.place, way)) {
        CHECK_FALSE(sections_of(with_row(draft, row.place)).empty());
      }
    }
  }
}

std::string shipped_json(SheetKind kind) {
  return shipped_file(kind == SheetKind::spec_sheet ? "specs/D7-2.json" : "sheets/dry-pack-renewal.json");
}

/// One language goes the ways of all.
void keep_english(Json& value) {
  if (value.is_object() && value.contains("en")) {
    value.erase("de");
    value.erase("fr");
  }
  for (Json& each : value) {
    if (each.is_structured()) {
      keep_english(each);
    }
  }
}

/// The shipped sheet in English, of a job sheet the first step of each kind.
Json good_sheet(SheetKind kind) {
  Json sheet = Json::parse(shipped_json(kind));
  keep_english(sheet);
  if (kind == SheetKind::spec_sheet) {
    return sheet;
  }
  std::set<std::string> kinds;
  Json steps = Json::array();
  for (const Json& stage : sheet["stages"]) {
    for (const Json& step : stage["steps"]) {
      if (kinds.insert(step["kind"].get<std::string>()).second) {
        steps.push_back(step);
      }
    }
  }
  sheet["stages"] = Json::array({sheet["stages"][0]});
  sheet["stages"][0]["steps"] = std::move(steps);
  return sheet;
}

}  // namespace

TEST_CASE("whatever stands wherever in a sheet, its form is drawn, its faults are told and its rows are worked on") {
  const auto kind = GENERATE(SheetKind::spec_sheet, SheetKind::job_sheet);
  const Json good = good_sheet(kind);
  const auto ways = ways_into(good);
  REQUIRE(ways.size() >= 50);
  // In the short form two of the values at each place, others at the next: all of them everywhere take minutes.
  const std::size_t so_many = std::getenv("SHIMWRIGHT_LONG") != nullptr ? others().size() : 2;
  for (std::size_t index = 0; index < ways.size(); ++index) {
    const Way& way = ways[index];
    INFO(way.to_string());
    for (std::size_t which = index; which < index + so_many; ++which) {
      Json changed = good;
      changed[way] = others()[which % others().size()];
      const SheetDraft draft{kind, changed.dump()};
      go_through(draft, way.to_string());
      const auto taken = draft_of_file(kind, changed.dump());
      CHECK((taken || is_sentence(taken.error().in_english())));
    }
  }
}

TEST_CASE("the faults of an odd sheet are told whatever is odd about it") {
  const auto kind = GENERATE(SheetKind::spec_sheet, SheetKind::job_sheet);
  const Json good = good_sheet(kind);
  for (const Way& way : ways_into(good)) {
    INFO(way.to_string());
    for (const Json& other : {Json(7), Json{{"a", 1}}, Json::array({Json()})}) {
      Json changed = good;
      changed[way] = other;
      for (const Error& each : faults_of({kind, changed.dump()})) {
        CHECK(is_sentence(each.in_english()));
      }
    }
  }
}

TEST_CASE("a file that has no form of a sheet is refused with its place") {
  const auto refused = [](SheetKind kind, const std::string& file) {
    const auto draft = draft_of_file(kind, file);
    return draft ? std::string() : draft.error().code + " " + draft.error().place;
  };
  CHECK(refused(SheetKind::spec_sheet, "{}") == "wrong_format /format");
  CHECK(refused(SheetKind::spec_sheet, "[]") == "wrong_format /format");
  Json spec = Json::parse(shipped_json(SheetKind::spec_sheet));
  spec["title"] = "D7";
  CHECK(refused(SheetKind::spec_sheet, spec.dump()) == "wrong_type /title");
  Json job = Json::parse(shipped_json(SheetKind::job_sheet));
  job["stages"] = {{"a", 1}};
  CHECK(refused(SheetKind::job_sheet, job.dump()) == "wrong_type /stages");
  job = Json::parse(shipped_json(SheetKind::job_sheet));
  job["stages"][0]["steps"][0]["#bodies"] = 5;
  CHECK(refused(SheetKind::job_sheet, job.dump()) == "unknown_field /stages/0/steps/0/#bodies");
}

TEST_CASE("a method is picked for a side that is not there yet") {
  Json spec = Json::parse(shipped_json(SheetKind::spec_sheet));
  spec.erase("upper");
  const auto picked = with_text({SheetKind::spec_sheet, spec.dump()}, "/upper/method", "depth");
  REQUIRE(picked);
  CHECK(field_text(*picked, "/upper/method") == "depth");
}

TEST_CASE("the names of limits say nothing of what they are") {
  Json spec = Json::parse(shipped_json(SheetKind::spec_sheet));
  const Json limit = spec["limits"].front();
  for (const char* name : {"parts", "title", "float", "steps"}) {
    spec["limits"][name] = limit;
  }
  CHECK(draft_of_file(SheetKind::spec_sheet, spec.dump()));
}

}  // namespace shimwright::sheet

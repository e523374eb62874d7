#include <functional>
#include <set>

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using nlohmann::json;

namespace {

/// What a file may leave out.
const std::set<std::string>& optional_names() {
  static const std::set<std::string> names{
      "text",           "cautions", "hold_point", "again", "unproven_until", "may_be_not_required", "only_for",
      "role",           "shows",    "accepted",   "limit", "equals",         "instrument",          "signed_value",
      "attempts_limit", "least",    "de",         "fr"};
  return names;
}

bool is_keyed_by_people(const std::string& place) {
  return place == "/limits" || place == "/work_values";
}

/// The places of all objects in a value, and of all their members.
void collect(const json& value, const std::string& place, std::vector<std::string>& objects,
             std::vector<std::string>& members) {
  if (value.is_object()) {
    objects.push_back(place);
  }
  for (const auto& item : value.items()) {
    if (value.is_structured()) {
      const std::string inside = place + "/" + item.key();
      if (value.is_object()) {
        members.push_back(inside);
      }
      collect(item.value(), inside, objects, members);
    }
  }
}

struct Places {
  std::vector<std::string> objects;
  std::vector<std::string> members;
};

Places places_in(const json& file) {
  Places places;
  collect(file, "", places.objects, places.members);
  return places;
}

json without(json file, const std::string& place) {
  return file.patch(json::array({json{{"op", "remove"}, {"path", place}}}));
}

/// A field that is needed is missed at its place; one that is not, is not.
void check_without(const json& file, const std::string& schema, const std::string& place) {
  const std::size_t cut = place.rfind('/');
  const std::string name = place.substr(cut + 1);
  const test::Verdict verdict = test::verdict_on(without(file, place), schema);
  INFO(place << ": " << verdict.code << " " << verdict.place << " " << verdict.sentence);
  const bool end = schema == "spec-sheet" && (name == "least" || name == "most");
  // A limit keeps one of its two ends at least.
  const bool other_end =
      end && file.at(json::json_pointer(place.substr(0, cut))).contains(name == "least" ? "most" : "least");
  const bool optional =
      other_end || (!end && optional_names().count(name) > 0) || is_keyed_by_people(place.substr(0, cut));
  if (verdict.code.empty()) {
    CHECK((optional || name == "side"));
  } else if (name == "as_found" && schema == "job-sheet") {
    // Two floats of one side are told apart by it.
    CHECK(verdict.code == "repeated_measurement");
  } else {
    CHECK_FALSE(optional);
    CHECK(verdict.code == "missing_field");
    CHECK(verdict.place == (end ? place.substr(0, cut) + "/most" : place));
  }
}

}  // namespace

TEST_CASE("Any single field left out is missed at its place, unless it may be left out") {
  for (const auto& [file, schema] : {std::pair{test::small_job_sheet(), std::string("job-sheet")},
                                     std::pair{test::small_spec_sheet(), std::string("spec-sheet")}}) {
    for (const std::string& place : places_in(file).members) {
      check_without(file, schema, place);
    }
  }
}

TEST_CASE("The shipped files miss what is taken out of them") {
  const std::vector<std::pair<std::string, std::string>> files{{"sheets/dry-pack-renewal.json", "job-sheet"},
                                                               {"specs/D6-2.json", "spec-sheet"},
                                                               {"specs/D7-3.json", "spec-sheet"}};
  for (const auto& named : files) {
    const json file = json::parse(test::shipped_file(named.first));
    const auto members = places_in(file).members;
    for (std::size_t index = 0; index < members.size(); index += 7) {
      check_without(file, named.second, members[index]);
    }
  }
}

TEST_CASE("Any field too many is refused at its place") {
  for (const auto& [file, schema] : {std::pair{test::small_job_sheet(), std::string("job-sheet")},
                                     std::pair{test::small_spec_sheet(), std::string("spec-sheet")}}) {
    for (const std::string& place : places_in(file).objects) {
      const std::string added = place + "/surplus";
      const auto verdict =
          test::verdict_on(file.patch(json::array({json{{"op", "add"}, {"path", added}, {"value", "x"}}})), schema);
      INFO(added << ": " << verdict.code);
      CHECK(verdict.place == added);
    }
  }
}

TEST_CASE("A value of another kind is refused, whatever it is and wherever it stands") {
  CHECK(rc::check("wrong kinds", [] {
    const bool job = *rc::gen::arbitrary<bool>();
    const json file = job ? test::small_job_sheet() : test::small_spec_sheet();
    const std::string place = *rc::gen::elementOf(places_in(file).members);
    const json old = file.at(json::json_pointer(place));
    const json wrong =
        *rc::gen::element(json(nullptr), json(true), json(7), json("?!"), json::array({json(1.5)}), json{{"q", 1}});
    // Null is a value where a section may be open, and a text may be a good one; the tables of refusals have those.
    RC_PRE(wrong.type() != old.type() && !wrong.is_null() && !(wrong.is_number() && old.is_number()));
    RC_PRE(!(wrong.is_string() && old.is_null()));
    const auto verdict =
        test::verdict_on(file.patch(json::array({json{{"op", "replace"}, {"path", place}, {"value", wrong}}})),
                         job ? "job-sheet" : "spec-sheet");
    RC_ASSERT(!verdict.code.empty());
    RC_ASSERT(verdict.place.rfind(place, 0) == 0);
  }));
}

TEST_CASE("No text makes a reader do anything but refuse") {
  const std::string job = test::test_file("small_job_sheet.json");
  const std::string spec = test::test_file("small_spec_sheet.json");
  CHECK(rc::check("cut and spoilt files", [&job, &spec] {
    std::string text = *rc::gen::element(job, spec);
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
    text[at] = *rc::gen::arbitrary<char>();
    text.resize(text.size() - *rc::gen::inRange<std::size_t>(0, 3));
    const auto sheet = read_job_sheet(text);
    const auto values = read_spec_sheet(text);
    RC_ASSERT(!(sheet && values));
    RC_ASSERT(sheet || !sheet.error().code.empty());
    RC_ASSERT(values || !values.error().code.empty());
  }));
}

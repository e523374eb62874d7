#include "shimwright/job/entry.h"

#include <set>
#include <string>

#include <catch2/catch.hpp>

#include "sample_entries.h"

namespace shimwright::job {

namespace {

template <class Word, class Named>
void check_names(int count, Named named) {
  std::set<std::string_view> names;
  for (int index = 0; index < count; ++index) {
    const auto word = static_cast<Word>(index);
    names.insert(name_of(word));
    CHECK(named(name_of(word)) == std::optional<Word>(word));
  }
  CHECK(names.size() == static_cast<std::size_t>(count));
  CHECK_FALSE(named(""));
  CHECK_FALSE(named("no such word"));
}

}  // namespace

TEST_CASE("each word has a name of its own and is found by it") {
  check_names<Conclusion>(20, conclusion_named);
  check_names<ReadingVerdict>(6, reading_verdict_named);
  check_names<ChosenBy>(4, chosen_by_named);
  check_names<SeriesReason>(2, series_reason_named);
}

TEST_CASE("names stand beside the right words") {
  CHECK(name_of(Conclusion::try_shim) == "try_shim");
  CHECK(name_of(Conclusion::far) == "far");
  CHECK(name_of(Conclusion::for_information) == "for_information");
  CHECK(name_of(ReadingVerdict::not_equal) == "not_equal");
  CHECK(name_of(ChosenBy::person) == "person");
  CHECK(name_of(SeriesReason::seated_again) == "seated_again");
}

TEST_CASE("each kind has its name") {
  CHECK(kind_of(Opened{}) == "opened");
  CHECK(kind_of(PeakRead{}) == "peak_read");
  CHECK(kind_of(ShimChosen{}) == "shim_chosen");
  CHECK(kind_of(AssemblyBegun{}) == "assembly_begun");
  std::set<std::string_view> kinds;
  for (const EntryBody& body : test::sample_bodies()) {
    kinds.insert(kind_of(body));
  }
  CHECK(kinds.size() == std::variant_size_v<EntryBody>);
}

TEST_CASE("an entry knows the step it is about, where it is about one") {
  const EntryBody deviated = Deviated{{"float-lower", 2}, "reason"};
  REQUIRE(step_of(deviated) != nullptr);
  CHECK(*step_of(deviated) == StepRef{"float-lower", 2});
  for (const EntryBody& body : {EntryBody(Opened{}), EntryBody(Withdrawn{}), EntryBody(Noted{"a", ""}),
                                EntryBody(Parked{}), EntryBody(AssemblyBegun{})}) {
    CHECK(step_of(body) == nullptr);
  }
}

}  // namespace shimwright::job

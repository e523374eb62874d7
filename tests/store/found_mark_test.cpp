#include "shimwright/store/found_mark.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "search_text.h"

namespace shimwright::store {

namespace {

using Places = std::vector<std::size_t>;

}  // namespace

TEST_CASE("what was sought is marked where it stands, at its last place, whatever lies between") {
  CHECK(found_mark("TESTVN009TA030417", "0417") == FoundMark{{13, 14, 15, 16}, {}});
  CHECK(found_mark("0417-0417", "0417") == FoundMark{{5, 6, 7, 8}, {}});
  CHECK(found_mark("HL-MK 412", "mk412") == FoundMark{{3, 4, 6, 7, 8}, {}});
  CHECK(found_mark("TESTVN", "9999") == std::nullopt);
  CHECK(found_mark("TESTVN", "") == std::nullopt);
}

TEST_CASE("what was forgiven is marked: one wrong character, or two that are swapped") {
  CHECK(found_mark("TESTVN009TA030417", "0418")->forgiven == Places{16});
  CHECK(found_mark("TESTVN009TA030417", "0471")->forgiven == Places{15, 16});
  CHECK(found_mark("HL-MK 412", "MK421")->forgiven == Places{7, 8});
  // O is 0 and I is 1: nothing is forgiven there.
  CHECK(found_mark("D7-1O", "D710")->forgiven.empty());
}

TEST_CASE("three characters are never forgiven") {
  CHECK(found_mark("TESTVN009TA030417", "418") == std::nullopt);
}

TEST_CASE("a mark is there exactly where a search finds, and its forgiven characters are those that differ") {
  const auto texts = rc::gen::container<std::string>(rc::gen::elementOf(std::string("AB0O1-")));
  rc::check([&texts] {
    const std::string shown = *texts;
    const std::string sought = *texts;
    const std::u32string key = search_key(sought);
    const Match matched = key.empty() ? Match::none : match(search_key(shown), key, forgives(key));
    const auto mark = found_mark(shown, sought);
    RC_ASSERT(mark.has_value() == (matched != Match::none));
    if (mark) {
      RC_ASSERT(mark->held.size() == key.size());
      RC_ASSERT(mark->forgiven.empty() == (matched == Match::exact));
      RC_ASSERT(mark->forgiven.size() <= 2U);
    }
  });
}

}  // namespace shimwright::store

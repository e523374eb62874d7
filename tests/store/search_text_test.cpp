#include "search_text.h"

#include <algorithm>
#include <set>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

namespace shimwright::store {

namespace {

Match matched(const std::string& term, const std::string& sought, bool forgiving = true) {
  return match(search_key(term), search_key(sought), forgiving);
}

}  // namespace

TEST_CASE("what is easily taken for one another is one") {
  CHECK(in_utf8(search_key(" hl-mk 412 ")) == "HLMK412");
  CHECK(in_utf8(search_key("O0I1l")) == "0011L");
  CHECK(in_utf8(search_key("Öl/тест-7")) == "ÖLТЕСТ7");
  CHECK(search_key(" -./").empty());
  CHECK(search_key("").empty());
}

TEST_CASE("suffixes are every end of a term down to two characters") {
  CHECK(suffixes_of(U"ABCD") == std::vector<std::string>{"ABCD", "BCD", "CD"});
  CHECK(suffixes_of(U"AB") == std::vector<std::string>{"AB"});
  CHECK(suffixes_of(U"A").empty());
  CHECK(suffixes_of(U"ÖÖX") == std::vector<std::string>{"ÖÖX", "ÖX"});
}

TEST_CASE("one fault from a text are exactly the texts that match it with one fault") {
  for (const std::u32string sought : {U"TA03", U"0417", U"AABB"}) {
    const auto texts = one_fault_from(sought);
    for (const std::u32string& each : texts) {
      CHECK(match(each, sought, true) == Match::one_off);
    }
    CHECK(std::set<std::u32string>(texts.begin(), texts.end()).size() == texts.size());
  }
  const auto texts = one_fault_from(U"0417");
  CHECK(texts.size() == 4 * 33 + 3);
  CHECK(std::find(texts.begin(), texts.end(), U"0471") != texts.end());
  CHECK(std::find(texts.begin(), texts.end(), U"Z417") != texts.end());
  CHECK(std::find(texts.begin(), texts.end(), U"0417") == texts.end());
}

TEST_CASE("a part is found wherever it stands") {
  CHECK(matched("TESTVN009TA030417", "TESTVN") == Match::exact);
  CHECK(matched("TESTVN009TA030417", "9TA0") == Match::exact);
  CHECK(matched("TESTVN009TA030417", "0417") == Match::exact);
  CHECK(matched("TESTVN009TA030417", "testvn009ta030417") == Match::exact);
}

TEST_CASE("one wrong or two swapped characters are forgiven, two wrong ones are not") {
  CHECK(matched("TESTVN009TA030417", "030477") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "X30417") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "03041X") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "034017") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "030471") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "X3041X") == Match::none);
  CHECK(matched("TESTVN009TA030417", "033417") == Match::one_off);
  CHECK(matched("TESTVN009TA030417", "0417A") == Match::none);
  CHECK(matched("TESTVN009TA030417", "030477", false) == Match::none);
  CHECK(matched("417", "0417") == Match::none);
}

TEST_CASE("whatever one character is put in another's place, it is forgiven") {
  CHECK(rc::check([] {
    const auto letters = rc::gen::container<std::u32string>(rc::gen::element(U'A', U'B', U'7', U'Ö'));
    const std::u32string term = *rc::gen::suchThat(letters, [](const auto& each) { return each.size() >= 4; });
    std::u32string sought = term;
    sought[*rc::gen::inRange<std::size_t>(0, term.size())] = U'X';
    RC_ASSERT(match(term, sought, true) == Match::one_off);
    std::u32string swapped = term;
    const auto place = *rc::gen::inRange<std::size_t>(1, term.size());
    std::swap(swapped[place - 1], swapped[place]);
    RC_ASSERT(match(term, swapped, true) != Match::none);
  }));
}

}  // namespace shimwright::store

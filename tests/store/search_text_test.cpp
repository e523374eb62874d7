#include "search_text.h"

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

TEST_CASE("grams are every three in a row and the end") {
  CHECK(grams_of(U"ABCD") == std::vector<std::string>{"ABC", "BCD", "CD$"});
  CHECK(grams_of(U"AAAA") == std::vector<std::string>{"AA$", "AAA"});
  CHECK(grams_of(U"AB") == std::vector<std::string>{"AB$"});
  CHECK(grams_of(U"A").empty());
  CHECK(grams_of(U"ÖÖ").front() == "ÖÖ$");
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

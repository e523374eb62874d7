#include "shimwright/sheet/words.h"

#include <set>
#include <string>

#include <catch2/catch.hpp>

#include "word_lists.h"

using namespace shimwright::sheet;

namespace {

/// Every word of the list is given back by its name, and no two names are one.
template <class Word, std::size_t Size, class Named>
void check_words(const WordList<Word, Size>& words, Named named) {
  std::set<std::string_view> names;
  for (const auto& each : words) {
    INFO(each.second);
    CHECK(name_of(each.first) == each.second);
    CHECK(named(each.second) == each.first);
    names.insert(each.second);
  }
  CHECK(names.size() == Size);
  CHECK_FALSE(named("no such word"));
  CHECK_FALSE(named(""));
}

}  // namespace

TEST_CASE("Words of sheets are spelt and read back") {
  check_words(side_words, side_named);
  check_words(method_words, method_named);
  check_words(instrument_kind_words, instrument_kind_named);
  check_words(again_words, again_named);
  check_words(role_words, role_named);
  check_words(signer_words, signer_named);
  check_words(drawing_words, drawing_named);
}

TEST_CASE("All words of a list are named in their order") {
  CHECK(all_names(side_words) == "lower, upper");
  CHECK(all_names(again_words) == "never, strip, assembly, side");
}

TEST_CASE("Each kind of instrument reads one dimension") {
  CHECK(dimension_read_by(InstrumentKind::micrometer) == shimwright::quantity::Dimension::length);
  CHECK(dimension_read_by(InstrumentKind::torque_wrench) == shimwright::quantity::Dimension::torque);
  CHECK(dimension_read_by(InstrumentKind::scale) == shimwright::quantity::Dimension::mass);
}

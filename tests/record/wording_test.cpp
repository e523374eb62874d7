#include "wording.h"

#include <catch2/catch.hpp>

using namespace shimwright;
using namespace shimwright::record;

namespace {

job::Moment moment(std::int64_t at_ms, int offset_min = 0) {
  return {at_ms, offset_min, false};
}

constexpr std::int64_t nov_24 = 1795517880000;  // 24 Nov 2026 10:58 UTC

}  // namespace

TEST_CASE("dates cannot be misread") {
  CHECK(date_time(moment(nov_24)) == "24 Nov 2026 10:58 +00:00");
  CHECK(date_time(moment(nov_24, 60)) == "24 Nov 2026 11:58 +01:00");
  CHECK(date_time(moment(nov_24, -210)) == "24 Nov 2026 07:28 -03:30");
  CHECK(date_time(moment(0)) == "1 Jan 1970 00:00 +00:00");
  CHECK(date_time(moment(-1)) == "31 Dec 1969 23:59 +00:00");
  CHECK(date_time(moment(1709164800000)) == "29 Feb 2024 00:00 +00:00");
}

TEST_CASE("year and offset are left out only where they are those beside it") {
  CHECK(short_time(moment(nov_24), moment(nov_24 - 86400000)) == "24 Nov 10:58");
  CHECK(short_time(moment(nov_24, 60), moment(nov_24)) == "24 Nov 2026 11:58 +01:00");
  CHECK(short_time(moment(nov_24), moment(0)) == "24 Nov 2026 10:58 +00:00");
  CHECK(who_when({1, moment(nov_24), "id", "MK"}, moment(nov_24)) == "MK, 24 Nov 10:58");
}

TEST_CASE("limits read as one would say them") {
  job::LimitUsed limit;
  limit.least = 250;
  limit.most = 850;
  limit.decimals = 2;
  CHECK(limit_text(limit, quantity::Unit::millimetre) == "0.25 to 0.85");
  limit.least.reset();
  CHECK(limit_text(limit, quantity::Unit::millimetre) == "at most 0.85");
  CHECK(limit_text(limit, quantity::Unit::thou) == "at most 0.85 mm");
  limit.least = 250;
  limit.most.reset();
  CHECK(limit_text(limit, quantity::Unit::millimetre) == "at least 0.25");
  limit.least.reset();
  CHECK(limit_text(limit, quantity::Unit::millimetre).empty());
}

TEST_CASE("a disc is as its worst spot, and mixed where two spots point opposite ways") {
  using V = ReadingVerdict;
  CHECK(disc_verdict({V::within, V::within, V::within}) == V::within);
  CHECK(disc_verdict({V::within, V::on_limit, V::within}) == V::on_limit);
  CHECK(disc_verdict({V::within, V::on_limit, V::too_large}) == V::too_large);
  CHECK(disc_verdict({V::too_small, V::on_limit}) == V::too_small);
  CHECK(disc_verdict_word(disc_verdict({V::too_small, V::too_large})) == "mixed");
  CHECK(disc_verdict({}) == V::none);
}

TEST_CASE("every verdict, fit and side has its own word") {
  using V = ReadingVerdict;
  std::vector<std::string> words;
  for (const V verdict : {V::none, V::within, V::too_small, V::too_large, V::on_limit, V::not_equal}) {
    words.push_back(word_of(verdict));
  }
  for (const job::Fit fit : {job::Fit::tight, job::Fit::snug, job::Fit::loose}) {
    words.push_back(word_of(fit));
  }
  for (const Side side : {Side::lower, Side::upper}) {
    words.push_back(bearing_word(side));
    words.push_back(disc_word(side));
  }
  CHECK(each_once(words).size() == words.size());
  CHECK(signer_word(sheet::Signer::technician) != signer_word(sheet::Signer::checker));
}

TEST_CASE("small helps for sentences") {
  CHECK(say("{0} and {1}", {"a", "b"}) == "a and b");
  CHECK(ordinal_word(1) == "first");
  CHECK(ordinal_word(5) == "fifth");
  CHECK(ordinal_word(6) == "no. 6");
  CHECK(joined({"", "a", "", "b"}, ", ") == "a, b");
  CHECK(counted(1, "one", "{0} many") == "one");
  CHECK(counted(3, "one", "{0} many") == "3 many");
  CHECK(millimetre_digits(250) == "0.25");
  CHECK(millimetre_digits(55) == "0.055");
  CHECK(millimetre_digits(-100) == "−0.10");
}

#include "days.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a day is the one of the place where it was") {
  const job::Moment late{1795476600000, 60, false};  // 2026-11-24 00:30 there, still the day before at Greenwich
  CHECK(bench::day_of(late) == QDate(2026, 11, 24));
  CHECK(bench::day_text(bench::day_of(late)) == "24 Nov 2026");
  CHECK(bench::day_text(std::string("2026-11-30")) == "30 Nov 2026");
  CHECK(bench::day_text(std::string("soon")) == "soon");
  CHECK_FALSE(bench::day_of(std::string("2026-02-30")));
}

TEST_CASE("a moment of this day is said to be today's") {
  const job::Moment then{1795476600000, 60, false};
  job::Moment now = then;
  now.at_ms += 3600000;
  CHECK(bench::moment_text(then, now) == "today 00:30");
  now.at_ms += 86400000;
  CHECK(bench::moment_text(then, now) == "24 Nov 2026 00:30");
}

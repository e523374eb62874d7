#include "reading_words.h"

#include <catch2/catch.hpp>

#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

using namespace shimwright;

namespace {

quantity::TypedNumber as_typed(const char* text, quantity::Unit unit) {
  const auto number = quantity::read_number(text, unit);
  REQUIRE(number);
  return *number;
}

}  // namespace

TEST_CASE("limits are said with their decimals and unit") {
  sheet::Limit limit;
  limit.unit = quantity::Unit::millimetre;
  limit.least = 250;
  limit.most = 850;
  limit.decimals = 2;
  CHECK(bench::limit_words(limit) == "0.25 to 0.85 mm");
  limit.least = std::nullopt;
  CHECK(bench::limit_words(limit) == "at most 0.85 mm");
  limit.most = std::nullopt;
  limit.least = -50;
  CHECK(bench::limit_words(limit) == QString::fromUtf8("at least \u22120.05 mm"));
}

TEST_CASE("a reading is said with verdict and limit, and large on the strip") {
  job::Reading reading;
  reading.number = as_typed("13,5", quantity::Unit::newton_metre);
  CHECK(bench::reading_words(reading) == QString::fromUtf8("13.5 N·m"));
  CHECK(bench::strip_of(reading) == widgets::StripText{});
  reading.verdict = job::ReadingVerdict::too_large;
  reading.limit = job::LimitUsed{quantity::Unit::newton_metre, std::nullopt, 12000, 0, "invented"};
  CHECK(bench::reading_words(reading) == QString::fromUtf8("13.5 N·m too large, at most 12 N·m"));
  const auto strip = bench::strip_of(reading);
  CHECK(strip.large == QString::fromUtf8("13.5 N·m too large"));
  CHECK(strip.small == QString::fromUtf8("at most 12 N·m"));
  CHECK(strip.bad);
}

TEST_CASE("only what is off its limit is said in brick") {
  CHECK(bench::is_off(job::ReadingVerdict::not_equal));
  CHECK_FALSE(bench::is_off(job::ReadingVerdict::on_limit));
  CHECK(bench::mark_of(job::ReadingVerdict::none) == widgets::Mark::none);
  CHECK(bench::instrument_title(sheet::InstrumentKind::torque_wrench) == "Torque wrench");
}

TEST_CASE("a limit in another unit than its own has no more digits than help, and none beyond it") {
  widgets::show_in({quantity::Unit::inch, quantity::Unit::pound_foot});
  sheet::Limit limit;
  limit.unit = quantity::Unit::newton_metre;
  limit.decimals = 0;
  limit.most = 12000;
  CHECK(bench::limit_words(limit) == QString::fromUtf8("at most 8.85 lbf·ft"));
  for (std::int64_t base = 1000; base < 4000; base += 7) {
    limit.most = base;
    const auto most =
        quantity::read_number(widgets::plain(bench::limit_words(limit).mid(8)), quantity::Unit::pound_foot);
    REQUIRE(most);
    REQUIRE(most->base <= base);
  }
  limit.most = std::nullopt;
  for (std::int64_t base = 1000; base < 4000; base += 7) {
    limit.least = base;
    const auto least =
        quantity::read_number(widgets::plain(bench::limit_words(limit).mid(9)), quantity::Unit::pound_foot);
    REQUIRE(least);
    REQUIRE(least->base >= base);
  }
  widgets::show_in({});
}

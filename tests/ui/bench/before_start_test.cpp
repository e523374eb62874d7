#include "before_start.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

job::Instrument instrument_until(const std::string& name, const std::optional<std::string>& day) {
  job::Instrument made;
  made.name = name;
  made.calibrated_to = day;
  return made;
}

job::TrayShim counted_shim(const std::string& id, std::optional<int> count) {
  job::TrayShim shim;
  shim.id = id;
  shim.count = count;
  return shim;
}

}  // namespace

TEST_CASE("calibrations that are over or nearly so are named, the worst first") {
  const auto heeds =
      bench::calibrations({instrument_until("dial 2", "2026-11-30"), instrument_until("depth 1", "2026-12-09"),
                           instrument_until("wrench 3", "2026-11-20"), instrument_until("meter 1", "2026-12-08"),
                           instrument_until("scale", std::nullopt), instrument_until("dial 1", "2026-11-24")},
                          QDate(2026, 11, 24));
  REQUIRE(heeds.size() == 4);
  CHECK(heeds[0].what == "wrench 3");
  CHECK(heeds[0].text == "Calibration overdue since 20 Nov 2026.");
  CHECK(heeds[0].pressing);
  CHECK(heeds[1].text == "Calibration due 24 Nov 2026, today.");
  CHECK_FALSE(heeds[1].pressing);
  CHECK(heeds[2].text == "Calibration due 30 Nov 2026, in 6 days.");
  CHECK(heeds[3].what == "meter 1");
}

TEST_CASE("shims that run out are named by tray, wanted ones first") {
  const store::Tray quiet{"", "small D6", {counted_shim("1.10", 1)}};
  const store::Tray full{"", "large D6", {counted_shim("1.10", 2), counted_shim("1.15", std::nullopt)}};
  const store::Tray wanted{"", "large D7", {counted_shim("1.60", 0), counted_shim("1.65", 1), counted_shim("1.70", 1)}};
  const auto heeds = bench::low_trays({quiet, full, wanted}, {{"large D7", 2}});
  REQUIRE(heeds.size() == 2);
  CHECK(heeds[0].what == "Tray large D7");
  CHECK(heeds[0].text == "None left of 1.60. One left of 1.65, 1.70. 2 open jobs may want a shim of this tray.");
  CHECK(heeds[0].pressing);
  CHECK(heeds[1].text == "One left of 1.10. No open job waits for a shim of this tray.");
  CHECK_FALSE(heeds[1].pressing);
}

TEST_CASE("a long list of shims is cut and counted") {
  store::Tray tray{"", "large", {}};
  for (int at = 0; at < 9; ++at) {
    tray.shims.push_back(counted_shim("1." + std::to_string(10 + at), 1));
  }
  const auto heeds = bench::low_trays({tray}, {{"large", 1}});
  REQUIRE(heeds.size() == 1);
  CHECK(heeds[0].text ==
        "One left of 1.10, 1.11, 1.12, 1.13, 1.14, 1.15 and 3 more. One open job may want a shim of this tray.");
}

TEST_CASE("a job wants from a tray until the float of that side is accepted") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  std::map<std::string, int> wishes;
  bench::add_wishes(wishes, bench.workbench().state());
  CHECK(wishes == std::map<std::string, int>{{"large D7", 1}, {"small D7", 1}});
  test::UiBench done;
  done.go_to("");
  std::map<std::string, int> none;
  bench::add_wishes(none, done.workbench().state());
  CHECK(none.empty());
}

TEST_CASE("a backup that is old or unknown is told") {
  const job::Moment now{1795421400000, 0, false};
  constexpr std::int64_t day_ms = 86400000;
  CHECK(bench::backup_heed(std::nullopt, now));
  CHECK_FALSE(bench::backup_heed(now, now));
  CHECK_FALSE(bench::backup_heed(job::Moment{now.at_ms - day_ms, 0, false}, now));
  const auto old = bench::backup_heed(job::Moment{now.at_ms - 3 * day_ms, 0, false}, now);
  REQUIRE(old);
  CHECK(old->text.contains("3 days old"));
}

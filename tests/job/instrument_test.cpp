#include <catch2/catch.hpp>

#include "shimwright/job/context.h"

namespace shimwright::job {

namespace {

/// 23 November 2026, 23:30 UTC, an hour ahead: there it is the 24th already.
constexpr Moment late_monday{1'795'476'600'000, 60, false};

Calibration calibrated_to(std::optional<std::string> day) {
  Instrument dial;
  dial.calibrated_to = std::move(day);
  return calibration_of(dial, late_monday);
}

}  // namespace

TEST_CASE("The day of a moment is the one where it was") {
  CHECK(iso_day_of(late_monday) == "2026-11-24");
  CHECK(iso_day_of({late_monday.at_ms, 0, false}) == "2026-11-23");
  CHECK(iso_day_of({0, 0, false}) == "1970-01-01");
  CHECK(iso_day_of({-1, 0, false}) == "1969-12-31");
  CHECK(iso_day_of({951'782'400'000, 0, false}) == "2000-02-29");
}

TEST_CASE("An instrument is good through its last day, and due in the thirty days before") {
  CHECK(calibrated_to(std::nullopt) == Calibration::no_date);
  CHECK(calibrated_to("2026-11-23") == Calibration::overdue);
  CHECK(calibrated_to("2026-11-24") == Calibration::due_soon);
  CHECK(calibrated_to("2026-12-24") == Calibration::due_soon);
  CHECK(calibrated_to("2026-12-25") == Calibration::in_date);
}

TEST_CASE("A date is a day of the calendar in figures") {
  for (const char* good : {"2026-11-24", "2024-02-29", "1999-12-31"}) {
    CHECK(is_date(good));
  }
  for (const char* bad : {"", "2026-11-31", "2026-02-29", "2026-13-01", "26-11-24", "2026/11/24", "2026-1-1x",
                          "24.11.2026", "2026-11-24 "}) {
    CHECK_FALSE(is_date(bad));
  }
}

}  // namespace shimwright::job

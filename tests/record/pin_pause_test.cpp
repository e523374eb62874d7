#include "shimwright/record/pin_pause.h"

#include <catch2/catch.hpp>

using namespace shimwright;
using namespace shimwright::record;

TEST_CASE("the pause after wrong PINs grows to its end and no further") {
  const PinPause pause{2, 1000, 5000};
  PinAttempts attempts;
  std::vector<std::int64_t> waits;
  for (int wrong = 0; wrong < 7; ++wrong) {
    attempts = after_wrong_pin(attempts, pause, 100);
    waits.push_back(attempts.not_before_ms == 0 ? 0 : attempts.not_before_ms - 100);
  }
  CHECK(waits == std::vector<std::int64_t>{0, 0, 1000, 2000, 4000, 5000, 5000});
  CHECK(attempts.failed == 7);
}

TEST_CASE("while the pause lasts no PIN is looked at, and the sentence says how long") {
  const PinPause pause;
  const PinAttempts attempts{4, 31'000};
  const auto early = may_try_pin(attempts, pause, 1001);
  REQUIRE_FALSE(early);
  CHECK(early.error().code == "pin_pause");
  CHECK(early.error().in_english() == "pin: The PIN was wrong 4 times: try again in 30 seconds; nothing is lost.");
  CHECK_FALSE(may_try_pin(attempts, pause, 30'999));
  CHECK(may_try_pin(attempts, pause, 31'000));
  CHECK(may_try_pin({}, pause, 0));
}

TEST_CASE("a clock set back by days does not lock a person out") {
  CHECK(may_try_pin({4, 100'000'000}, PinPause{}, 1));
}

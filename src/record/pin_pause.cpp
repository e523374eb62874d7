#include "shimwright/record/pin_pause.h"

#include <algorithm>
#include <string>

namespace shimwright::record {

Result<void> may_try_pin(const PinAttempts& attempts, const PinPause& pause, std::int64_t now_ms) {
  const std::int64_t left = attempts.not_before_ms - now_ms;
  if (left <= 0 || left > pause.most_ms) {
    return {};
  }
  constexpr std::int64_t second = 1000;
  return refuse("pin_pause", "pin",
                SHIMWRIGHT_TEXT("record", "The PIN was wrong {0} times: try again in {1} seconds; nothing is lost."),
                {std::to_string(attempts.failed), std::to_string((left + second - 1) / second)});
}

PinAttempts after_wrong_pin(const PinAttempts& attempts, const PinPause& pause, std::int64_t now_ms) {
  PinAttempts after{attempts.failed + 1, 0};
  if (after.failed > pause.free_attempts) {
    std::int64_t wait = pause.first_ms;
    for (std::int64_t more = pause.free_attempts + 1; more < after.failed && wait < pause.most_ms; ++more) {
      wait *= 2;
    }
    after.not_before_ms = now_ms + std::min(wait, pause.most_ms);
  }
  return after;
}

}  // namespace shimwright::record

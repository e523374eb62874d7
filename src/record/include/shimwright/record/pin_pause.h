#pragma once

#include <cstdint>

#include "shimwright/quantity/error.h"

/// After wrong PINs the next one has to wait, ever longer. Nothing sleeps: what is kept says when it is time again.
namespace shimwright::record {

struct PinPause {
  int free_attempts = 3;           ///< wrong ones without a pause
  std::int64_t first_ms = 30'000;  ///< then this long, and twice as long after each further one
  std::int64_t most_ms = 3'600'000;
};

/// Kept with the person; both 0 after the right PIN.
struct PinAttempts {
  std::int64_t failed = 0;
  std::int64_t not_before_ms = 0;  ///< UTC
  friend bool operator==(const PinAttempts&, const PinAttempts&) = default;
};

/// Code: `pin_pause`; the sentence says how many seconds are left. A clock that was set back far does not lock anybody
/// out.
[[nodiscard]] Result<void> may_try_pin(const PinAttempts& attempts, const PinPause& pause, std::int64_t now_ms);

[[nodiscard]] PinAttempts after_wrong_pin(const PinAttempts& attempts, const PinPause& pause, std::int64_t now_ms);

}  // namespace shimwright::record

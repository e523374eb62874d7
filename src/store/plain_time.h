#pragma once

#include <cstdint>
#include <string>

namespace shimwright::store {

/// A time as a person reads it on this machine's clock, the same in every language: `2026-11-27 14:03 UTC+01:00`.
[[nodiscard]] std::string plain_time(std::int64_t at_ms);

}  // namespace shimwright::store

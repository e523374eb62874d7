#pragma once

#include <cstdint>
#include <memory>
#include <string>

#include "shimwright/record/signing_key.h"

/// Keys that a test can make again, at a price a test can pay.
namespace shimwright::record_test {

inline constexpr record::PinCost cheap{1, 8192};

/// 0, 1, 2 … in place of chance; each call begins a count of its own.
inline record::Chance counted_chance(std::uint8_t first = 0) {
  auto next = std::make_shared<std::uint8_t>(first);
  return [next](std::span<std::uint8_t> bytes) {
    for (std::uint8_t& byte : bytes) {
      byte = (*next)++;
    }
  };
}

inline record::Pin pin(std::string text) {
  return record::Pin::taken_from(text);
}

}  // namespace shimwright::record_test

#include "plain_time.h"

#include <catch2/catch.hpp>

namespace shimwright::store {

// The tests run in Kathmandu.
TEST_CASE("a time is told with the offset of this machine") {
  CHECK(plain_time(1795421400000) == "2026-11-23 13:55 UTC+05:45");
  CHECK(plain_time(0) == "1970-01-01 05:30 UTC+05:30");
}

}  // namespace shimwright::store

#include "base45.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace shimwright::record;

TEST_CASE("the examples of RFC 9285") {
  CHECK(base45("AB") == "BB8");
  CHECK(base45("Hello!!") == "%69 VD92EX0");
  CHECK(base45("base-45") == "UJCLQE7W581");
  CHECK(from_base45("QED8WEX0") == "ietf!");
}

TEST_CASE("any bytes come back, and only what was written is read") {
  CHECK(rc::check([](const std::string& bytes) { RC_ASSERT((from_base45(base45(bytes)) == bytes)); }));
  CHECK(rc::check([](const std::string& text) {
    const auto bytes = from_base45(text);
    RC_ASSERT((!bytes || base45(*bytes) == text));
  }));
  for (const char* bad : {"A", "AAAA", ":::", "::", "a", "GGW"}) {
    CHECK_FALSE(from_base45(bad));
  }
}

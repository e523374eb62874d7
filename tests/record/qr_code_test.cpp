#include "qr_code.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "sealed_sample.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

constexpr record::Box box{100, 50, 28, 28};

bool dark(const record::Code& code, int column, int row) {
  return code.dark[static_cast<std::size_t>(row * code.side + column)];
}

/// The rings by which a camera finds a corner: seven squares wide, dark, white and dark.
bool finder_at(const record::Code& code, int left, int top) {
  for (int row = 0; row < 7; ++row) {
    for (int column = 0; column < 7; ++column) {
      const int ring = std::min({row, column, 6 - row, 6 - column});
      if (dark(code, left + column, top + row) != (ring != 1)) {
        return false;
      }
    }
  }
  return true;
}

}  // namespace

TEST_CASE("the code of a sealed record has its three corners and its timing, and squares a camera can tell apart") {
  const record::Code code = record::qr_code(sealed_sample().code, box);
  REQUIRE(code.side >= 21);
  REQUIRE(code.dark.size() == static_cast<std::size_t>(code.side) * static_cast<std::size_t>(code.side));
  CHECK(finder_at(code, 0, 0));
  CHECK(finder_at(code, code.side - 7, 0));
  CHECK(finder_at(code, 0, code.side - 7));
  CHECK_FALSE(finder_at(code, code.side - 7, code.side - 7));
  for (int at = 8; at < code.side - 8; ++at) {
    CHECK(dark(code, at, 6) == (at % 2 == 0));
    CHECK(dark(code, 6, at) == (at % 2 == 0));
  }
  CHECK(code.box.width_mm / code.side > 0.4);
}

TEST_CASE("another payload gives another code, the same one the same") {
  const record::SignedRecord sealed = sealed_sample();
  std::string other = sealed.code;
  other.back() = other.back() == 'A' ? 'B' : 'A';
  CHECK(record::qr_code(sealed.code, box).dark == record::qr_code(sealed.code, box).dark);
  CHECK(record::qr_code(sealed.code, box).dark != record::qr_code(other, box).dark);
}

TEST_CASE("what no code holds gives none") {
  const record::Code code = record::qr_code(std::string(5000, 'A'), box);
  CHECK(code.side == 0);
  CHECK(code.dark.empty());
}

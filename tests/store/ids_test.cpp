#include "shimwright/store/ids.h"

#include <algorithm>
#include <set>

#include <catch2/catch.hpp>

#include "shimwright/record/hash.h"

namespace shimwright::store {

namespace {

Chance counting() {
  return [next = std::uint8_t{0}](std::span<std::uint8_t> bytes) mutable {
    for (std::uint8_t& byte : bytes) {
      byte = next++;
    }
  };
}

}  // namespace

TEST_CASE("an id is a UUID version 7 of its time") {
  // The example of RFC 9562, appendix A.6.
  CHECK(uuid_version_7(0x017F22E279B0, {0xFC, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F}) ==
        "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  CHECK(uuid_version_7(0, {0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF}) ==
        "00000000-0000-7fff-bfff-ffffffffffff");
}

TEST_CASE("ids of later times come later") {
  IdSource ids;
  CHECK(ids.id(1795421400000) < ids.id(1795421400001));
}

TEST_CASE("ids of one time differ") {
  IdSource ids;
  std::set<std::string> drawn;
  for (int count = 0; count < 1000; ++count) {
    drawn.insert(ids.id(1795421400000));
  }
  CHECK(drawn.size() == 1000);
}

TEST_CASE("the text form of an id is known") {
  CHECK(is_uuid("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
  for (const char* text : {"", "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398f0",
                           "017F22E2-79b0-7cc3-98c4-dc0c0c07398f", "017f22e2079b0-7cc3-98c4-dc0c0c07398f",
                           "017f22e2-79b0-7cc3-98c4-dc0c0c07398g", "017f22e-279b0-7cc3-98c4-dc0c0c07398f"}) {
    INFO(text);
    CHECK_FALSE(is_uuid(text));
  }
}

TEST_CASE("a personal text gets a salt of its own and the digest over both") {
  IdSource ids(counting());
  const job::PrivateText first = ids.private_text("HL-MK 412", 1795421400000);
  const job::PrivateText second = ids.private_text("HL-MK 412", 1795421400000);
  CHECK(first.salt == "000102030405060708090a0b0c0d0e0f");
  CHECK(first.salt != second.salt);
  CHECK(first.id != second.id);
  CHECK(is_uuid(first.id));
  CHECK(first.text == "HL-MK 412");
  CHECK(first.digest == record::private_digest(first.salt, "HL-MK 412"));
  CHECK(first.digest != second.digest);
}

TEST_CASE("chance fills every byte it is given") {
  std::array<std::uint8_t, 64> bytes{};
  system_chance()(bytes);
  // All zero by chance: once in 2^512.
  CHECK(std::any_of(bytes.begin(), bytes.end(), [](std::uint8_t byte) { return byte != 0; }));
}

}  // namespace shimwright::store

#include <set>

#include <catch2/catch.hpp>

#include "shimwright/record/hash.h"
#include "shimwright/record/seal_code.h"

using namespace shimwright;
using namespace shimwright::record;

namespace {

const std::string symbols = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

std::string groups_of(int number) {
  return seal_groups(sha256_hex(std::to_string(number)));
}

}  // namespace

TEST_CASE("a seal is five groups of four, without symbols that look alike") {
  for (int number = 0; number < 200; ++number) {
    const std::string groups = groups_of(number);
    REQUIRE(groups.size() == 24);
    for (std::size_t at = 0; at < groups.size(); ++at) {
      CHECK((groups[at] == '-') == (at % 5 == 4));
      CHECK(std::string("ILOU").find(groups[at]) == std::string::npos);
    }
    CHECK(read_seal_groups(groups) == groups);
  }
  CHECK(seal_groups(std::string(64, '0')) == "0000-0000-0000-0000-0000");
  CHECK(seal_groups(std::string(64, 'f')).substr(0, 23) == "ZZZZ-ZZZZ-ZZZZ-ZZZZ-ZZZ");
  CHECK(seal_groups("no digest").empty());
}

TEST_CASE("what is typed differently and means the same is taken") {
  const std::string groups = groups_of(1);
  std::string small;
  for (const char each : groups) {
    small += each == '-' ? ' ' : static_cast<char>(std::tolower(each));
  }
  CHECK(read_seal_groups(small) == groups);
  CHECK(read_seal_groups("oooo-oooo-oooo-oooo-oooo") == "0000-0000-0000-0000-0000");
}

TEST_CASE("every single wrong symbol and every swap of two is found") {
  for (int number = 0; number < 20; ++number) {
    const std::string groups = groups_of(number);
    for (std::size_t at = 0; at < groups.size(); ++at) {
      for (const char symbol : symbols) {
        std::string wrong = groups;
        wrong[at] = symbol;
        CHECK(static_cast<bool>(read_seal_groups(wrong)) == (wrong == groups));
      }
      for (std::size_t other = at + 1; other < groups.size(); ++other) {
        std::string swapped = groups;
        std::swap(swapped[at], swapped[other]);
        const bool same = swapped == groups || swapped[at] == '-' || swapped[other] == '-';
        CHECK((same || !read_seal_groups(swapped)));
      }
    }
  }
  for (const char* bad : {"", "0000", "0000-0000-0000-0000-0000-0", "UUUU-0000-0000-0000-0000"}) {
    const auto refused = read_seal_groups(bad);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "bad_seal_groups");
  }
}

#include "shimwright/sheet/sheet_check.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

namespace shimwright::sheet {

TEST_CASE("another person checks a sheet on the very day, who entered it on a later one") {
  CHECK(check_counts({"mk", "2026-11-27"}, {"rt", "2026-11-27"}) == true);
  CHECK(check_counts({"mk", "2026-11-27"}, {"mk", "2026-11-28"}) == false);
  CHECK(check_counts({"mk", "2026-12-31"}, {"mk", "2027-01-01"}) == false);
  CHECK(check_counts({"", "2026-11-27"}, {"mk", "2026-11-27"}) == true);
}

TEST_CASE("who entered a sheet does not check it on the same day, nor under a clock that was set back") {
  for (const char* day : {"2026-11-27", "2026-11-26", "2025-12-31"}) {
    const auto counts = check_counts({"mk", "2026-11-27"}, {"mk", day});
    REQUIRE_FALSE(counts);
    CHECK(counts.error().code == "check_too_soon");
  }
}

TEST_CASE("a check without a name is none") {
  const auto counts = check_counts({"mk", "2026-11-27"}, {"", "2026-11-28"});
  REQUIRE_FALSE(counts);
  CHECK(counts.error().code == "nobody");
}

TEST_CASE("a check that counts is a second person's, or a later day's and said so") {
  CHECK(rc::check("for any two persons and days", [] {
    const auto person = rc::gen::element<std::string>("mk", "rt");
    const auto day = rc::gen::element<std::string>("2026-11-26", "2026-11-27", "2026-12-01", "2027-01-01");
    const OnDay entered{*person, *day};
    const OnDay checked{*person, *day};
    const auto counts = check_counts(entered, checked);
    const bool second = entered.person != checked.person;
    RC_ASSERT(counts.has_value() == (second || checked.day > entered.day));
    RC_ASSERT(!counts || *counts == second);
  }));
}

}  // namespace shimwright::sheet

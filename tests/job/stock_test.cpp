#include "shimwright/job/stock.h"

#include <rapidcheck.h>

#include <algorithm>

#include <catch2/catch.hpp>

namespace shimwright::job {

namespace {

using Taken = std::map<std::string, int>;

ShimUse chosen(const std::string& job, std::int64_t seq, const std::string& shim, std::int64_t at_ms,
               std::optional<std::int64_t> withdrawn_at_ms = std::nullopt) {
  return {job, sheet::Side::lower, seq, shim, at_ms, withdrawn_at_ms};
}

ShimUse any_use() {
  ShimUse use{*rc::gen::element<std::string>("a", "b", "c"), *rc::gen::element(sheet::Side::lower, sheet::Side::upper),
              *rc::gen::inRange<std::int64_t>(1, 1000),      *rc::gen::element<std::string>("1.60", "1.65", "1.70"),
              *rc::gen::inRange<std::int64_t>(0, 1000),      std::nullopt};
  if (*rc::gen::arbitrary<bool>()) {
    use.withdrawn_at_ms = use.at_ms + *rc::gen::inRange<std::int64_t>(0, 500);
  }
  return use;
}

std::vector<ShimUse> any_uses() {
  std::vector<ShimUse> uses;
  const int count = *rc::gen::inRange(0, 12);
  for (int each = 0; each < count; ++each) {
    uses.push_back(any_use());
  }
  return uses;
}

}  // namespace

TEST_CASE("A shim chosen since the count is one less, one chosen before was not there to be counted") {
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 150)}) == Taken{{"1.65", 1}});
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 50)}).empty());
}

TEST_CASE("A shim that another one took the place of came back") {
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 50), chosen("a", 20, "1.60", 150)}) ==
        Taken{{"1.60", 1}, {"1.65", -1}});
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 120), chosen("a", 20, "1.60", 150)}) == Taken{{"1.60", 1}});
}

TEST_CASE("A choice taken back puts its shim back, and the one before counts again") {
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 120, 130)}).empty());
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 50, 130)}) == Taken{{"1.65", -1}});
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 50), chosen("a", 9, "1.60", 60, 130)}) ==
        Taken{{"1.60", -1}, {"1.65", 1}});
}

TEST_CASE("Each side of each job holds its own shim") {
  ShimUse upper = chosen("a", 9, "1.65", 160);
  upper.side = sheet::Side::upper;
  CHECK(taken_since(100, {chosen("a", 7, "1.65", 150), upper, chosen("b", 7, "1.65", 170)}) == Taken{{"1.65", 3}});
}

TEST_CASE("Counting later says the same: what was taken until then and since then adds up") {
  CHECK(rc::check([] {
    const auto uses = any_uses();
    const auto early = *rc::gen::inRange<std::int64_t>(0, 1500);
    const auto late = early + *rc::gen::inRange<std::int64_t>(0, 500);
    // As the uses stood at the later moment.
    std::vector<ShimUse> then;
    for (ShimUse use : uses) {
      if (use.at_ms <= late) {
        if (use.withdrawn_at_ms && *use.withdrawn_at_ms > late) {
          use.withdrawn_at_ms.reset();
        }
        then.push_back(use);
      }
    }
    Taken sum = taken_since(early, then);
    for (const auto& [shim, count] : taken_since(late, uses)) {
      sum[shim] += count;
    }
    std::erase_if(sum, [](const auto& each) { return each.second == 0; });
    RC_ASSERT(sum == taken_since(early, uses));
  }));
}

TEST_CASE("The order of what is handed in does not matter, and no shim is taken that nobody chose") {
  CHECK(rc::check([] {
    auto uses = any_uses();
    // A job's entries have numbers of their own.
    for (std::size_t at = 0; at < uses.size(); ++at) {
      uses[at].seq = static_cast<std::int64_t>(at);
    }
    const Taken taken = taken_since(500, uses);
    std::reverse(uses.begin(), uses.end());
    RC_ASSERT(taken_since(500, uses) == taken);
    for (const auto& [shim, count] : taken) {
      const auto chosen_ever =
          std::count_if(uses.begin(), uses.end(), [&](const ShimUse& use) { return use.shim == shim; });
      RC_ASSERT(std::abs(count) <= chosen_ever);
    }
  }));
}

TEST_CASE("A shim is ordered at its number and below, and may run out where jobs are expected to take all") {
  CHECK(is_low(2, 2));
  CHECK(is_low(0, 2));
  CHECK_FALSE(is_low(3, 2));
  CHECK_FALSE(is_low(std::nullopt, 2));
  CHECK_FALSE(is_low(0, std::nullopt));
  CHECK(may_run_out(1, 1.2));
  CHECK(may_run_out(0, 0.3));
  CHECK_FALSE(may_run_out(0, 0.01));
  CHECK_FALSE(may_run_out(2, 1.2));
}

}  // namespace shimwright::job

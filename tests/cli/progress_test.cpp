#include "progress.h"

#include <catch2/catch.hpp>
#include <vector>

using namespace shimwright;

TEST_CASE("work that is soon done says nothing on its way, and long work each tenth") {
  std::vector<std::string> told;
  std::chrono::steady_clock::time_point now;
  const store::BackupWatch watch = cli::told_on_the_way(
      "check", [&told](std::string_view line) { told.emplace_back(line); }, [&now] { return now; });
  for (std::int64_t done = 0; done <= 50; ++done) {
    watch.progress(done, 1000);
  }
  CHECK(told.empty());
  now += std::chrono::seconds(2);
  for (std::int64_t done = 50; done <= 1000; ++done) {
    watch.progress(done, 1000);
  }
  REQUIRE(told.size() == 11);
  CHECK(told.front() == "check: 50 of 1000");
  CHECK(told.back() == "check: 1000 of 1000");
  watch.progress(0, 0);
  CHECK(told.size() == 11);
}

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::string sentences(const record::Record& record) {
  std::string all;
  for (const Message& message : record.result) {
    all += (all.empty() ? "" : " ") + message.in_english();
  }
  return all;
}

}  // namespace

TEST_CASE("the result of a finished job") {
  CHECK(sentences(record_of(finished_job())) ==
        "Both discs free within limits at the second assembly. Large bearing shim 1.95, small bearing shim 1.75. "
        "Teach-in completed, road test passed. One deviation, below.");
}

#include <catch2/catch.hpp>

#include "job_words.h"
#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("what was answered is said for every entry that can be taken back") {
  test::UiBench bench;
  bench.go_to("");
  for (const job::Entry& entry : bench.workbench().state().entries) {
    if (job::step_of(entry.body) != nullptr && !std::holds_alternative<job::Advised>(entry.body)) {
      INFO(job::kind_of(entry.body));
      CHECK_FALSE(bench::answer_words(entry.body).isEmpty());
    }
  }
}

TEST_CASE("a trial is told by its shim and how it felt") {
  CHECK(bench::answer_words(job::ShimTried{{"large-gauge-fit", 1}, job::Side::lower, "1.65", job::Fit::snug}) ==
        "1.65 snug");
}

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using job::Conclusion;
using job::ReadingVerdict;

namespace {

std::string sentences(const Bench& bench) {
  std::string all;
  for (const Message& message : record_of(bench).result) {
    all += (all.empty() ? "" : " ") + message.in_english();
  }
  return all;
}

/// Both discs measured in the first assembly, the upper one within.
Bench measured(Conclusion lower, ReadingVerdict verdict) {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.56", "0.58", "0.61"});
  bench.advise_float("lower-float", Side::lower, lower, {560, 580, 610}, verdict);
  bench.runs("upper-float", Side::upper, {"0.47", "0.50", "0.46"});
  bench.advise_float("upper-float", Side::upper, Conclusion::keep, {470, 500, 460}, ReadingVerdict::within);
  return bench;
}

void sign(Bench& bench) {
  bench.add(job::Signed{bench.here("sign-checker"), sheet::Signer::checker});
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the result of a finished job") {
  CHECK(sentences(finished_job()) ==
        "Both discs free within limits at the second assembly. Large bearing shim 1.95, small bearing shim 1.75. "
        "Teach-in completed, road test passed. One deviation, below.");
}

TEST_CASE("an open job says so before anything else") {
  CHECK(sentences(open_job()) == "Open job: not finished; next is “In which gears?”. One deviation, below.");
}

TEST_CASE("a disc that is off is never told as free") {
  Bench bench = measured(Conclusion::change_shim, ReadingVerdict::too_large);
  CHECK(contains(sentences(bench), "Lower disc not free within limits at the first assembly: too large."));
  CHECK(contains(sentences(bench), "Upper disc free within limits at the first assembly."));
  bench.add(job::Deviated{bench.here("lower-float"), "customer's wish"});
  CHECK(contains(sentences(bench), "Lower disc too large at the first assembly, accepted with a reason, below."));
}

TEST_CASE("a disc kept close to its limit is told apart from one well within") {
  const Bench bench = measured(Conclusion::keep, ReadingVerdict::on_limit);
  CHECK(contains(sentences(bench), "Lower disc free close to its limit at the first assembly."));
}

TEST_CASE("a job closed with things missing says what is missing") {
  Bench bench;
  bench.add(opened());
  sign(bench);
  CHECK(sentences(bench) ==
        "Float of the lower disc not measured. Float of the upper disc not measured. "
        "No shim on record for the large bearing. No shim on record for the small bearing. "
        "Teach-in not done. Road test not done. No deviation.");
}

TEST_CASE("after the pack came off again an earlier float is no result") {
  Bench bench = measured(Conclusion::keep, ReadingVerdict::within);
  CHECK(contains(sentences(bench), "Both discs free within limits at the first assembly."));
  bench.begin_assembly({Side::lower}, "noise");
  CHECK_FALSE(contains(sentences(bench), "free"));
}

TEST_CASE("a run taken back takes the verdict with it") {
  Bench bench = measured(Conclusion::keep, ReadingVerdict::within);
  bench.add(job::Withdrawn{2, "slipped"});
  CHECK(contains(sentences(bench), "Lower disc measured at the first assembly, not judged."));
}

TEST_CASE("a teach-in that failed is not completed") {
  Bench bench = measured(Conclusion::keep, ReadingVerdict::within);
  job::TeachInTried tried;
  tried.at = bench.here("teach-in-lower");
  tried.reason = "voltage fell";
  bench.add(tried);
  CHECK(contains(sentences(bench), "Teach-in not completed."));
}

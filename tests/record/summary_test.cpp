#include "shimwright/record/summary.h"

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::string told(const Bench& bench) {
  std::string all;
  for (const std::string& sentence : record::summary(record_of(bench))) {
    all += sentence + "\n";
  }
  return all;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the summary says which shims were fitted and why") {
  const std::string text = told(finished_job());
  CHECK(text.rfind("Both discs free within limits", 0) == 0);
  CHECK(contains(text,
                 "Large bearing, assembly 2: shim 1.95, after the trials 1.95 snug, 2.00 tight. "
                 "Chance that it is the best fitting one: 93 %. Fit shim 1.95: the trials put the seat there."));
  CHECK(contains(text, "Small bearing, assembly 1, 2: shim 1.75"));
  CHECK(contains(text, "Lower disc, assembly 1, series 1: mean float 0.931 mm, too large."));
  CHECK(contains(text, "Lower disc as found: mean float 0.596 mm. "));
  CHECK(contains(text, "Deviation at “Engagement bearings and support bearing”"));
  CHECK(contains(text, "Limits and values are demonstration values."));
}

TEST_CASE("an open job tells what is missing") {
  const std::string text = told(open_job());
  CHECK(contains(text, "Large bearing, assembly 1: no shim chosen yet, after the trials 1.75 tight."));
  CHECK(contains(text, "Not measured: "));
}

TEST_CASE("a shim taken against advice carries its reason, one by depth its depths") {
  Bench bench;
  bench.add(opened());
  bench.add(
      job::DepthsRead{bench.here("large-depth"), Side::lower, {typed("12.48"), typed("12.51")}, typed("3.02"), {}, {}});
  bench.add(job::ShimChosen{bench.here("large-depth"),
                            Side::lower,
                            "1.65",
                            quantity::micrometres(1650),
                            0.003,
                            job::ChosenBy::person,
                            std::nullopt,
                            "1.60 is out of stock",
                            {}});
  CHECK(contains(told(bench), "shim 1.65, from the depths 12.48 mm, 12.51 mm. Reason given: “1.60 is out of stock”."));
}

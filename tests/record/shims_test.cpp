#include <catch2/catch.hpp>

#include "sample_job.h"
#include "shimwright/job/evolve.h"
#include "shimwright/record/record_json.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("each assembly that found its shim anew has its own line") {
  const auto record = record_of(finished_job());
  REQUIRE(record.shims.size() == 3);
  const auto& first = record.shims[0];
  CHECK(first.side == Side::lower);
  CHECK(first.assemblies == std::vector<int>{1});
  REQUIRE(first.trials.size() == 3);
  CHECK(first.trials[1].shim == "1.55");
  CHECK(first.trials[1].fit == job::Fit::loose);
  REQUIRE(first.choices.size() == 1);
  CHECK(first.choices.front().shim == "1.60");
  CHECK(first.choices.front().u_nm == 3000);
  REQUIRE(first.measured.size() == 1);
  CHECK(quantity::text_of(first.measured.front().number) == "1.601 mm");
  CHECK(record.shims[1].assemblies == std::vector<int>{2});
  CHECK(record.shims[1].choices.back().shim == "1.95");
}

TEST_CASE("a shim that stayed joins its assemblies") {
  const auto record = record_of(finished_job());
  CHECK(record.shims[2].side == Side::upper);
  CHECK(record.shims[2].assemblies == std::vector<int>{1, 2});
}

TEST_CASE("a shim measured again joins the line it belongs to") {
  Bench bench = finished_job();
  bench.begin_assembly({}, "ring renewed");
  bench.read("large-shim-measured", {reading("thickness", "1.953")});
  const auto record = record_of(bench);
  CHECK(record.shims[1].assemblies == std::vector<int>{2, 3});
  REQUIRE(record.shims[1].measured.size() == 2);
  CHECK(quantity::digits_of(record.shims[1].measured.back().number) == "1.953");
}

TEST_CASE("old shims are there with the instrument they were measured with") {
  const auto record = record_of(finished_job());
  REQUIRE(record.old_shims.size() == 2);
  CHECK(quantity::digits_of(record.old_shims[0].reading.number) == "1.702");
  CHECK(record.old_shims[0].reading.instrument->name == "micrometer 1");
  CHECK_FALSE(record.old_shims[1].reading.instrument);
}

TEST_CASE("a trial taken back is no trial") {
  Bench bench;
  bench.add(opened());
  bench.trial("large-gauge-fit", Side::lower, "1.75", job::Fit::tight);
  bench.add(job::Withdrawn{2, "wrong shim in hand"});
  CHECK(record_of(bench).shims.empty());
}

TEST_CASE("depths are kept raw, with stamp and advice") {
  Bench bench;
  bench.add(opened());
  bench.add(job::DepthsRead{bench.here("large-depth"),
                            Side::lower,
                            {typed("12.48"), typed("12.51")},
                            typed("3.02"),
                            typed("-0.10"),
                            instrument("depth 1")});
  const auto record = record_of(bench);
  REQUIRE(record.shims.size() == 1);
  REQUIRE(record.shims.front().depths.size() == 1);
  CHECK(quantity::digits_of(record.shims.front().depths.front().readings[1]) == "12.51");
  CHECK(quantity::digits_of(*record.shims.front().depths.front().pack_stamp) == "-0.10");
}

TEST_CASE("a shim that came off again with its bearing does not stand, and does not join what follows") {
  Bench bench;
  bench.add(opened());
  bench.trial("large-gauge-fit", Side::lower, "1.95", job::Fit::snug);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  CHECK(record::shim_fitted(record_of(bench), Side::lower) == "1.95");
  bench.begin_assembly({Side::lower}, "bearing not home");
  const auto record = record_of(bench);
  REQUIRE(record.shims.size() == 2);
  CHECK(record.shims[0].assemblies == std::vector<int>{1});
  CHECK(record.shims[0].fitted == "1.95");
  CHECK(record.shims[1].assemblies == std::vector<int>{2});
  CHECK(record.shims[1].fitted.empty());
  CHECK(record::shim_fitted(record, Side::lower).empty());
}

TEST_CASE("the shim told is the one that stands, whatever was chosen before") {
  for (const Bench& bench : {finished_job(), open_job(), long_job()}) {
    const job::JobState state = job::fold(shipped_sheets(), bench.entries());
    const auto record = record_of(bench);
    for (const Side side : {Side::lower, Side::upper}) {
      const auto stands = state.shims.find(side);
      CHECK(record::shim_fitted(record, side) == (stands == state.shims.end() ? std::string() : stands->second));
    }
  }
}

TEST_CASE("what was frozen before such a bearing had a line of its own is still made the same") {
  Bench bench;
  bench.add(opened());
  bench.trial("large-gauge-fit", Side::lower, "1.95", job::Fit::snug);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  bench.begin_assembly({Side::lower}, "bearing not home");
  const auto record = record_of(bench);
  CHECK(record::sealed_part(record) != record::sealed_part_with_shims_joined(record));
  CHECK(record::sealed_part_with_shims_joined(record).find("\"assemblies\":[1,2]") != std::string::npos);
  const auto plain = record_of(finished_job());
  CHECK(record::sealed_part(plain) == record::sealed_part_with_shims_joined(plain));
}

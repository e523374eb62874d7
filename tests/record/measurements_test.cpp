#include "shimwright/record/measurements.h"

#include <algorithm>
#include <map>
#include <set>

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::Measurement;
using record::MeasurementKind;

namespace {

std::vector<Measurement> of_kind(const Bench& bench, MeasurementKind kind) {
  std::vector<Measurement> found;
  for (const Measurement& each : record::measurements(record_of(bench))) {
    if (each.kind == kind) {
      found.push_back(each);
    }
  }
  return found;
}

}  // namespace

TEST_CASE("every run of every float is there, with what it was lifted from and its limits") {
  const auto record = record_of(finished_job());
  std::size_t runs = 0;
  for (const auto& series : record.floats) {
    for (const auto& spot : series.spots) {
      runs += spot.runs.size();
    }
  }
  const auto lines = of_kind(finished_job(), MeasurementKind::float_run);
  const auto floats =
      std::count_if(lines.begin(), lines.end(), [](const auto& each) { return each.channel == "float"; });
  CHECK(static_cast<std::size_t>(floats) == runs);
  for (const char* channel : {"rest", "lifted"}) {
    CHECK(std::count_if(lines.begin(), lines.end(), [&](const auto& each) { return each.channel == channel; }) ==
          floats);
  }
  CHECK(lines.front().as_found);
  for (const Measurement& each : lines) {
    REQUIRE(each.number);
    REQUIRE(each.spot);
    if (each.channel == "float") {
      REQUIRE(each.limit);
      CHECK(each.limit->least == 250);
      CHECK(each.limit->most == 850);
    }
  }
}

TEST_CASE("a float of an assembly that came off again does not count") {
  const auto lines = of_kind(finished_job(), MeasurementKind::float_run);
  for (const Measurement& each : lines) {
    INFO(each.place.assembly << " as found " << each.as_found);
    CHECK(each.counts == (each.as_found || each.place.assembly == 2 || each.side == Side::upper));
  }
}

TEST_CASE("of the shims chosen for one seat the last counts") {
  Bench bench;
  bench.add(opened());
  bench.trial("large-gauge-fit", Side::lower, "1.95", job::Fit::snug);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  bench.choose_shim("large-gauge-fit", Side::lower, "2.00", 2001);
  const auto chosen = of_kind(bench, MeasurementKind::shim);
  REQUIRE(chosen.size() == 2);
  CHECK_FALSE(chosen[0].counts);
  CHECK(chosen[1].counts);
  CHECK(quantity::digits_of(*chosen[1].number) == "2.001");
  const auto trials = of_kind(bench, MeasurementKind::trial);
  REQUIRE(trials.size() == 1);
  CHECK(trials[0].word == "snug");
  CHECK_FALSE(trials[0].number);
}

TEST_CASE("what was taken back is not there") {
  Bench bench;
  bench.add(opened());
  const auto entry = bench.add(job::ShimTried{bench.here("large-gauge-fit"), Side::lower, "1.95", job::Fit::snug});
  bench.add(job::Withdrawn{entry, "slipped"});
  CHECK(of_kind(bench, MeasurementKind::trial).empty());
}

TEST_CASE("a job with every kind of entry gives every kind of measurement") {
  std::set<MeasurementKind> kinds;
  for (const Measurement& each : record::measurements(record_of(long_job()))) {
    kinds.insert(each.kind);
    CHECK_FALSE(record::name_of(each.kind).empty());
    CHECK((each.number || each.kind == MeasurementKind::trial));
  }
  for (const Measurement& each : record::measurements(record_of(finished_job()))) {
    kinds.insert(each.kind);
  }
  CHECK(kinds.size() == 10);
}

TEST_CASE("of two assemblies the numbers of the one that came off do not count, of every kind") {
  Bench bench;
  bench.add(opened());
  const auto measure = [&](const char* shim, int thickness, const char* measured) {
    bench.trial("large-gauge-fit", Side::lower, shim, job::Fit::snug);
    bench.add(job::DepthsRead{
        bench.here("large-depth"), Side::lower, {typed("12.48")}, typed("3.02"), std::nullopt, instrument("depth 1")});
    bench.choose_shim("large-gauge-fit", Side::lower, shim, thickness);
    bench.read("large-shim-measured", {reading("thickness", measured)});
    bench.runs("lower-float", Side::lower, {"0.50", "0.52", "0.51"});
  };
  measure("1.75", 1750, "1.752");
  bench.begin_assembly({Side::lower}, "bearing not home");
  measure("1.95", 1950, "1.953");
  for (const MeasurementKind kind : {MeasurementKind::trial, MeasurementKind::depth, MeasurementKind::shim,
                                     MeasurementKind::shim_measured, MeasurementKind::float_run}) {
    std::set<int> assemblies;
    for (const Measurement& each : of_kind(bench, kind)) {
      INFO(record::name_of(kind) << " " << each.place.assembly << " " << each.channel);
      assemblies.insert(each.place.assembly);
      CHECK(each.counts == (each.place.assembly == 2));
    }
    CHECK(assemblies == std::set<int>{1, 2});
  }
}

TEST_CASE("of attempts the last counts, and of a seat that came off no shim") {
  for (const Bench& bench : {finished_job(), long_job()}) {
    std::map<std::string, std::set<std::int64_t>> counted;
    for (const MeasurementKind kind :
         {MeasurementKind::peak, MeasurementKind::teach_in, MeasurementKind::old_shim, MeasurementKind::reading}) {
      for (const Measurement& each : of_kind(bench, kind)) {
        if (each.counts) {
          const std::string channel = kind == MeasurementKind::teach_in ? "" : each.channel;
          counted[std::string(record::name_of(kind)) + each.place.step + "/" + channel].insert(each.stamp.entry);
        }
      }
    }
    CHECK_FALSE(counted.empty());
    for (const auto& [step, entries] : counted) {
      INFO(step);
      CHECK(entries.size() == 1);
    }
  }
  Bench bench;
  bench.add(opened());
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  bench.begin_assembly({Side::lower}, "bearing not home");
  CHECK_FALSE(of_kind(bench, MeasurementKind::shim).front().counts);
}

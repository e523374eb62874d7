#include "depth_sum.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

job::Judgement depths_judged(test::UiBench& ui, const std::string& one, const std::string& two,
                             const std::string& stamp) {
  auto& bench = ui.workbench();
  std::string gauge;
  for (const auto& each : bench.context().instruments) {
    gauge = each.kind == sheet::InstrumentKind::depth_gauge ? each.id : gauge;
  }
  REQUIRE(bench.send(job::EnterDepths{"large-depth", {one, two}, "2.93", stamp, gauge}));
  const auto judgement = job::judge(bench.state(), *bench.state().sheets.job->find("large-depth"), bench.context());
  REQUIRE(judgement);
  REQUIRE(*judgement);
  return **judgement;
}

}  // namespace

TEST_CASE("the sum names every line up to the shim wanted") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to("large-depth");
  const auto judged = depths_judged(ui, "5.06", "5.05", "-0.12");
  const auto lines = bench::depth_sum(judged);
  REQUIRE(lines.size() == 5);
  CHECK(lines[0].title == "mean of 5.06 and 5.05");
  CHECK(lines[0].value == "5.055");
  CHECK(lines[1].value == QString::fromUtf8("\u2212 2.93"));
  CHECK(lines[3].title == "stamp");
  CHECK(lines[4].total);
  const QStringList parts = lines[4].value.split(QString::fromUtf8(" \u00b1 "));
  REQUIRE(parts.size() == 2);
  CHECK(parts[0] == "1.655");
  CHECK(parts[1].startsWith("0.02"));
  CHECK(parts[1].size() == parts[0].size());  // as many digits before the sign as behind it
  CHECK(bench::other_sign_words(judged) == "With plus it would be 1.80 or 1.95 instead of 1.65.");
  CHECK(bench::depth_margin(judged).startsWith("0.070 mm from the border to 1.80."));
}

TEST_CASE("the sizes have their borders, the chosen one or the two of an edge marked") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to("large-depth");
  const auto chosen = bench::depth_sizes(depths_judged(ui, "5.06", "5.05", "-0.12"));
  REQUIRE(chosen.size() == 13);
  CHECK_FALSE(chosen.back().to_mm);
  CHECK(std::count_if(chosen.begin(), chosen.end(), [](const auto& each) { return each.chosen; }) == 1);
  const auto edge = bench::depth_sizes(depths_judged(ui, "5.12", "5.13", "-0.12"));
  CHECK(std::count_if(edge.begin(), edge.end(), [](const auto& each) { return each.candidate; }) == 2);
  CHECK(std::none_of(edge.begin(), edge.end(), [](const auto& each) { return each.chosen; }));
}

TEST_CASE("tilted depths have no sum, and a stamp of zero no other sign") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to("large-depth");
  CHECK(bench::depth_sum(depths_judged(ui, "5.12", "5.33", "-0.12")).empty());
  CHECK(bench::other_sign_words(depths_judged(ui, "5.06", "5.05", "0.00")).isEmpty());
  CHECK(bench::depth_heading(job::Conclusion::tilted).startsWith("Tilted"));
}

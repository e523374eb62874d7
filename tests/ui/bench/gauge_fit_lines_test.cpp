#include "gauge_fit_lines.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

struct Fitting {
  test::UiBench ui;
  Fitting() { ui.go_to("large-gauge-fit"); }

  void feel(const std::string& shim, shim::Fit fit) {
    REQUIRE(ui.workbench().send(job::TryShim{"large-gauge-fit", shim, fit}));
  }
  [[nodiscard]] job::Judgement judged() {
    const auto& bench = ui.workbench();
    const auto judgement =
        job::judge(bench.state(), *bench.state().sheets.job->find("large-gauge-fit"), bench.context());
    REQUIRE(judgement);
    REQUIRE(*judgement);
    return **judgement;
  }
  [[nodiscard]] std::vector<job::TrayShim> tray() {
    return job::tray_of(ui.workbench().state(), sheet::Side::lower, ui.workbench().context());
  }
  [[nodiscard]] widgets::ShimRow row(const std::string& shim) {
    const auto rows = bench::gauge_fit_rows(judged(), tray(), {"1.65", "try this one", std::nullopt});
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& each) { return each.shim == shim; });
    REQUIRE(found != rows.end());
    return *found;
  }
};

}  // namespace

TEST_CASE("rows tell chance, trial and stock; ruled out ones the trial that did it") {
  Fitting fitting;
  CHECK(fitting.row("2.15").words == "5 in 100");
  CHECK_FALSE(fitting.row("2.15").struck);
  fitting.feel("1.75", shim::Fit::tight);
  fitting.feel("1.55", shim::Fit::loose);
  CHECK(fitting.row("1.75").struck);
  CHECK(fitting.row("1.75").words.startsWith("tight, trial 1"));
  CHECK(fitting.row("2.15").words == "ruled out by trial 1");
  CHECK(fitting.row("1.30").words == "ruled out by trial 2");
  CHECK(fitting.row("1.65").tray == "5 in the tray, measured 1.652");
  CHECK(fitting.row("1.70").tray == "2 in the tray");
  CHECK(bench::gauge_fit_folds(fitting.judged()).above == "ruled out by trial 1");
  CHECK(bench::gauge_fit_folds(fitting.judged()).below == "ruled out by trial 2");
  CHECK(bench::gauge_fit_line(fitting.judged()).contains("trials left; from the thickest down"));
}

TEST_CASE("on a contradiction only the shims tried are shown, those concerned marked") {
  Fitting fitting;
  fitting.feel("1.75", shim::Fit::tight);
  fitting.feel("1.55", shim::Fit::loose);
  fitting.feel("1.90", shim::Fit::loose);
  CHECK(fitting.row("1.90").conflicting);
  CHECK(fitting.row("1.75").conflicting);
  CHECK_FALSE(fitting.row("1.55").conflicting);
  CHECK(bench::contradiction_text(fitting.judged()).startsWith("No seat fits both trial 3 (1.90 loose) and trial 1"));
  CHECK(bench::contradicting_trials(fitting.judged()) == std::vector<std::size_t>{0, 2});
}

TEST_CASE("a shim is found by its mark, as it is typed or scanned") {
  Fitting fitting;
  CHECK(bench::shim_marked(fitting.tray(), "1,65") == "1.65");
  CHECK(bench::shim_marked(fitting.tray(), "1.65") == "1.65");
  CHECK_FALSE(bench::shim_marked(fitting.tray(), "1.66"));
  CHECK_FALSE(bench::shim_marked(fitting.tray(), "box 12"));
}

TEST_CASE("a shim that was felt to be wrong says so and no chance beside it") {
  Fitting fitting;
  fitting.feel("1.75", shim::Fit::tight);
  fitting.feel("1.55", shim::Fit::loose);
  fitting.feel("1.60", shim::Fit::snug);
  CHECK(fitting.row("1.55").struck);
  CHECK(fitting.row("1.55").words == "loose, trial 2");
  CHECK_FALSE(fitting.row("1.55").share);
  CHECK(fitting.row("1.60").words.startsWith("snug, trial 3"));
  CHECK(fitting.row("1.60").words.endsWith("in 100"));
}

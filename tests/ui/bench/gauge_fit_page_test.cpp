#include "gauge_fit_page.h"

#include "judged_pages.h"
#include "shown_page.h"

using namespace shimwright;

namespace {

const std::string gauge_step = "large-gauge-fit";

struct GaugePage : test::ShownPage {
  explicit GaugePage(test::UiBench& ui) : ShownPage(ui, gauge_step, bench::make_gauge_fit_page) {}
  void feel(const std::string& shim, int digit) {
    REQUIRE(page->take_burst(shim));
    REQUIRE(page->take_digit(digit));
  }
};

}  // namespace

TEST_CASE("before the first trial the gauge fit page says which shim to try, and a key says how it went") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  CHECK(shown.page->strip().large.startsWith("Try 1."));
  CHECK_FALSE(shown.page->take_digit(4));
  CHECK(shown.page->take_digit(1));
  CHECK(shown.count<job::ShimTried>(gauge_step) == 1);
  CHECK(shown.page->strip().small.endsWith("trial 2"));
  shown.press("loose");
  CHECK(shown.count<job::ShimTried>(gauge_step) == 2);
}

TEST_CASE("a shim named by a scanner is the one in hand, comma or point") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  CHECK_FALSE(shown.page->take_burst("9.99"));
  CHECK(shown.page->take_burst("1,75"));
  CHECK(shown.page->strip().large == "Try 1.75");
  shown.press("tight");
  const auto* tried = job::latest<job::ShimTried>(shown.bench.state(), gauge_step);
  REQUIRE(tried != nullptr);
  CHECK(tried->shim == "1.75");
  CHECK(tried->fit == shim::Fit::tight);
}

TEST_CASE("when the trials have settled the shim is taken, with its chance told") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  shown.feel("1.75", 1);
  shown.feel("1.55", 3);
  CHECK(shown.main_action().empty());
  shown.feel("1.65", 1);
  shown.feel("1.60", 2);
  CHECK(shown.page->strip().large == "Fit 1.60");
  CHECK(shown.main_action() == "take");
  shown.act("take");
  CHECK(shown.asks.empty());
  CHECK(shown.bench.state().shims.at(sheet::Side::lower) == "1.60");
  CHECK(shown.page->strip().small == "large bearing, taken");
}

TEST_CASE("another shim than the advised one is taken with a reason only") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  shown.feel("1.65", 1);
  shown.feel("1.55", 3);
  shown.feel("1.60", 2);
  REQUIRE(shown.page->take_burst("1.55"));
  shown.act("take-other");
  REQUIRE(shown.asks.size() == 1);
  CHECK(shown.bench.state().shims.count(sheet::Side::lower) == 0);
  shown.asks.front().answer("the old one felt so");
  CHECK(shown.bench.state().shims.at(sheet::Side::lower) == "1.55");
}

TEST_CASE("a contradiction stands on the page with both trials, and one of them can be taken back") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  shown.feel("1.75", 1);
  shown.feel("1.55", 3);
  shown.feel("1.90", 3);
  CHECK(shown.page->strip().bad);
  CHECK_FALSE(shown.page->take_digit(1));  // no shim in hand: nothing is said of it
  shown.press("take-back-3");
  CHECK(shown.count<job::ShimTried>(gauge_step) == 2);
  CHECK_FALSE(shown.page->strip().bad);
  shown.act("take-back");
  CHECK(shown.count<job::ShimTried>(gauge_step) == 1);
}

TEST_CASE("after a change for the float its shim is the one to try") {
  test::UiBench ui;
  ui.go_to("lower-float");
  const auto send = [&](const job::Command& command) { REQUIRE(ui.workbench().send(command)); };
  std::string dial;
  for (const auto& each : ui.workbench().context().instruments) {
    dial = each.kind == sheet::InstrumentKind::dial_gauge ? each.id : dial;
  }
  const auto measure = [&] {
    for (const int spot : {1, 2, 3, 1, 2, 3}) {
      send(job::EnterFloatRun{"lower-float", spot, "0.00", "0.93", "0.00", dial});
    }
  };
  measure();
  send(job::BeginSeries{"lower-float", {}, job::SeriesReason::seated_again});
  measure();
  const auto* advised = job::latest<job::Advised>(ui.workbench().state(), "lower-float");
  REQUIRE(advised != nullptr);
  REQUIRE(advised->conclusion == job::Conclusion::change_shim);
  const std::string wanted = advised->shim.value_or(std::string());
  send(job::BeginAssembly{{sheet::Side::lower}, "too large twice"});
  for (const char* step : {"hub-ring-off", "hub-out", "pack-ring-off"}) {
    send(job::DoStep{step});
  }
  GaugePage shown(ui);
  CHECK(shown.page->strip().large == QString("Try %1").arg(QString::fromStdString(wanted)));
  CHECK(shown.offers("take"));
}

TEST_CASE("Enter left over from before says nothing of a shim: the focus is on no answer") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  for (int trial = 0; trial < 2; ++trial) {
    const QString in_hand = shown.page->strip().large;
    CHECK(test::ShownPage::focus().startsWith("shim-"));
    CHECK(in_hand == "Try " + test::ShownPage::focus().mid(5));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    CHECK(shown.count<job::ShimTried>(gauge_step) == trial);
    CHECK(shown.page->strip().large == in_hand);
    auto* tight = shown.page->findChild<QPushButton*>("button-tight");
    tight->setFocus();
    QTest::keyClick(tight, Qt::Key_Return);
    CHECK(shown.count<job::ShimTried>(gauge_step) == trial + 1);
  }
}

TEST_CASE("the three answers are of one width") {
  test::UiBench ui;
  ui.go_to(gauge_step);
  GaugePage shown(ui);
  QCoreApplication::processEvents();
  const auto width_of = [&](const char* name) { return shown.page->findChild<QPushButton*>(name)->width(); };
  CHECK(std::abs(width_of("button-tight") - width_of("button-snug")) <= 1);
  CHECK(std::abs(width_of("button-loose") - width_of("button-snug")) <= 1);
}

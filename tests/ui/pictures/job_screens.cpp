#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "camera.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/widgets/units.h"

using shimwright::test::JobStudio;
namespace widgets = shimwright::widgets;
namespace quantity = shimwright::quantity;

namespace {

struct Stop {
  const char* picture;
  const char* step;
  std::size_t further = 0;
  const char* script = "02-bearing-not-home";
};

void take(const Stop& stop) {
  JobStudio studio(stop.script);
  studio.at_page(stop.step, stop.further);
  studio.shoot(QLatin1String(stop.picture));
}

void take_as_it_comes(const Stop& stop) {
  JobStudio studio(stop.script);
  studio.at(stop.step, stop.further);
  studio.shoot(QLatin1String(stop.picture));
}

}  // namespace

TEST_CASE("job-check") {
  take({"job-check", "vehicle-number"});
}
TEST_CASE("job-text") {
  take({"job-text", "complaint-when"});
}
TEST_CASE("job-choose") {
  take({"job-choose", "complaint-gears"});
}
TEST_CASE("job-choose-high-voltage") {
  take({"job-choose-high-voltage", "high-voltage"});
}
TEST_CASE("job-photo") {
  take({"job-photo", "received-photos", 1});
}
TEST_CASE("job-do") {
  take({"job-do", "battery-off"});
}
TEST_CASE("job-pack-faces") {
  take({"job-pack-faces", "pack-faces"});
}
TEST_CASE("job-part job-part-ticked") {
  JobStudio studio;
  studio.at_page("pack-ring-new");
  studio.shoot(QStringLiteral("job-part"));
  studio.press(QStringLiteral("button-tick-pack-ring"));
  studio.type(QStringLiteral("field-pack-ring-batch"), QStringLiteral("26-1188"));
  studio.shoot(QStringLiteral("job-part-ticked"));
}
TEST_CASE("job-read job-read-typed") {
  JobStudio studio;
  studio.at_page("large-temperature");
  studio.shoot(QStringLiteral("job-read"));
  studio.type(QStringLiteral("field-box"), QStringLiteral("19,8"));
  studio.shoot(QStringLiteral("job-read-typed"));
}
TEST_CASE("job-read-road-test") {
  take({"job-read-road-test", "road-test"});
}
TEST_CASE("peak peak-too-large") {
  JobStudio studio;
  studio.at_page("press-peak");
  studio.shoot(QStringLiteral("peak"));
  studio.type(QStringLiteral("field-torque"), QStringLiteral("13,5"));
  studio.key(Qt::Key_Return);
  studio.shoot(QStringLiteral("peak-too-large"));
}
TEST_CASE("gauge-fit-first") {
  take({"gauge-fit-first", "large-gauge-fit"});
}
TEST_CASE("gauge-fit-third") {
  take({"gauge-fit-third", "large-gauge-fit", 2});
}
TEST_CASE("gauge-fit-settled") {
  take({"gauge-fit-settled", "large-gauge-fit", 3});
}
TEST_CASE("hold-point-questions") {
  take({"hold-point-questions", "large-gauge-fit", 4});
}
TEST_CASE("depth-empty") {
  take({"depth-empty", "large-depth", 0, "03-sum-on-the-border"});
}
TEST_CASE("depth-edge") {
  take({"depth-edge", "large-depth", 3, "03-sum-on-the-border"});
}
TEST_CASE("depth-sum") {
  take({"depth-sum", "small-depth", 3, "03-sum-on-the-border"});
}
TEST_CASE("float-first") {
  take({"float-first", "lower-float", 0, "01-smooth-day"});
}
TEST_CASE("float-half") {
  take({"float-half", "lower-float", 3, "01-smooth-day"});
}
TEST_CASE("float-too-large") {
  take({"float-too-large", "lower-float", 6});
}
TEST_CASE("float-in-inch peak-in-lbf-ft") {
  widgets::show_in({quantity::Unit::inch, quantity::Unit::pound_foot});
  take({"float-in-inch", "lower-float", 6});
  take({"peak-in-lbf-ft", "press-peak", 0});
  widgets::show_in({});
}
TEST_CASE("float-within") {
  take({"float-within", "lower-float", 6, "01-smooth-day"});
}
TEST_CASE("teach-in") {
  take({"teach-in", "teach-in-lower"});
}
TEST_CASE("sign") {
  take({"sign", "sign-technician"});
}
TEST_CASE("just-taken-up") {
  take_as_it_comes({"just-taken-up", "oil-drained"});
}
TEST_CASE("job-closed") {
  take_as_it_comes({"job-closed", ""});
}
TEST_CASE("parked") {
  take_as_it_comes({"parked", "small-shim-laid", 4, "04-parked-at-the-wrong-moment"});
}
TEST_CASE("unproven") {
  take_as_it_comes({"unproven", "small-shim-laid", 8, "04-parked-at-the-wrong-moment"});
}
TEST_CASE("more-menu park-question note-question keypad") {
  JobStudio studio;
  studio.at_page("odometer");
  studio.press(QStringLiteral("button-more"));
  studio.shoot(QStringLiteral("more-menu"));
  studio.press(QStringLiteral("button-park"));
  studio.shoot(QStringLiteral("park-question"));
  studio.press(QStringLiteral("button-note"));
  studio.shoot(QStringLiteral("note-question"));
  studio.key(Qt::Key_Escape);
  studio.key(Qt::Key_F4);
  studio.shoot(QStringLiteral("keypad"));
}
TEST_CASE("strip-over-window") {
  JobStudio studio;
  studio.at_page("lower-float", 6);
  studio.key(Qt::Key_F2);
  studio.shoot(QStringLiteral("strip-over-window"));
}

namespace {

/// A float of those lifts at the three spots, each lifted twice.
void take_float(const char* picture, const std::vector<std::string>& lifts) {
  JobStudio studio("01-smooth-day");
  studio.at_page("lower-float");
  std::string dial;
  for (const auto& each : studio.bench().workbench().context().instruments) {
    dial = each.kind == shimwright::sheet::InstrumentKind::dial_gauge ? each.id : dial;
  }
  for (int run = 0; run < 2; ++run) {
    for (std::size_t spot = 0; spot < lifts.size(); ++spot) {
      const shimwright::job::EnterFloatRun command{
          "lower-float", static_cast<int>(spot) + 1, "0.00", lifts[spot], "0.00", dial};
      REQUIRE(studio.bench().workbench().send(command));
    }
  }
  // The commands went past the page: the focus is where the page would have put it.
  auto* page = studio.window().findChild<shimwright::bench::JobPage*>();
  page->show_step("battery-off");
  page->show_step("lower-float");
  studio.shoot(QLatin1String(picture));
}

}  // namespace

TEST_CASE("float-on-limit") {
  take_float("float-on-limit", {"0.85", "0.84", "0.85"});
}
TEST_CASE("float-mixed") {
  take_float("float-mixed", {"0.20", "0.55", "0.95"});
}
TEST_CASE("float-too-small") {
  take_float("float-too-small", {"0.20", "0.19", "0.21"});
}
TEST_CASE("float-implausible") {
  take_float("float-implausible", {"1.54", "1.56", "1.53"});
}

#include "instruments_section.h"

#include "form_driver.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/units.h"

using namespace shimwright;

namespace {

using Instruments = test::SectionBench<workshop::InstrumentsSection>;

store::KeptInstrument named(Instruments& bench, const std::string& name) {
  const auto all = bench.registers().kept_instruments();
  REQUIRE(all);
  for (const store::KeptInstrument& each : *all) {
    if (each.instrument.name == name) {
      return each;
    }
  }
  FAIL("there is no such instrument");
  return {};
}

}  // namespace

TEST_CASE("an instrument is entered with its kind, in its unit, by keys") {
  Instruments bench;
  bench.there<QComboBox>("pick-kind")->setFocus();
  QTest::keyClick(bench.there<QComboBox>("pick-kind"), Qt::Key_Down);
  QTest::keyClick(bench.there<QComboBox>("pick-kind"), Qt::Key_Down);
  QTest::keyClick(bench.there<QComboBox>("pick-kind"), Qt::Key_Down);
  QTest::keyClick(bench.there<QAbstractButton>("button-add-instrument"), Qt::Key_Return);
  CHECK(bench.there<QLineEdit>("field-name")->hasFocus());
  bench.enter("field-name", "wrench 9");
  bench.enter("field-resolution", "0,1");
  bench.enter("field-permissible_error", "0.4");
  bench.enter("field-calibrated_on", "2026-05-31");
  bench.enter("field-calibrated_to", "2027-05-31");
  CHECK(bench.there<QWidget>("button-keep")->hasFocus());
  bench.all_fit_gloves();
  QTest::keyClick(bench.there<QWidget>("button-keep"), Qt::Key_Return);
  CHECK(bench.said("instruments-told") == "Kept.");
  const store::KeptInstrument kept = named(bench, "wrench 9");
  CHECK(kept.instrument.kind == sheet::InstrumentKind::torque_wrench);
  CHECK(kept.instrument.resolution == 100);
  CHECK(kept.instrument.permissible_error == 400);
  CHECK(kept.instrument.calibrated_on == std::optional<std::string>("2026-05-31"));
  CHECK(kept.instrument.calibrated_to == std::optional<std::string>("2027-05-31"));
}

TEST_CASE("each instrument says how it stands with its calibration") {
  Instruments bench;
  bench.press("row-dial 2");
  bench.type("field-calibrated_to", "2026-11-20");
  bench.press("button-keep");
  CHECK(bench.row("dial 2").contains("overdue since 20\u00a0Nov\u00a02026"));
  bench.press("row-dial 2");
  bench.type("field-calibrated_to", "2026-12-10");
  bench.press("button-keep");
  CHECK(bench.row("dial 2").contains("calibration due: calibrated to 10\u00a0Dec\u00a02026"));
  bench.press("row-dial 2");
  bench.type("field-calibrated_to", "");
  bench.press("button-keep");
  CHECK(bench.row("dial 2").contains("no date of calibration"));
  CHECK_FALSE(named(bench, "dial 2").instrument.calibrated_to);
}

TEST_CASE("what cannot be read is told at its field and nothing is kept") {
  Instruments bench;
  const auto before = named(bench, "dial 2").instrument.resolution;
  bench.press("row-dial 2");
  bench.type("field-resolution", "0.0.1");
  bench.press("button-keep");
  CHECK(bench.there<QLineEdit>("field-resolution")->hasFocus());
  CHECK(named(bench, "dial 2").instrument.resolution == before);
  bench.type("field-resolution", "0.01");
  bench.type("field-calibrated_on", "yesterday");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("yesterday"));
  CHECK(bench.there<QLineEdit>("field-calibrated_on")->hasFocus());
  CHECK(bench.section->has_unsent());
}

TEST_CASE("a guided repeat test gives the repeatability that readings carry from then on") {
  Instruments bench;
  bench.press("row-dial 2");
  bench.press("button-repeat-test");
  CHECK(bench.there<QLineEdit>("field-reading")->hasFocus());
  for (const char* each : {"0.50", "0.51", "0.50", "0.49", "0.50", "0.51", "0.50", "0.49", "0.50", "0.50"}) {
    bench.enter("field-reading", each);
  }
  CHECK(bench.said("repeat-result").contains("0.0067 mm"));
  CHECK(bench.said("repeat-result").contains("24 %"));
  bench.press("button-keep");
  const store::KeptInstrument tested = named(bench, "dial 2");
  CHECK(tested.instrument.repeatability == std::optional<std::int64_t>(6667));
  CHECK(tested.repeatability_on == std::optional(job::iso_day_of(bench.bench.workbench().now())));
  bench.bench.go_to("lower-float");
  const auto& instruments = bench.bench.workbench().context().instruments;
  CHECK(std::any_of(instruments.begin(), instruments.end(),
                    [](const job::Instrument& each) { return each.repeatability == 6667; }));
}

TEST_CASE("an instrument out of use is kept aside and no reading is taken with it") {
  Instruments bench;
  bench.press("row-dial 2");
  bench.press("button-in-use");
  bench.press("button-keep");
  CHECK(bench.row("dial 2").contains("out of use"));
  const auto all = bench.registers().instruments();
  REQUIRE(all);
  for (const job::Instrument& each : *all) {
    CHECK(each.name != "dial 2");
  }
}

TEST_CASE("in inch an instrument's resolution is shown and typed in inch, and stays the same micrometres") {
  widgets::show_in({quantity::Unit::inch, quantity::Unit::pound_foot});
  {
    Instruments bench;
    const store::KeptInstrument before = named(bench, "dial 2");
    CHECK(bench.row("dial 2").contains("in"));
    bench.press("row-dial 2");
    CHECK_FALSE(bench.section->has_unsent());
    bench.type("field-name", "dial two");
    bench.press("button-keep");
    const store::KeptInstrument kept = named(bench, "dial two");
    CHECK(kept.instrument.resolution == before.instrument.resolution);
    CHECK(kept.instrument.permissible_error == before.instrument.permissible_error);
    CHECK(kept.instrument.turn == before.instrument.turn);
  }
  widgets::show_in({});
}

#include "trays_section.h"

#include <algorithm>
#include <cmath>

#include "form_driver.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "workshop_texts.h"

using namespace shimwright;

namespace {

using Trays = test::SectionBench<workshop::TraysSection>;

store::Tray tray(Trays& bench, const std::string& name = "large D7") {
  auto found = bench.registers().tray_named(name);
  if (!found || !*found) {
    FAIL("there is no such tray");
  }
  return **found;
}

const job::TrayShim& shim_in(const store::Tray& of, const std::string& mark) {
  const auto found =
      std::find_if(of.shims.begin(), of.shims.end(), [&mark](const job::TrayShim& each) { return each.id == mark; });
  REQUIRE(found != of.shims.end());
  return *found;
}

}  // namespace

TEST_CASE("readings with the micrometer give a shim its mean and its uncertainty, by keys") {
  Trays bench;
  bench.there<QAbstractButton>("row-large D7-1.30")->setFocus();
  QTest::keyClick(bench.there<QAbstractButton>("row-large D7-1.30"), Qt::Key_Return);
  CHECK(bench.there<QLineEdit>("field-shim")->hasFocus());
  bench.there<QLineEdit>("field-reading")->setFocus();
  for (const char* each : {"1.301", "1,303", "1.302"}) {
    QTest::keyClicks(bench.there<QLineEdit>("field-reading"), each);
    QTest::keyClick(bench.there<QLineEdit>("field-reading"), Qt::Key_Return);
  }
  CHECK(bench.said("readings").contains("1.303 mm"));
  CHECK(bench.said("shim-result").contains("Mean of 3: 1.302"));
  CHECK_FALSE(bench.there<QWidget>("field-thickness")->isVisible());
  bench.all_fit_gloves();
  QTest::keyClick(bench.there<QLineEdit>("field-reading"), Qt::Key_Return, Qt::ControlModifier);
  CHECK(bench.said("trays-told") == "Kept.");
  const store::Tray kept = tray(bench);
  CHECK(shim_in(kept, "1.30").thickness == quantity::Length(1302));
  CHECK(shim_in(kept, "1.30").u_mm == Approx(std::sqrt(1e-6 / 3 + 1e-6 / 12 + 4e-6 / 3 + 1e-6 / 12)).epsilon(1e-3));
  CHECK(kept.stock.at("1.30").readings.size() == 3);
  CHECK(kept.stock.at("1.30").readings.front().number.base == 1301);
  CHECK(bench.row("large D7-1.30").contains("by 3 readings"));
}

TEST_CASE("what a shim was reckoned from stands, whatever its micrometer came to since") {
  Trays bench;
  bench.press("row-large D7-1.30");
  bench.enter("field-reading", "1.302");
  bench.press("button-keep");
  const job::TrayShim before = shim_in(tray(bench), "1.30");
  REQUIRE(before.u_mm > 0.001);
  const auto all = bench.registers().kept_instruments();
  for (store::KeptInstrument each : *all) {
    if (each.instrument.kind == sheet::InstrumentKind::micrometer) {
      each.in_use = false;
      REQUIRE(bench.registers().put(each, {"", bench.bench.workbench().now()}));
    }
  }
  store::KeptInstrument another;
  another.instrument = {"01930000-0000-7000-8000-0000000000aa",
                        "micrometer 9",
                        sheet::InstrumentKind::micrometer,
                        1,
                        2,
                        std::nullopt,
                        std::nullopt};
  REQUIRE(bench.registers().put(another, {"", bench.bench.workbench().now()}));
  bench.section->refresh();
  bench.press("row-large D7-1.30");
  bench.type("field-count", "3");
  bench.press("button-keep");
  CHECK(shim_in(tray(bench), "1.30").u_mm == before.u_mm);
  CHECK(shim_in(tray(bench), "1.30").thickness == before.thickness);
  bench.press("row-large D7-1.30");
  bench.enter("field-reading", "1.303");
  bench.press("button-keep");
  CHECK(shim_in(tray(bench), "1.30").u_mm > 0.001);
  CHECK(tray(bench).stock.at("1.30").readings.size() == 2);
}

TEST_CASE("a mean is said with the digits it has, and its uncertainty is rounded up") {
  Trays bench;
  bench.press("row-large D7-1.30");
  for (const char* each : {"1.301", "1.301", "1.302"}) {
    bench.enter("field-reading", each);
  }
  CHECK(bench.said("shim-result").contains("Mean of 3: 1.3013 ±"));
}

TEST_CASE("a shim without a micrometer at hand is typed with its uncertainty") {
  Trays bench;
  bench.press("button-add-shim-large D7");
  bench.type("field-shim", "2.95");
  bench.type("field-thickness", "2.951");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("uncertainty"));
  bench.type("field-uncertainty", "0.003");
  bench.press("button-keep");
  CHECK(shim_in(tray(bench), "2.95").thickness == quantity::Length(2951));
  CHECK(shim_in(tray(bench), "2.95").u_mm == Approx(0.003));
  bench.press("row-large D7-2.95");
  bench.press("button-take-out");
  for (const job::TrayShim& each : tray(bench).shims) {
    CHECK(each.id != "2.95");
  }
}

TEST_CASE("shims are counted, ordered at their number, and go down as jobs take them") {
  Trays bench;
  bench.press("row-large D7-1.65");
  bench.type("field-count", "2");
  bench.type("field-reorder", "1");
  bench.press("button-keep");
  CHECK(bench.row("large D7-1.65").contains("2 left of 2 counted"));
  CHECK(bench.row("large D7-1.65").contains("order at 1"));
  const auto counted = tray(bench).stock.at("1.65");
  CHECK(counted.reorder_at == std::optional<int>(1));
  CHECK(counted.counted_at_ms == std::optional(bench.bench.workbench().now().at_ms));
  bench.press("row-large D7-1.65");
  CHECK_FALSE(bench.section->has_unsent());
  bench.type("field-count", "2.5");
  bench.press("button-keep");
  CHECK(bench.there<QLineEdit>("field-count")->hasFocus());
  bench.press("button-leave");
}

TEST_CASE("a mark that is there already is refused at its field") {
  Trays bench;
  bench.press("button-add-shim-large D7");
  bench.type("field-shim", "1.30");
  bench.type("field-thickness", "1.300");
  bench.type("field-uncertainty", "0.003");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("1.30 lies in this tray already"));
  CHECK(bench.section->has_unsent());
}

TEST_CASE("what open jobs may want of a tray is told by their belief") {
  Trays bench;
  bench.bench.go_to("large-gauge-fit", 1);
  bench.section->refresh();
  const QString shown = test::shown_in(bench.window);
  CHECK(shown.contains("Open jobs that still take a shim from here: 1."));
  bool wanted = false;
  for (const auto* row : bench.window.findChildren<QAbstractButton*>()) {
    wanted = wanted || row->accessibleName().contains("open jobs may want");
  }
  CHECK(wanted);
}

TEST_CASE("a tray that a spec sheet names is begun with its sizes") {
  Trays bench("03-sum-on-the-border");
  auto& registers = bench.registers();
  const auto issues = registers.spec_sheets();
  REQUIRE(issues);
  const store::SheetIssue& issue = issues->front();
  const auto in_place_of = [](QString text, const QString& before, const QString& now) {
    REQUIRE(text.contains(before));
    return text.replace(before, now);
  };
  const auto spec = sheet::read_spec_sheet(issue.json);
  const QString lower = QStringLiteral("\"%1\"").arg(QString::fromStdString(spec->lower.tray_name));
  QString file = in_place_of(QString::fromStdString(issue.json), lower, "\"large K9\"");
  file = in_place_of(file, QStringLiteral("\"issue\": %1").arg(issue.issue), "\"issue\": 90");
  REQUIRE(registers.add_spec_sheet(file.toStdString(), {"", bench.bench.workbench().now()}));
  bench.section->refresh();
  const QString begin = "button-begin-tray-";
  for (const auto* button : bench.window.findChildren<QAbstractButton*>()) {
    if (button->objectName().startsWith(begin)) {
      const std::string name = button->objectName().mid(begin.size()).toStdString();
      CHECK_FALSE(*registers.tray_named(name));
      bench.press(button->objectName());
      CHECK_FALSE(tray(bench, name).shims.empty());
      return;
    }
  }
  FAIL("no tray is offered");
}

#include "shimwright/widgets/units.h"

#include <QTest>

#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/say.h"

using namespace shimwright;

namespace {

/// Inch and lbf·ft until it ends.
struct Imperial {
  Imperial() { widgets::show_in({quantity::Unit::inch, quantity::Unit::pound_foot}); }
  ~Imperial() { widgets::show_in({}); }
  Imperial(const Imperial&) = delete;
  Imperial& operator=(const Imperial&) = delete;
};

quantity::TypedNumber number(const char* typed, quantity::Unit unit) {
  return *quantity::read_number(typed, unit);
}

}  // namespace

TEST_CASE("without a choice lengths are in mm and torques in N·m") {
  CHECK(widgets::units_shown() == quantity::UnitsShown());
  CHECK(widgets::number_shown(number("0.930", quantity::Unit::millimetre)) == "0.930 mm");
  CHECK(widgets::amount_shown(13500, quantity::Unit::newton_metre) == QString::fromUtf8("13.5 N·m"));
  CHECK(widgets::length_shown(-0.125, 3) == QString::fromUtf8("−0.125"));
  CHECK(widgets::say(Message{"{0} to {1} mm", {"0.2", "0.85"}}) == "0.2 to 0.85 mm");
}

TEST_CASE("numbers, limits and sentences are shown in inch and lbf·ft") {
  const Imperial imperial;
  CHECK(widgets::number_shown(number("0.93", quantity::Unit::millimetre)) == "0.0366 in");
  CHECK(widgets::number_shown(number("0.0366", quantity::Unit::inch)) == "0.0366 in");
  CHECK(widgets::number_shown(number("20", quantity::Unit::degree_celsius)) == QString::fromUtf8("20 °C"));
  CHECK(widgets::amount_shown(13500, quantity::Unit::newton_metre) == QString::fromUtf8("9.957 lbf·ft"));
  CHECK(widgets::length_shown(25.4, 2) == "1.0000");
  CHECK(widgets::with_length_unit("shim wanted, mm (95 %)") == "shim wanted, in (95 %)");
  CHECK(widgets::say(Message{"{0} to {1} mm at every spot: {2} stays.", {"0.25", "0.85", "1.65"}}) ==
        "0.00984 to 0.03346 in at every spot: 1.65 stays.");
  CHECK(widgets::say(Message{"Fit {0}: expected float {1} ± {2} mm (95 %).", {"1.65", "0.93", "0.02"}}) ==
        QString::fromUtf8("Fit 1.65: expected float 0.0366 ± 0.0008 in (95 %)."));
  CHECK(widgets::say(Message{"At most {0}.", {"12 N·m"}}) == QString::fromUtf8("At most 8.851 lbf·ft."));
  CHECK(widgets::say(Message{"{0} is a {1}.", {"mm", "commn"}}) == "mm is a commn.");
}

TEST_CASE("a field asks in the unit shown, and what it hands on is read as that by whoever asked in mm") {
  const Imperial imperial;
  widgets::NumberField field("Depth", quantity::Unit::millimetre);
  CHECK(field.findChild<QLabel*>()->text() == "Depth, in");
  QTest::keyClicks(field.edit(), "0,0366");
  CHECK(field.number()->base == 930);
  CHECK(field.text() == "0,0366 in");
  CHECK(quantity::read_number(field.text(), quantity::Unit::millimetre)->base == 930);
  field.set_text("0.93 mm");
  CHECK(field.text() == "0.93 mm");
  CHECK(field.number()->base == 930);
  field.set_text("\uFF11.\uFF15");  // full-width digits have no unit either
  CHECK(quantity::read_number(field.text(), quantity::Unit::millimetre)->base == 38100);
  field.set_text("395");  // out of range here, and a good number of mm
  CHECK_FALSE(quantity::read_number(field.text(), quantity::Unit::millimetre));
  field.set_text("0.036x");
  CHECK_FALSE(quantity::read_number(field.text(), quantity::Unit::millimetre));
}

TEST_CASE("whatever is typed in a field is read there as whoever asked reads it") {
  const Imperial imperial;
  widgets::NumberField field("Depth", quantity::Unit::millimetre);
  for (const char* typed : {"", "0", "395", "99999999", "-0.03", "\u22120.03", "0,5", "1,2,3", "1.", "2 in", "2 mm",
                            "99999999 mm", "15 thou", "1 \u00b5", "x", "0.123456789", "1 2", "+"}) {
    INFO(typed);
    field.set_text(typed);
    const auto here = field.number();
    const auto there = quantity::read_number(field.text(), quantity::Unit::millimetre);
    CHECK(here.has_value() == there.has_value());
    CHECK((!here || (there && *here == *there)));
  }
}

TEST_CASE("a reckoned length has its own digits, and what stands behind a plus or minus is rounded up") {
  CHECK(widgets::length_shown(1.30133, 4) == "1.3013");
  CHECK(widgets::uncertainty_shown(0.0031, 3) == "0.004");
  CHECK(widgets::uncertainty_shown(0.003, 3) == "0.003");
  CHECK(widgets::uncertainty_shown(0.00001, 3) == "0.001");
  CHECK(widgets::uncertainty_shown(0.0, 3) == "0.000");
  const Imperial imperial;
  CHECK(widgets::uncertainty_shown(0.0001, 3) != widgets::uncertainty_shown(0.0, 3));
}

TEST_CASE("a number kept before stands in the field so that it is the same when it is read again") {
  widgets::NumberField metric("Depth", quantity::Unit::millimetre);
  metric.set_number(number("0.0366", quantity::Unit::inch));
  CHECK(metric.text() == "0.0366 in");
  CHECK(metric.number()->base == 930);
  const Imperial imperial;
  widgets::NumberField field("Depth", quantity::Unit::millimetre);
  field.set_number(number("0.91", quantity::Unit::millimetre));
  CHECK(field.edit()->text() == "0.03583");
  CHECK(field.number()->base == 910);
  field.set_number(number("15", quantity::Unit::thou));
  CHECK(field.edit()->text() == "15 thou");
  CHECK(field.number()->base == 381);
}

TEST_CASE("whatever number is kept, a field shows it and gives it back unchanged") {
  for (const bool imperial : {false, true}) {
    widgets::show_in(imperial ? quantity::UnitsShown{quantity::Unit::inch, quantity::Unit::pound_foot}
                              : quantity::UnitsShown());
    widgets::NumberField length("Depth", quantity::Unit::millimetre);
    widgets::NumberField torque("Torque", quantity::Unit::newton_metre);
    for (std::int64_t base = -1300; base < 1300; ++base) {
      length.set_number({base, 3, quantity::Unit::millimetre});
      torque.set_number({base, 3, quantity::Unit::newton_metre});
      const auto read = quantity::read_number(length.text(), quantity::Unit::millimetre);
      const auto turned = quantity::read_number(torque.text(), quantity::Unit::newton_metre);
      REQUIRE(read);
      REQUIRE(turned);
      REQUIRE(read->base == base);
      REQUIRE(turned->base == base);
    }
  }
  widgets::show_in({});
}

TEST_CASE("a number stays with its unit and its ±, and nothing else is kept together") {
  const QString kept =
      widgets::kept_together(QString::fromUtf8("0.0209 ± 0.0031 mm, at most 12 N·m at 20 °C, 95 %; 7 min"));
  CHECK(kept.split(' ') == QStringList{QString::fromUtf8("0.0209\u00a0±\u00a00.0031\u00a0mm,"), "at", "most",
                                       QString::fromUtf8("12\u00a0N·m"), "at", QString::fromUtf8("20\u00a0°C,"),
                                       QString::fromUtf8("95\u00a0%;"), QString::fromUtf8("7\u00a0min")});
  CHECK(widgets::kept_together("2 gauges, 3 minutes, 1 large shim") == "2 gauges, 3 minutes, 1 large shim");
}

TEST_CASE("a litre is shown with a capital, and a small one is read all the same") {
  CHECK(widgets::number_shown(number("2.1", quantity::Unit::litre)) == "2.1 L");
  widgets::NumberField field("Oil drained", quantity::Unit::litre);
  CHECK(field.findChild<QLabel*>()->text() == "Oil drained, L");
  for (const char* typed : {"2,1 l", "2.1 L"}) {
    field.set_text(typed);
    REQUIRE(field.number());
    CHECK(field.number()->base == 2100000);
  }
}

#include "instrument_box.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

job::Instrument wrench_good_to(const std::string& name, std::optional<std::string> day) {
  job::Instrument wrench;
  wrench.id = name + "-id";
  wrench.name = name;
  wrench.kind = sheet::InstrumentKind::torque_wrench;
  wrench.calibrated_to = std::move(day);
  return wrench;
}

constexpr job::Moment november_2026{1795421400000, 60, false};

}  // namespace

TEST_CASE("instruments of the kind are offered with the day they are calibrated to, the first good one chosen") {
  bench::InstrumentBox box("Torque wrench", sheet::InstrumentKind::torque_wrench);
  CHECK(box.none());
  job::Instrument dial;
  dial.id = "dial-id";
  box.offer({dial, wrench_good_to("wrench 1", "2026-02-28"), wrench_good_to("wrench 3", "2027-02-28"),
             wrench_good_to("wrench 4", std::nullopt)},
            november_2026);
  CHECK(box.count() == 3);
  CHECK(box.itemText(0) == "wrench 1, overdue since 28 Feb 2026");
  CHECK(box.itemText(1) == "wrench 3, calibrated to 28 Feb 2027");
  CHECK(box.itemText(2) == "wrench 4");
  CHECK(box.id() == "wrench 3-id");
  CHECK(box.minimumHeight() >= 48);
}

TEST_CASE("the one chosen stays chosen, an overdue one where there is no other, and the wheel changes nothing") {
  bench::InstrumentBox box("Torque wrench", sheet::InstrumentKind::torque_wrench);
  const std::vector<job::Instrument> both{wrench_good_to("wrench 1", "2026-02-28"),
                                          wrench_good_to("wrench 3", "2027-02-28")};
  box.offer(both, november_2026);
  box.choose("wrench 1-id");
  box.offer(both, november_2026);
  CHECK(box.id() == "wrench 1-id");
  box.choose("no such id");
  CHECK(box.id() == "wrench 1-id");
  QWheelEvent wheel(QPointF(5, 5), box.mapToGlobal(QPoint(5, 5)), QPoint(), QPoint(0, -120), Qt::NoButton,
                    Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(&box, &wheel);
  CHECK(box.id() == "wrench 1-id");
  box.offer({both.front()}, november_2026);
  CHECK(box.id() == "wrench 1-id");
}

TEST_CASE("the box offers the instruments of its kind and keeps the one chosen") {
  bench::InstrumentBox box("Dial gauge", sheet::InstrumentKind::dial_gauge);
  box.set_instruments({});
  CHECK(box.id().empty());
  job::Instrument one;
  one.id = "one";
  one.name = "dial 1";
  job::Instrument two = one;
  two.id = "two";
  job::Instrument wrench = one;
  wrench.id = "wrench";
  wrench.kind = sheet::InstrumentKind::torque_wrench;
  box.set_instruments({wrench, one, two});
  CHECK(box.count() == 2);
  CHECK(box.id() == "one");
  box.choose("two");
  box.set_instruments({one, two});
  CHECK(box.id() == "two");
}

#include "instrument_box.h"

#include <catch2/catch.hpp>

using namespace shimwright;

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

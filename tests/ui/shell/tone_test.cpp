#include "shimwright/shell/tone.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("a tone for each reading that was saved, and only where it is wanted") {
  test::UiBench bench;
  bench.go_to("odometer");
  int heard = 0;
  shell::Tone tone(bench.workbench(), [&heard] { ++heard; });
  const job::EnterReadings reading{"odometer", {{"distance", "121400", ""}}};
  REQUIRE(bench.workbench().send(reading));
  CHECK(heard == 0);
  tone.set_on(true);
  REQUIRE(bench.workbench().send(job::WriteText{"gearbox-identity", "D7"}));
  CHECK(heard == 0);
  REQUIRE(bench.workbench().send(reading));
  CHECK(heard == 1);
}

TEST_CASE("a reading that was refused has no tone") {
  test::UiBench bench;
  bench.go_to("odometer");
  int heard = 0;
  shell::Tone tone(bench.workbench(), [&heard] { ++heard; });
  tone.set_on(true);
  CHECK_FALSE(bench.workbench().send(job::EnterReadings{"odometer", {{"distance", "1,2,3", ""}}}));
  CHECK(heard == 0);
}

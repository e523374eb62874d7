#include "last_job.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("words of the last job on the same gearbox can be taken over; those of the job itself are none") {
  test::UiBench rig;
  const std::string whole = rig.go_to("");
  const auto* written = job::latest<job::Written>(rig.workbench().state(), "fluid-kinds");
  REQUIRE(written != nullptr);
  const std::string words = written->text;
  auto own = bench::written_in_last_job(rig.workbench(), "fluid-kinds");
  REQUIRE(own);
  CHECK_FALSE(own->has_value());

  rig.go_to("large-gauge-fit");
  auto found = bench::written_in_last_job(rig.workbench(), "fluid-kinds");
  REQUIRE(found);
  CHECK(*found == words);
}

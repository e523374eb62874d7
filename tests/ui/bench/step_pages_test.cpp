#include "step_pages.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

TEST_CASE("every step of the shipped sheet has a page") {
  test::UiBench bench;
  bench.go_to("press-peak");
  QWidget window;
  for (const sheet::Step* step : bench.workbench().state().sheets.job->steps()) {
    const bench::StepPage* page = bench::make_step_page(bench.workbench(), *step, &window);
    INFO(step->id);
    REQUIRE(page != nullptr);
    CHECK(&page->step() == step);
    CHECK(page->parent() == &window);
  }
}

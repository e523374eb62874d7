#include "register_sections.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

namespace {

struct RegisterBench {
  test::UiBench bench;
  widgets::Scroll page;
  store::Registers& registers = bench.store().registers();
};

}  // namespace

TEST_CASE("a job sheet shows its stages and that its values are for demonstration") {
  RegisterBench bench;
  workshop::fill_job_sheets(bench.page, bench.registers, [](const sheet::JobSheet&) {});
  const QString shown = shown_in(bench.page);
  CHECK(shown.contains("issue 1"));
  CHECK(shown.contains("dry-pack-renewal"));
  CHECK(shown.contains("demonstration values"));
}

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

TEST_CASE("people stand with initials and name") {
  RegisterBench bench;
  workshop::fill_people(bench.page, bench.registers);
  const QString shown = shown_in(bench.page);
  CHECK(shown.contains("MK\n"));
  CHECK(shown.contains("Mara Kestrel"));
}

TEST_CASE("instruments stand with kind, resolution and error, and the overdue one is marked") {
  RegisterBench bench;
  const job::Moment in_march{1804032000000, 60, false};  // 2027-03-03: the wrench is calibrated to 28 Feb
  workshop::fill_instruments(bench.page, bench.registers, in_march);
  const QString shown = shown_in(bench.page);
  CHECK(shown.contains("torque wrench"));
  CHECK(shown.contains("±\u00a00.3\u00a0N·m"));
  CHECK(shown.contains("0.001\u00a0mm"));
  CHECK(shown.contains("28\u00a0Feb\u00a02027"));
  CHECK(shown.count("overdue") == 1);
  workshop::fill_instruments(bench.page, bench.registers, {1795421400000, 60, false});
  CHECK(shown_in(bench.page).count("overdue") == 0);
}

TEST_CASE("a tray shows each shim as measured, and how many there are") {
  RegisterBench bench;
  workshop::fill_trays(bench.page, bench.registers);
  const QString shown = shown_in(bench.page);
  CHECK(shown.contains("large D7"));
  CHECK(shown.contains("1.301"));
  CHECK(shown.contains("0.003"));
}

TEST_CASE("a job sheet shows its stages and that its values are for demonstration") {
  RegisterBench bench;
  workshop::fill_job_sheets(bench.page, bench.registers, [](const sheet::JobSheet&) {});
  const QString shown = shown_in(bench.page);
  CHECK(shown.contains("issue 1"));
  CHECK(shown.contains("dry-pack-renewal"));
  CHECK(shown.contains("demonstration values"));
}

#include "spec_values.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "shimwright/store/registers.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

sheet::SpecSheet spec_of(test::UiBench& bench) {
  const auto issue = bench.store().registers().spec_sheet(bench.spec_hash());
  REQUIRE(issue);
  const auto spec = sheet::read_spec_sheet(issue->json);
  REQUIRE(spec);
  return *spec;
}

template <class Row>
Row row_named(const std::vector<Row>& rows, const QString& name) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& each) { return each.name == name; });
  REQUIRE(found != rows.end());
  return *found;
}

}  // namespace

TEST_CASE("values stand with the digits of the sheet, their unit and source") {
  test::UiBench bench;
  const auto rows = workshop::side_rows(spec_of(bench));
  const auto limits = row_named(rows, "Float limits");
  CHECK(limits.lower == "0.25 to 0.85");
  CHECK(limits.unit == "mm");
  CHECK(limits.from == "invented for the demo");
  CHECK(row_named(rows, "Shim found by").upper == "gauge fit");
  CHECK(row_named(rows, "Feel, standard uncertainty").lower == "0.010");
  CHECK(row_named(rows, "Guard factor").lower == "1.645");
}

TEST_CASE("a value only one side has is a dash at the other, and one that none has makes no row") {
  test::UiBench bench;
  auto spec = spec_of(bench);
  spec.lower.disc_float.target = quantity::micrometres(505);
  auto rows = workshop::side_rows(spec);
  CHECK(row_named(rows, "Float aimed at").lower == "0.505");
  CHECK(row_named(rows, "Float aimed at").upper == "–");
  spec.lower.disc_float.target.reset();
  rows = workshop::side_rows(spec);
  CHECK(std::none_of(rows.begin(), rows.end(), [](const auto& row) { return row.name == "Float aimed at"; }));
}

TEST_CASE("limits of readings are said in words") {
  test::UiBench bench;
  const auto rows = workshop::limit_rows(spec_of(bench));
  CHECK(row_named(rows, "Highest press torque, peak").limits == "at most 12");
  CHECK(row_named(rows, "Highest press torque, peak").unit == "N·m");
  CHECK(row_named(rows, "Gear oil").limits == "1.70 to 1.90");
  CHECK(row_named(rows, "Road test, distance").limits == "at least 12");
}

TEST_CASE("millimetres have two decimals at least and no digit is lost") {
  CHECK(workshop::millimetres(quantity::micrometres(1700)) == "1.70");
  CHECK(workshop::millimetres(quantity::micrometres(1952)) == "1.952");
  CHECK(workshop::millimetres(quantity::micrometres(-350)) == "−0.35");
}

#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> written(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_instruments(writer, record); });
}

job::InstrumentUsed tested(const std::string& name) {
  job::InstrumentUsed used = instrument(name);
  used.calibrated_on = "2026-03-31";
  used.calibrated_to = "2027-03-31";
  used.repeatability = 4200;
  return used;
}

}  // namespace

TEST_CASE("an instrument stands on the record once, as it was when it was read with") {
  record::Record record = record_of(finished_job());
  REQUIRE(record.readings.size() > 1);
  for (record::ReadingLine& each : record.readings) {
    each.number = {1650, 3, quantity::Unit::millimetre};
    each.instrument = tested("Micrometer 1");
  }
  const auto pages = written(record);
  CHECK(times(pages, "Micrometer 1") == 1);
  CHECK(has(pages, "0.0042 mm"));
  CHECK(has(pages, "2026-03-31 to 2027-03-31"));
  record.readings.back().instrument->overdue = true;
  record.readings.back().instrument->repeatability.reset();
  CHECK(times(written(record), "Micrometer 1") == 2);
  CHECK(has(written(record), "not tested"));
  CHECK(has(written(record), "overdue"));
}

TEST_CASE("a torque wrench is said in N·m, whatever the reading was typed in") {
  record::Record record = record_of(finished_job());
  REQUIRE_FALSE(record.readings.empty());
  record.readings.front().number = {13500, 1, quantity::Unit::pound_foot};
  record.readings.front().instrument = tested("Wrench 3");
  record.readings.front().instrument->repeatability = 55000;
  CHECK(has(written(record), "0.055 N·m"));
}

TEST_CASE("records of before keep their look: nothing is known of how their instruments were tested") {
  CHECK(written(record_of(finished_job())).front().rows.empty());
  CHECK_FALSE(has(written(record_of(finished_job())), "Instruments as they were"));
}

#include "job_row.h"

#include <QTest>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

store::JobSummary parked_job() {
  store::JobSummary job;
  job.id = "one";
  job.number = "2041";
  job.vehicle_key = "TESTVN009TA030417";
  job.gearbox = "D7";
  job.plate = "HL-MK 412";
  job.standing = store::JobStanding::parked;
  job.waits_for = "ring set";
  job.opened_at_ms = 1795421400000;
  return job;
}

}  // namespace

TEST_CASE("a row says all it shows to those who do not see it") {
  const past::JobRow row(parked_job(), past::Finding{store::FoundIn::plate, "HLMK412", false, "hlmk421"});
  CHECK(row.objectName() == "result-2041");
  const QString said = row.accessibleName();
  for (const char* part :
       {"2041", "TESTVN009TA030417", "HL-MK 412", "23 Nov 2026", "parked", "plate", "two characters swapped"}) {
    INFO(part);
    CHECK(said.contains(part));
  }
  const past::JobRow other(parked_job(), past::Finding{store::FoundIn::plate, "HLMK412", false, "hlmk472"});
  CHECK(other.accessibleName().contains("one character differs"));
}

TEST_CASE("what was taken back in its job is said to be so, before what was found") {
  const past::JobRow row(parked_job(), past::Finding{store::FoundIn::batch, "B5577", true, "b5577", true});
  CHECK(row.accessibleName().endsWith("found in: batch, taken back · B5577 · exact"));
  const past::JobRow counts(parked_job(), past::Finding{store::FoundIn::batch, "B5577", true, "b5577"});
  CHECK(counts.accessibleName().endsWith("found in: batch, B5577 · exact"));
}

TEST_CASE("a row is pressed by click, Enter and Space") {
  past::JobRow row(parked_job(), std::nullopt);
  int pressed = 0;
  QObject::connect(&row, &QAbstractButton::clicked, [&] { ++pressed; });
  row.show();
  QTest::mouseClick(&row, Qt::LeftButton);
  QTest::keyClick(&row, Qt::Key_Return);
  QTest::keyClick(&row, Qt::Key_Enter);
  QTest::keyClick(&row, Qt::Key_Space);
  CHECK(pressed == 4);
  CHECK(row.sizeHint().height() >= 48);
}

TEST_CASE("each standing and each place has its word and shape") {
  CHECK(past::standing_mark(store::JobStanding::open) != past::standing_mark(store::JobStanding::closed));
  CHECK(past::standing_mark(store::JobStanding::parked) != past::standing_mark(store::JobStanding::closed));
  CHECK(past::standing_word(store::JobStanding::parked) == "parked");
  CHECK(past::place_word(store::FoundIn::customer_reference) == "customer reference");
}

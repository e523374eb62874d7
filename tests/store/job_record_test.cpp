#include "shimwright/store/job_record.h"

#include "sealed_job.h"
#include "shimwright/store/vehicle_history.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("the record of a stored job has the workshop's names and the texts that lie apart") {
  Workbench bench;
  went(bench.store().registers().put(Workshop{"01930000-0000-7000-8000-0000000000aa", "Hollow Lane", "4 Hollow Lane"},
                                     by_mk()));
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(job::Noted{{}, "a note"});
  const auto record = got(record_of(bench.store(), job.id()));
  CHECK(record.workshop_name == "Hollow Lane");
  CHECK(record.workshop_address == "4 Hollow Lane");
  CHECK(record.job.number == "2026-0147");
  CHECK(record.job.opened.initials == "MK");
  CHECK(record.entries == 2);
  REQUIRE(record.vehicle.plate);
  REQUIRE(record.vehicle.plate->content);
  CHECK(record.vehicle.plate->content->text == "HL-MK 412");
}

TEST_CASE("an erased text is gone from the record, and the job is still there") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const auto before = got(record_of(bench.store(), job.id()));
  REQUIRE(before.vehicle.plate);
  went(bench.store().erase_private_text(before.vehicle.plate->id, by_mk(9)));
  const auto record = got(record_of(bench.store(), job.id()));
  REQUIRE(record.vehicle.plate);
  CHECK_FALSE(record.vehicle.plate->content);
}

TEST_CASE("there is no record of a job that is not in the store") {
  Workbench bench;
  CHECK(code_of(record_of(bench.store(), "01930000-0000-7000-8000-000000001000")) == "unknown_job");
}

TEST_CASE("a sealed job whose frozen record was changed is not shown as it was sealed") {
  Workbench bench;
  give_pins(bench);
  const std::string id = closed_job(bench, "10");
  static_cast<void>(got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules())));
  static_cast<void>(got(record_of(bench.store(), id)));
  const QByteArray trigger = QByteArray::fromStdString(text_in(
      got(bench.store().connection().rows("SELECT sql FROM sqlite_schema WHERE name = 'seal_is_not_changed'")).front(),
      0));
  bench.sabotage(
      "DROP TRIGGER seal_is_not_changed; UPDATE seal SET record = CAST(replace(CAST(record AS TEXT), "
      "'TESTVN', 'TESTWN') AS BLOB);" +
      trigger);
  CHECK(code_of(record_of(bench.store(), id)) == "sealed_differs");
}

TEST_CASE("a record changed together with its frozen bytes is shown as one whose seal does not hold") {
  Workbench bench;
  give_pins(bench);
  const std::string id = closed_job(bench, "10");
  static_cast<void>(got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules())));
  const auto whole = got(record_of(bench.store(), id));
  REQUIRE(whole.seal);
  CHECK(whole.seal->check == record::SealCheck());
  CHECK(got(vehicle_history(bench.store(), whole.vehicle.key)).jobs.front().seal == record::SealStanding::holds);
  QByteArray triggers;
  QByteArray dropped;
  for (const char* name : {"seal_is_not_changed", "entry_is_not_changed"}) {
    const auto rows =
        got(bench.store().connection().rows("SELECT sql FROM sqlite_schema WHERE name = ?", {std::string(name)}));
    triggers += QByteArray::fromStdString(text_in(rows.front(), 0)) + ";";
    dropped += QByteArray("DROP TRIGGER ") + name + ";";
  }
  bench.sabotage(dropped +
                 "UPDATE seal SET record = CAST(replace(CAST(record AS TEXT), 'TESTVN', 'TESTWN') AS BLOB);"
                 "UPDATE entry SET body = CAST(replace(CAST(body AS TEXT), 'TESTVN', 'TESTWN') AS BLOB);" +
                 triggers);
  const auto changed = got(record_of(bench.store(), id));
  CHECK(changed.vehicle.key != whole.vehicle.key);
  REQUIRE(changed.seal);
  CHECK(changed.seal->check.standing == record::SealStanding::changed);
  CHECK(changed.seal->check.place == "record");
  CHECK(got(vehicle_history(bench.store(), whole.vehicle.key)).jobs.front().seal == record::SealStanding::changed);
}

}  // namespace shimwright::store

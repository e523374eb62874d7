#include "new_job_form.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

bench::EarlierJob known_job() {
  bench::EarlierJob job;
  job.number = "1790";
  job.plate = "DEMO 123";
  job.gearbox = "D7";
  job.gearbox_serial = "7-003381";
  job.build_date = "2020-01-28";
  return job;
}

struct Form {
  Form() {
    const auto issues = bench.store().registers().spec_sheets();
    REQUIRE(issues);
    sheets = *bench.store().registers().job_sheets();
    form.clear(2026, *issues, sheets);
    form.show();
  }
  QLineEdit& edit(const char* name) { return *form.findChild<QLineEdit*>(name); }

  test::UiBench bench;
  std::vector<store::SheetIssue> sheets;
  bench::NewJobForm form;
};

}  // namespace

TEST_CASE("an earlier job fills what is blank, and only that") {
  Form at;
  QTest::keyClicks(&at.edit("field-plate"), "NEW 1");
  const QStringList names = at.form.fill_from(known_job());
  CHECK(names == QStringList{"gearbox serial", "build date"});
  CHECK(at.edit("field-plate").text() == "NEW 1");
  CHECK(at.edit("field-gearbox-serial").text() == "7-003381");
}

TEST_CASE("what was filled in is no work of a person, and goes with its vehicle") {
  Form at;
  CHECK(at.form.fill_from(known_job()).size() == 3);
  CHECK_FALSE(at.form.has_typed());
  QTest::keyClicks(&at.edit("field-build-date"), "x");
  CHECK(at.form.has_typed());
  at.form.take_back_filled();
  CHECK(at.edit("field-plate").text().isEmpty());
  CHECK(at.edit("field-gearbox-serial").text().isEmpty());
  CHECK(at.edit("field-build-date").text() == "2020-01-28x");
}

TEST_CASE("another gearbox in the vehicle does not get the build date of the earlier one") {
  Form at;
  QTest::keyClicks(&at.edit("field-gearbox-serial"), "7-009999");
  CHECK(at.form.fill_from(known_job()) == QStringList{"plate"});
}

TEST_CASE("personal texts of the command are salted, blank ones are none") {
  Form at;
  QTest::keyClicks(&at.edit("field-plate"), "DEMO 123");
  QTest::keyClicks(&at.edit("field-odometer"), "88300");
  const job::OpenJob open = at.form.command("2045", at.bench.workbench().ids(), 1);
  REQUIRE(open.plate);
  CHECK(open.plate->text == "DEMO 123");
  CHECK(open.plate->salt.size() == 32);
  CHECK_FALSE(open.complaint);
  CHECK(open.odometer == "88300");
  CHECK(open.number == "2045");
}

TEST_CASE("a refusal stands at its field, and one of no field is handed back") {
  Form at;
  CHECK(at.form.show_refusal(Error{"bad_date", "build_date", {"no date", {}}}));
  CHECK(at.form.show_refusal(Error{"two_marks", "odometer", {"two marks", {}}}));
  CHECK_FALSE(at.form.show_refusal(Error{"disk_full", "", {"full", {}}}));
}

TEST_CASE("the job sheet is asked for only where there are several, and the one added last is chosen") {
  Form at;
  auto* choice = at.form.findChild<QComboBox*>("field-job-sheet");
  REQUIRE(choice != nullptr);
  CHECK_FALSE(choice->isVisible());
  CHECK(at.form.sheet_hash() == at.bench.sheet_hash());
  store::SheetIssue later = at.sheets.front();
  later.hash = "later";
  later.name = "own-sheet";
  ++later.added_at_ms;
  store::SheetIssue earlier = at.sheets.front();
  earlier.hash = "earlier";
  --earlier.added_at_ms;
  at.form.clear(2026, {}, {at.sheets.front(), later, earlier});
  CHECK(choice->isVisible());
  CHECK(at.form.sheet_hash() == "later");
  QTest::keyClick(choice, Qt::Key_Up);
  CHECK(at.form.sheet_hash() == at.bench.sheet_hash());
}

TEST_CASE("a job is opened for a record in English, whatever the window speaks") {
  QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
  const Form at;
  store::IdSource ids;
  CHECK(at.form.command("2041", ids, 0).language == "en");
  QLocale::setDefault(QLocale::c());
}

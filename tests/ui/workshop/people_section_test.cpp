#include "people_section.h"

#include "form_driver.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/signing.h"
#include "shimwright/widgets/child.h"
#include "worked.h"

using namespace shimwright;

namespace {

using People = test::SectionBench<workshop::PeopleSection>;

store::Person person_with(People& bench, const std::string& initials) {
  const auto all = bench.registers().persons();
  REQUIRE(all);
  for (const store::Person& each : *all) {
    if (each.initials == initials) {
      return each;
    }
  }
  FAIL("nobody has these initials");
  return {};
}

/// A PIN is kept in a thread of its own.
void keep_pin(People& bench) {
  bench.press("button-keep");
  test::wait_for_work(bench.window);
}

}  // namespace

TEST_CASE("a person is entered by keys alone") {
  People bench;
  bench.there<QAbstractButton>("button-add-person")->setFocus();
  QTest::keyClick(bench.there<QAbstractButton>("button-add-person"), Qt::Key_Return);
  CHECK(bench.there<QLineEdit>("field-name")->hasFocus());
  QTest::keyClicks(bench.there<QLineEdit>("field-name"), "Nora Lind");
  QTest::keyClick(bench.there<QLineEdit>("field-name"), Qt::Key_Return);
  CHECK(bench.there<QLineEdit>("field-initials")->hasFocus());
  QTest::keyClicks(bench.there<QLineEdit>("field-initials"), "NL");
  bench.all_fit_gloves();
  bench.press("button-checker");
  bench.there<QWidget>("button-checker")->setFocus();
  QTest::keyClick(bench.there<QWidget>("button-checker"), Qt::Key_Return, Qt::ControlModifier);
  CHECK(bench.said("people-told") == "Kept.");
  CHECK_FALSE(bench.is_there("form-person"));
  CHECK(person_with(bench, "NL").role == store::PersonRole::checker);
  CHECK(person_with(bench, "NL").active);
  CHECK(bench.row("NL").contains("Nora Lind"));
  CHECK(bench.row("NL").contains("checker"));
}

TEST_CASE("what is refused stays typed, and the sentence stands in the form") {
  People bench;
  bench.press("button-add-person");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("needed"));
  bench.type("field-name", "Mona Kay");
  bench.type("field-initials", "MK");
  CHECK(bench.section->has_unsent());
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("MK"));
  CHECK(bench.there<QLineEdit>("field-name")->text() == "Mona Kay");
  CHECK(bench.there<QLineEdit>("field-initials")->hasFocus());
  bench.section->refresh();
  CHECK(bench.there<QLineEdit>("field-name")->text() == "Mona Kay");
  bench.press("button-leave");
  CHECK_FALSE(bench.section->has_unsent());
  CHECK_FALSE(bench.is_there("form-person"));
}

TEST_CASE("who leaves keeps name and records, and can come back") {
  People bench;
  const store::Person before = person_with(bench, "MK");
  bench.press("row-MK");
  bench.type("field-left_on", "30.11.2026");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("year-month-day"));
  CHECK(person_with(bench, "MK") == before);
  bench.type("field-left_on", "2026-11-30");
  bench.press("button-keep");
  const store::Person left = person_with(bench, "MK");
  CHECK_FALSE(left.active);
  CHECK(left.left_on == std::optional<std::string>("2026-11-30"));
  CHECK(left.name == before.name);
  CHECK(bench.row("MK").contains("left"));
  bench.press("row-MK");
  bench.type("field-left_on", "");
  bench.press("button-keep");
  CHECK(person_with(bench, "MK") == before);
}

TEST_CASE("another person is not opened over what is typed") {
  People bench;
  bench.press("row-MK");
  bench.type("field-name", "Mara Kestrel-Vale");
  bench.press("button-add-person");
  CHECK(bench.there<QLineEdit>("field-name")->text() == "Mara Kestrel-Vale");
  CHECK(bench.said("form-told").contains("Keep this first"));
}

TEST_CASE("the feel of a person is found by a guided test and kept with its day") {
  People bench;
  bench.press("row-MK");
  bench.press("button-feel-test");
  bench.enter("field-step", "0.05");
  for (const char* each : {"1.65", "1.65", "1,70", "1.65"}) {
    bench.enter("field-reading", each);
  }
  bench.press("button-keep");
  CHECK_FALSE(person_with(bench, "MK").feel_nm);
  CHECK(bench.said("form-told").contains("more at least"));
  bench.enter("field-reading", "1.6x");
  CHECK(bench.there<QLineEdit>("field-reading")->text() == "1.6x");
  bench.enter("field-reading", "1.60");
  CHECK(bench.said("repeat-result").contains("5 readings"));
  CHECK(bench.said("repeat-result").contains("35 %"));
  bench.all_fit_gloves();
  bench.press("button-keep");
  const store::Person tested = person_with(bench, "MK");
  // Five found: s = 0.0354 mm, and the step as a rectangle of 0.05 mm.
  REQUIRE(tested.feel_nm);
  CHECK(*tested.feel_nm == Approx(38188).margin(2));
  CHECK(tested.feel_on == std::optional(job::iso_day_of(bench.bench.workbench().now())));
  CHECK(bench.row("MK").contains("feel 0.038 mm"));
}

TEST_CASE("the last reading is taken away again") {
  People bench;
  bench.press("row-MK");
  bench.press("button-feel-test");
  bench.enter("field-reading", "1.65");
  bench.enter("field-reading", "165");
  bench.press("button-take-back");
  CHECK(bench.said("readings") == "1.65 mm");
  CHECK(bench.there<QLineEdit>("field-reading")->hasFocus());
  CHECK(bench.section->has_unsent());
  QTest::keyClick(bench.there<QLineEdit>("field-reading"), Qt::Key_Escape);
  CHECK_FALSE(bench.section->has_unsent());
}

TEST_CASE("a person is given a PIN, changes it, forgets it, and ends the key") {
  People bench;
  const std::string mk = person_with(bench, "MK").id;
  CHECK(bench.row("MK").contains("no PIN yet"));
  bench.press("row-MK");
  bench.press("button-first-pin");
  bench.all_fit_gloves();
  bench.type("field-new-pin", "2580");
  bench.type("field-new-pin-again", "2581");
  keep_pin(bench);
  CHECK(bench.said("form-told").contains("differ"));
  CHECK(bench.there<QLineEdit>("field-new-pin")->text().isEmpty());
  bench.type("field-new-pin", "2580");
  bench.type("field-new-pin-again", "2580");
  keep_pin(bench);
  CHECK(bench.row("MK").contains("signs with a PIN"));

  bench.press("row-MK");
  bench.press("button-change-pin");
  bench.type("field-old-pin", "1111");
  bench.type("field-new-pin", "4711");
  bench.type("field-new-pin-again", "4711");
  keep_pin(bench);
  CHECK(bench.said("form-told").contains("not the PIN"));
  bench.type("field-old-pin", "2580");
  bench.type("field-new-pin", "4711");
  bench.type("field-new-pin-again", "4711");
  keep_pin(bench);
  CHECK(bench.said("people-told").startsWith("Kept"));

  bench.press("row-MK");
  bench.press("button-end-key");
  bench.type("field-from", "tomorrow");
  bench.press("button-keep");
  CHECK(bench.said("form-told").contains("is no date"));
  bench.type("field-from", "2020-01-01");
  bench.press("button-keep");
  CHECK(bench.row("MK").contains("key ended"));

  bench.press("row-MK");
  bench.press("button-forgotten-pin");
  bench.type("field-new-pin", "0815");
  bench.type("field-new-pin-again", "0815");
  keep_pin(bench);
  CHECK(bench.row("MK").contains("signs with a PIN"));
  const auto keys = store::signing_keys(bench.bench.store());
  REQUIRE(keys);
  CHECK(keys->size() == 2);
  CHECK(std::count_if(keys->begin(), keys->end(), [&](const auto& key) { return key.has_pin && key.person == mk; }) ==
        1);
}

TEST_CASE("a key with an end to come is ended sooner, and where nothing is ended that is said") {
  People bench;
  bench.press("row-MK");
  bench.press("button-first-pin");
  bench.type("field-new-pin", "2580");
  bench.type("field-new-pin-again", "2580");
  keep_pin(bench);
  bench.press("row-MK");
  bench.press("button-end-key");
  bench.type("field-from", "2099-01-01");
  bench.press("button-keep");
  CHECK(bench.row("MK").contains("signs with a PIN"));

  bench.press("row-MK");
  bench.press("button-end-key");
  for (const char* no_end : {"tomorrow", "2099-06-01"}) {
    bench.type("field-from", no_end);
    bench.press("button-keep");
    CHECK_FALSE(bench.said("form-told").isEmpty());
    CHECK(bench.is_there("form-pin"));
  }
  bench.type("field-from", "2020-01-01");
  bench.press("button-keep");
  CHECK(bench.row("MK").contains("key ended"));
}

TEST_CASE("the window goes on while a PIN is kept, nothing else is pressed meanwhile, and that it works is said") {
  People bench;
  bench.press("row-MK");
  bench.press("button-first-pin");
  bench.type("field-new-pin", "2580");
  bench.type("field-new-pin-again", "2580");
  bench.there<QAbstractButton>("button-keep")->click();
  CHECK_FALSE(test::at_rest(bench.window));
  CHECK(bench.said("people-told").contains("being kept"));
  CHECK(bench.there<QLabel>("people-told")->isVisible());
  CHECK_FALSE(bench.there<QWidget>("form-pin")->isEnabled());
  CHECK_FALSE(bench.there<QAbstractButton>("button-add-person")->isEnabled());
  CHECK_FALSE(bench.there<QAbstractButton>("row-MK")->isEnabled());
  bench.section->refresh();
  CHECK(bench.is_there("form-pin"));
  test::wait_for_work(bench.window);
  CHECK_FALSE(bench.is_there("form-pin"));
  CHECK(bench.said("people-told").startsWith("Kept"));
  CHECK(bench.row("MK").contains("signs with a PIN"));
  CHECK(bench.there<QAbstractButton>("button-add-person")->isEnabled());
}

TEST_CASE("thrown away while a PIN is kept, the page waits, and the PIN is in the store") {
  test::UiBench kept("02-bearing-not-home");
  {
    workshop::WorkshopWays ways;
    ways.clock = [&kept] { return kept.workbench().now(); };
    ways.by = [&kept] { return store::By{"", kept.workbench().now()}; };
    ways.signing.cost = {1, 8192};
    workshop::PeopleSection section(kept.store(), ways);
    section.refresh();
    section.findChild<QAbstractButton*>("row-MK")->click();
    section.findChild<QAbstractButton*>("button-first-pin")->click();
    for (const char* field : {"field-new-pin", "field-new-pin-again"}) {
      QTest::keyClicks(section.findChild<QLineEdit*>(field), "2580");
    }
    section.findChild<QWidget*>("form-pin")->findChild<QAbstractButton*>("button-keep")->click();
    CHECK_FALSE(test::at_rest(section));
  }
  QCoreApplication::processEvents();
  const auto keys = store::signing_keys(kept.store());
  REQUIRE(keys);
  CHECK(keys->size() == 1);
}

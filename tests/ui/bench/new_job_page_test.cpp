#include "shimwright/bench/new_job_page.h"

#include <catch2/catch.hpp>

#include "shimwright/widgets/parts.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

struct Page {
  explicit Page(test::UiBench& bench) : page(bench.workbench()) {
    page.resize(1366, 700);
    page.show();
    page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    page.take_focus();
    QObject::connect(&page, &bench::NewJobPage::opened, &page, [this] { ++opened; });
    QObject::connect(&page, &bench::NewJobPage::cancelled, &page, [this] { ++cancelled; });
  }

  QLineEdit& edit(const char* name) {
    auto* found = page.findChild<QLineEdit*>(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  widgets::Button& button(const char* name) {
    auto* found = page.findChild<widgets::Button*>(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  /// Where the focus is, as a scanner or a person types.
  void type(const QString& text) {
    QWidget* const now = QApplication::focusWidget();
    REQUIRE(now != nullptr);
    QTest::keyClicks(now, text);
  }
  void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }
  void open_by_keys() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier); }
  [[nodiscard]] QString words() const {
    // Boxes made anew are shown by their layout.
    QCoreApplication::sendPostedEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QStringList all;
    for (const QLabel* each : page.findChildren<QLabel*>()) {
      if (each->isVisible()) {
        all.append(each->text().replace(QChar(0x00A0), QLatin1Char(' ')));
      }
    }
    return all.join(QLatin1Char('\n'));
  }

  bench::NewJobPage page;
  int opened = 0;
  int cancelled = 0;
};

std::vector<store::JobSummary> open_jobs(test::UiBench& bench) {
  const auto jobs = bench.store().open_jobs();
  REQUIRE(jobs);
  return *jobs;
}

}  // namespace

TEST_CASE("a job is opened by keys alone, Enter going from field to field") {
  test::UiBench bench;
  Page at(bench);
  CHECK(at.button("button-open-job").text() == "Open job 1");
  for (const char* text :
       {"TESTVN009TA030417", "DEMO 417", "121400", "shudders pulling away", "", "7-004417", "2020-01-28", "C-0382"}) {
    at.type(text);
    at.enter();
    CHECK(at.opened == 0);
  }
  CHECK(at.button("button-open-job").hasFocus());
  CHECK(at.page.has_unsent());
  at.open_by_keys();
  CHECK(at.opened == 1);
  CHECK_FALSE(at.page.has_unsent());
  REQUIRE(bench.workbench().has_job());
  const auto& opened = bench.workbench().state().opened;
  REQUIRE(opened);
  CHECK(opened->number == "1");
  CHECK(opened->vehicle_key == "TESTVN009TA030417");
  CHECK(opened->gearbox_serial == "7-004417");
  CHECK(opened->build_date == "2020-01-28");
  CHECK(opened->spec_hash == bench.spec_hash());
  CHECK(opened->sheet_hash == bench.sheet_hash());
  REQUIRE(opened->odometer);
  CHECK(opened->odometer->base == 121400000);
  REQUIRE(open_jobs(bench).size() == 1);
  CHECK(open_jobs(bench).front().plate == "DEMO 417");
  const auto loaded = bench.store().load(bench.workbench().job_id());
  REQUIRE(loaded);
  CHECK(loaded->private_texts.size() == 3);
}

TEST_CASE("a refusal stands in place, the focus goes there and nothing typed is lost") {
  test::UiBench bench;
  Page at(bench);
  at.type("TESTVNOO9TA030417");
  at.enter();
  CHECK(at.edit("field-vehicle").hasFocus());
  QTest::keyClicks(&at.edit("field-plate"), "DEMO 417");
  at.open_by_keys();
  CHECK(at.opened == 0);
  CHECK(open_jobs(bench).empty());
  CHECK(at.words().contains("TESTVN009TA030417 meant?"));
  CHECK(at.edit("field-vehicle").text() == "TESTVNOO9TA030417");
  QTest::mouseClick(&at.button("button-take-suggestion"), Qt::LeftButton);
  CHECK(at.edit("field-plate").hasFocus());
  CHECK(at.edit("field-plate").text() == "DEMO 417");
  QTest::keyClicks(&at.edit("field-odometer"), "1,2,3");
  QTest::mouseClick(&at.button("button-open-job"), Qt::LeftButton);
  CHECK(at.opened == 0);
  CHECK(at.edit("field-odometer").hasFocus());
  at.edit("field-odometer").clear();
  QTest::keyClicks(&at.edit("field-build-date"), "2021-17-80");
  at.open_by_keys();
  CHECK(at.edit("field-build-date").hasFocus());
  CHECK(at.words().contains("is no date"));
  at.edit("field-build-date").clear();
  at.open_by_keys();
  CHECK(at.opened == 1);
}

TEST_CASE("a text too long to print is told at the foot, the focus is in its field and it stays there") {
  test::UiBench bench;
  Page at(bench);
  at.type("TESTVN009TA030417");
  at.enter();
  for (const char* name : {"field-plate", "field-gearbox-serial", "field-customer-reference"}) {
    const QString pasted(201, QLatin1Char('7'));
    at.edit(name).setText(pasted);
    at.open_by_keys();
    CHECK(at.opened == 0);
    CHECK(at.edit(name).hasFocus());
    CHECK(at.words().contains("This has 201 characters, at most 200 are kept"));
    CHECK(at.edit(name).text() == pasted);
    at.edit(name).clear();
  }
  CHECK(open_jobs(bench).empty());
}

TEST_CASE("a vehicle that was here before is known, with its last job and a second pack questioned") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("");
  Page at(bench);
  CHECK(at.button("button-open-job").text() == "Open job 2041");
  CHECK_FALSE(at.words().contains("here before"));
  at.type("TESTVN006MA021188");
  CHECK(at.words().contains("This vehicle was here before"));
  CHECK(at.words().contains("Job 2040 · 20 Nov 2026 · 98640 km · pack renewed"));
  CHECK(at.words().contains("Filled in from job 2040: plate, gearbox serial, build date."));
  CHECK(at.edit("field-plate").text() == "DEMO 188");
  CHECK(at.edit("field-gearbox-serial").text() == "7-003905");
  QTest::keyClicks(&at.edit("field-odometer"), "104990");
  CHECK(at.words().contains("Second pack in 6350 km."));
  QTest::keyClick(&at.edit("field-odometer"), Qt::Key_Backspace);
  CHECK(at.words().contains("The odometer stands lower than before."));
  // Another vehicle: what came from the first goes with it.
  at.edit("field-vehicle").setFocus();
  at.edit("field-vehicle").selectAll();
  at.type("TESTVN009TA030417");
  CHECK(at.words().contains("This vehicle was not here before."));
  CHECK(at.edit("field-plate").text().isEmpty());
}

TEST_CASE("a new job for a known vehicle begins with its number") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("");
  Page at(bench);
  at.page.begin_with("TESTVN006MA021188");
  CHECK(at.edit("field-vehicle").text() == "TESTVN006MA021188");
  CHECK(at.edit("field-plate").text() == "DEMO 188");
  at.open_by_keys();
  CHECK(at.opened == 1);
  CHECK(open_jobs(bench).front().number == "2041");
}

TEST_CASE("a chassis number comes back as one") {
  test::UiBench bench;
  Page at(bench);
  at.type("ROW 12-7");
  QTest::mouseClick(&at.button("button-no-vin"), Qt::LeftButton);
  at.type("trailer without a VIN");
  at.enter();
  CHECK(at.edit("field-plate").hasFocus());
  at.open_by_keys();
  REQUIRE(at.opened == 1);
  REQUIRE(bench.workbench().state().opened);
  CHECK(bench.workbench().state().opened->chassis_reason == "trailer without a VIN");
  at.page.begin_with("ROW127");
  CHECK(at.edit("field-chassis-reason").text() == "trailer without a VIN");
  CHECK(at.words().contains("Job 1 of this vehicle is not finished."));
}

TEST_CASE("cancelling asks in place where something would be lost") {
  test::UiBench bench;
  Page at(bench);
  QTest::mouseClick(&at.button("button-cancel"), Qt::LeftButton);
  CHECK(at.cancelled == 1);
  at.page.take_focus();
  at.type("TESTVN");
  QTest::mouseClick(&at.button("button-cancel"), Qt::LeftButton);
  CHECK(at.cancelled == 1);
  CHECK(at.words().contains("What is typed here is kept nowhere else."));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  CHECK(at.cancelled == 1);
  CHECK(at.edit("field-vehicle").text() == "TESTVN");
  QTest::mouseClick(&at.button("button-cancel"), Qt::LeftButton);
  QTest::mouseClick(&at.button("button-throw-away"), Qt::LeftButton);
  CHECK(at.cancelled == 2);
  CHECK_FALSE(at.page.has_unsent());
}

TEST_CASE("a spec sheet nobody checked is not offered, and it is said which one waits") {
  test::UiBench bench;
  std::string own = bench.store().registers().spec_sheet(bench.spec_hash())->json;
  for (const auto& [was, is] :
       {std::pair<std::string, std::string>("\"demonstration\": true", "\"demonstration\": false"),
        {"\"gearbox\": \"D7\"", "\"gearbox\": \"K9\""}}) {
    own.replace(own.find(was), was.size(), is);
  }
  REQUIRE(bench.store().registers().add_spec_sheet(own, bench.workbench().by()));
  Page at(bench);
  const auto* choice = at.page.findChild<QComboBox*>("field-gearbox");
  CHECK(choice->count() == 1);
  CHECK(at.words().contains("Not offered before it is checked under Workshop: K9, issue 3."));
}

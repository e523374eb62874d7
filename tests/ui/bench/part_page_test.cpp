#include "part_page.h"

#include <QLocale>
#include <algorithm>

#include <nlohmann/json.hpp>

#include "job_words.h"
#include "page_driver.h"
#include "shimwright/store/registers.h"

using namespace shimwright;

namespace {

using Json = nlohmann::ordered_json;

/// The shipped sheet, its first step being one that renews three parts.
std::string sheet_with_three_parts(store::Store& store, const std::string& shipped) {
  Json sheet = Json::parse(store.registers().job_sheet(shipped)->json);
  sheet["id"] = "0198f0c0-5a00-7a11-8d01-0000000000aa";
  sheet["name"] = "three-parts";
  sheet["issue"] = 1;
  Json step = {{"id", "renew"},
               {"kind", "part"},
               {"title", {{"en", "Renew"}, {"de", "Erneuern"}, {"fr", "Remplacer"}}},
               {"parts", {"clutch-pack", "lever-set", "guide-bolts"}}};
  Json& steps = sheet["stages"][0]["steps"];
  steps.insert(steps.begin(), std::move(step));
  const auto hash = store.registers().add_job_sheet(sheet.dump(), {});
  REQUIRE(hash);
  return *hash;
}

/// A job whose first step renews three parts, its page open.
struct ThreeParts : test::PageDriver {
  ThreeParts() : PageDriver("new-pack") {
    job::OpenJob job;
    job.number = "3001";
    job.vehicle_typed = "no number plate";
    job.chassis_reason = "made up for the test";
    const std::string sheet = sheet_with_three_parts(bench().store(), bench().sheet_hash());
    REQUIRE(workbench().open_new(sheet, bench().spec_hash(), job));
    open("renew");
  }

  /// How often the list to order from has the part: a later step of the sheet wants it as well.
  [[nodiscard]] std::ptrdiff_t ordered(const std::string& part) {
    const job::JobState& job = workbench().state();
    const auto lines = bench::parts_to_order(job, "en");
    return std::count_if(lines.begin(), lines.end(), [&](const QString& line) {
      return line.contains(QString::fromStdString(job.sheets.spec->part(part)->number));
    });
  }
  [[nodiscard]] const std::vector<job::PartFitted>& kept() { return latest<job::PartsFitted>()->parts; }
};

}  // namespace

TEST_CASE("a part is renewed by a tick, as the spec sheet has it") {
  test::PageDriver driver("guide-bolts-new");
  const std::string number = driver.workbench().state().sheets.spec->part("guide-bolts")->number;
  CHECK(driver.shows("Number " + number + ", quantity 6"));
  CHECK(driver.shows("one-time: renewed at every assembly"));
  // What is left blank stands beside the tick; in the fields it would look as if it were typed.
  CHECK(driver.part("field-guide-bolts-quantity")->placeholderText().isEmpty());
  CHECK(driver.part("field-guide-bolts-number")->placeholderText().isEmpty());
  CHECK(driver.part<QWidget>("button-tick-guide-bolts")->height() >= 48);
  driver.press("button-tick-guide-bolts");
  driver.take();
  REQUIRE(driver.latest<job::PartsFitted>() != nullptr);
  const auto& part = driver.latest<job::PartsFitted>()->parts.front();
  CHECK(part.quantity == 6);
  CHECK(part.number == number);
  CHECK(driver.left == 1);
}

TEST_CASE("nothing is said to be renewed that was not ticked, whatever is typed") {
  test::PageDriver driver("new-pack");
  driver.take();
  CHECK(driver.refusals == std::vector<std::string>{"part_missing"});
  driver.type("field-clutch-pack-batch", "26-1188");
  driver.take();
  CHECK(driver.refusals == std::vector<std::string>{"part_missing", "part_missing"});
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-clutch-pack-batch")->text() == "26-1188");
  CHECK_FALSE(driver.page().commit());
  driver.press("button-clear-typed");
  CHECK(driver.page().commit());
}

TEST_CASE("number, quantity and batch are typed one after the other; Enter never keeps them") {
  test::PageDriver driver("new-pack");
  driver.type("field-clutch-pack-number", "DP-X");
  driver.enter("field-clutch-pack-number");
  CHECK(driver.part("field-clutch-pack-quantity")->hasFocus());
  driver.type("field-clutch-pack-quantity", "2");
  driver.enter("field-clutch-pack-quantity");
  CHECK(driver.part("field-clutch-pack-batch")->hasFocus());
  driver.type("field-clutch-pack-batch", "26-1188");
  driver.enter("field-clutch-pack-batch");
  CHECK(driver.page().take_digit(1));
  CHECK(driver.state() == "open");
  driver.page().refresh();
  CHECK(driver.part("field-clutch-pack-batch")->text() == "26-1188");
  CHECK(driver.part<QAbstractButton>("button-tick-clutch-pack")->isChecked());
  CHECK_FALSE(driver.page().commit());
  driver.take();
  CHECK(driver.state() == "accepted");
  CHECK(driver.shows("kept: DP-X, 2, batch 26-1188, by MK"));
  CHECK(driver.part("field-clutch-pack-batch")->text().isEmpty());
  CHECK_FALSE(driver.part<QAbstractButton>("button-tick-clutch-pack")->isEnabled());
}

TEST_CASE("what is renewed already is put right by typing it anew") {
  test::PageDriver driver("new-pack");
  CHECK(driver.page().take_digit(1));
  driver.take();
  REQUIRE(driver.state() == "accepted");
  CHECK(driver.page().actions().empty());
  driver.type("field-clutch-pack-batch", "26-1189");
  driver.take();
  CHECK(driver.latest<job::PartsFitted>()->parts.front().batch == "26-1189");
  CHECK(driver.shows("batch 26-1189"));
}

TEST_CASE("a quantity that cannot be read is told at its field, and a scan is a batch") {
  test::PageDriver driver("new-pack");
  CHECK(driver.page().take_digit(1));
  driver.type("field-clutch-pack-quantity", "1.5");
  driver.take();
  CHECK(driver.state() == "open");
  CHECK(driver.part("field-clutch-pack-quantity")->hasFocus());
  driver.page().take_burst("26-1188");
  CHECK(driver.part("field-clutch-pack-batch")->text() == "26-1188");
}

TEST_CASE("a step of several parts is ticked part by part, by keys and by touch, in every locale") {
  for (const char* locale : {"en_US", "de_DE", "fr_FR"}) {
    INFO(locale);
    QLocale::setDefault(QLocale(QLatin1String(locale)));
    ThreeParts driver;
    driver.press("button-tick-lever-set");
    CHECK(driver.page().take_burst("L-4"));
    CHECK(driver.part("field-lever-set-batch")->text() == "L-4");
    driver.take();
    CHECK(driver.state() == "in_work");
    CHECK(driver.left == 0);
    REQUIRE(driver.kept().size() == 1);
    CHECK(driver.kept()[0] == job::PartFitted{"lever-set", driver.kept()[0].number, 1, "L-4"});
    CHECK(driver.shows("batch L-4"));
    CHECK(driver.ordered("lever-set") == 1);
    CHECK(driver.ordered("guide-bolts") == 2);
    CHECK_FALSE(driver.page().has_unsent());
    // Nothing more is ticked: the first that is missing is named.
    driver.take();
    CHECK(driver.refusals == std::vector<std::string>{"part_missing"});
    CHECK(driver.page().take_digit(1));
    CHECK(driver.page().take_digit(2));  // renewed already: stays so
    auto* bolts = driver.part<QAbstractButton>("button-tick-guide-bolts");
    bolts->setFocus();
    QTest::keyClick(bolts, Qt::Key_Space);
    CHECK_FALSE(driver.page().take_digit(4));
    driver.take();
    REQUIRE(driver.kept().size() == 2);
    CHECK(driver.kept()[1].part == "guide-bolts");
    CHECK(driver.kept()[1].quantity == 6);
    CHECK(driver.state() == "accepted");
    CHECK(driver.left == 1);
  }
  QLocale::setDefault(QLocale::c());
}

TEST_CASE("a tick is taken back as long as it is not kept, and leaving the page keeps none") {
  ThreeParts driver;
  CHECK(driver.page().take_digit(3));
  CHECK(driver.page().has_unsent());
  CHECK_FALSE(driver.page().commit());
  CHECK(driver.state() == "open");
  CHECK(driver.page().take_digit(3));
  CHECK_FALSE(driver.page().has_unsent());
  CHECK(driver.page().commit());
}

TEST_CASE("a part that was taken back is ticked no longer") {
  ThreeParts driver;
  CHECK(driver.page().take_digit(2));
  driver.take();
  auto* tick = driver.part<QAbstractButton>("button-tick-lever-set");
  REQUIRE(tick->isChecked());
  const std::int64_t entry = driver.workbench().state().entries.back().seq;
  REQUIRE(driver.workbench().send(job::Withdraw{entry, "wrong box"}));
  CHECK_FALSE(tick->isChecked());
  CHECK(tick->isEnabled());
  CHECK_FALSE(driver.page().has_unsent());
}

TEST_CASE("what was renewed before the job lay still is asked again, all of it") {
  test::PageDriver driver("pack-ring-new");
  CHECK(driver.page().take_digit(1));
  driver.take();
  REQUIRE(driver.state() == "accepted");
  REQUIRE(driver.workbench().send(job::Park{"the ring", ""}));
  REQUIRE(driver.workbench().send(job::TakeUp{}));
  REQUIRE(driver.state() == "unproven");
  auto* tick = driver.part<QAbstractButton>("button-tick-pack-ring");
  CHECK_FALSE(tick->isChecked());
  CHECK(tick->isEnabled());
  driver.press("button-tick-pack-ring");
  driver.take();
  CHECK(driver.state() == "accepted");
}

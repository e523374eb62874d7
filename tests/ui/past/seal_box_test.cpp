#include "seal_box.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/store/job_record.h"
#include "shimwright/store/seal.h"
#include "ui_bench.h"
#include "worked.h"

using namespace shimwright;

namespace {

/// The box over a job of two signatures that is at its end.
struct SealBench {
  explicit SealBench(const std::string& until = "") : job(bench.go_to(until)), box(bench.store(), ways()) {
    box.resize(1000, 300);
    box.show_job(job);
  }

  past::SealWays ways() {
    past::SealWays ways;
    ways.by = [this] { return store::By{bench.workbench().person().id, bench.workbench().now()}; };
    ways.rules.cost = {1, 8192};
    ways.folder = [this] { return folder; };
    return ways;
  }
  [[nodiscard]] bool has(const char* name) const { return box.findChild<QWidget*>(name) != nullptr; }
  void fill(const char* name, const char* text) {
    auto* field = box.findChild<QLineEdit*>(name);
    REQUIRE(field != nullptr);
    QTest::keyClicks(field, text);
  }
  void press(const char* name) {
    auto* button = box.findChild<QPushButton*>(name);
    REQUIRE(button != nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
    test::wait_for_work(box);
  }
  /// Without waiting for what it begins.
  void click(const char* name) {
    auto* button = box.findChild<QPushButton*>(name);
    REQUIRE(button != nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
  }
  [[nodiscard]] std::string said() const { return box.findChild<QLabel*>("seal-said")->text().toStdString(); }
  [[nodiscard]] bool sealed() { return store::signed_record_of(bench.store(), job).has_value(); }
  void fill_pins() {
    for (const char* field : {"field-pin-1", "field-pin-1-again"}) {
      fill(field, "2580");
    }
    for (const char* field : {"field-pin-2", "field-pin-2-again"}) {
      fill(field, "081542");
    }
  }
  void seal() {
    fill_pins();
    press("button-seal");
  }

  test::UiBench bench{"01-smooth-day"};
  std::string folder;
  std::string job;
  past::SealBox box;
};

}  // namespace

TEST_CASE("a job under way has no seal to see to") {
  const SealBench it("odometer");
  CHECK(it.box.isHidden());
}

TEST_CASE("a job at its end is sealed with first PINs, typed twice") {
  SealBench it;
  QSignalSpy sealed(&it.box, &past::SealBox::just_sealed);
  QSignalSpy added(&it.box, &past::SealBox::added_to);
  CHECK_FALSE(it.box.isHidden());
  it.seal();
  CHECK(it.said().find("Signed and sealed.") == 0);
  CHECK(sealed.size() == 1);
  CHECK(added.isEmpty());
  CHECK(it.sealed());
  CHECK(it.box.findChild<QLabel*>("seal-state")->text().startsWith("Sealed. Whole"));
  CHECK_FALSE(it.has("button-seal"));
}

TEST_CASE("a key with an end to come signs with its PIN, and no first PIN is asked for") {
  SealBench it;
  const auto by = store::By{it.bench.workbench().person().id, it.bench.workbench().now()};
  for (const store::Person& each : it.bench.workbench().persons()) {
    std::string typed = "2580";
    static_cast<void>(store::set_pin(it.bench.store(), each.id, record::Pin::taken_from(typed), by, it.ways().rules));
    REQUIRE(store::end_keys(it.bench.store(), each.id, "2099-01-01", by));
  }
  it.box.show_job(it.job);
  test::wait_for_work(it.box);
  CHECK_FALSE(it.has("field-pin-1-again"));
  it.fill("field-pin-1", "2580");
  it.fill("field-pin-2", "2580");
  it.press("button-seal");
  CHECK(it.sealed());
}

TEST_CASE("where a key has ended the box makes no new one, and says where that is done") {
  SealBench it;
  const auto by = store::By{it.bench.workbench().person().id, it.bench.workbench().now()};
  for (const store::Person& each : it.bench.workbench().persons()) {
    std::string typed = "2580";
    static_cast<void>(store::set_pin(it.bench.store(), each.id, record::Pin::taken_from(typed), by, it.ways().rules));
    REQUIRE(store::end_keys(it.bench.store(), each.id, "2020-01-01", by));
  }
  it.box.show_job(it.job);
  test::wait_for_work(it.box);
  CHECK_FALSE(it.has("button-seal"));
  CHECK_FALSE(it.has("field-pin-1"));
  REQUIRE(it.has("seal-key-ended"));
  CHECK(it.box.findChild<QLabel*>("seal-key-ended")->text().contains("under People"));
}

TEST_CASE("a PIN typed otherwise the second time is refused, and nothing is kept") {
  SealBench it;
  it.fill("field-pin-1", "2580");
  it.fill("field-pin-1-again", "2581");
  it.press("button-seal");
  CHECK(it.said().find("differ") != std::string::npos);
  CHECK_FALSE(it.sealed());
  CHECK(store::signing_keys(it.bench.store())->empty());
  CHECK(it.box.findChild<QLineEdit*>("field-pin-1")->text().isEmpty());
}

TEST_CASE("a slip in the second person's PIN keeps no PIN of the first either") {
  SealBench it;
  for (const char* field : {"field-pin-1", "field-pin-1-again", "field-pin-2"}) {
    it.fill(field, "2580");
  }
  it.fill("field-pin-2-again", "2581");
  it.press("button-seal");
  CHECK(store::signing_keys(it.bench.store())->empty());
  it.seal();
  CHECK(it.sealed());
}

TEST_CASE("a wrong PIN is told, and the right one seals after") {
  SealBench it;
  const auto by = store::By{it.bench.workbench().person().id, it.bench.workbench().now()};
  for (const store::Person& each : it.bench.workbench().persons()) {
    std::string typed = "2580";
    static_cast<void>(store::set_pin(it.bench.store(), each.id, record::Pin::taken_from(typed), by, it.ways().rules));
  }
  it.box.show_job(it.job);
  test::wait_for_work(it.box);
  CHECK_FALSE(it.has("field-pin-1-again"));
  it.fill("field-pin-1", "9999");
  it.fill("field-pin-2", "2580");
  it.press("button-seal");
  CHECK_FALSE(it.said().empty());
  CHECK_FALSE(it.sealed());
  it.fill("field-pin-1", "2580");
  it.fill("field-pin-2", "2580");
  it.bench.move_clock(60);
  it.press("button-seal");
  CHECK(it.sealed());
}

TEST_CASE("a sealed job is added to, signed by who is at the bench, and its file is written") {
  SealBench it;
  it.seal();
  REQUIRE(it.sealed());
  it.folder = it.bench.file("backups").toStdString();
  REQUIRE(QDir().mkpath(it.bench.file("backups")));
  it.press("button-addendum");
  it.fill("field-addendum-reason", "found later");
  it.fill("field-addendum-text", "0.1 l of oil topped up");
  it.fill("field-pin-1", it.bench.workbench().person().initials == "MK" ? "2580" : "081542");
  if (it.has("field-pin-1-again")) {
    it.fill("field-pin-1-again", it.bench.workbench().person().initials == "MK" ? "2580" : "081542");
  }
  it.press("button-sign-addendum");
  CHECK(it.said().find("Added and signed.") == 0);
  const auto record = store::record_of(it.bench.store(), it.job);
  REQUIRE(record);
  CHECK(record->addenda.size() == 1);
  CHECK(QDir(it.bench.file("backups")).entryList(QDir::Files).size() == 1);
}

TEST_CASE("the window goes on while it is signed and while the seal is looked at, and both are said") {
  SealBench it;
  it.fill_pins();
  it.click("button-seal");
  CHECK(it.said().find("Signing") == 0);
  CHECK_FALSE(test::at_rest(it.box));
  CHECK_FALSE(it.box.findChild<QPushButton*>("button-seal")->isEnabled());
  bool looked_at = false;
  QObject::connect(&it.box, &past::SealBox::just_sealed,
                   [&] { looked_at = it.box.findChild<QLabel*>("seal-state")->text().contains("is being looked at"); });
  test::wait_for_work(it.box);
  CHECK(looked_at);
  CHECK(it.said().find("Signed and sealed.") == 0);
  CHECK(it.sealed());
  CHECK(it.box.findChild<QLabel*>("seal-state")->text().startsWith("Sealed. Whole"));
  CHECK(it.box.findChild<QPushButton*>("button-addendum")->isEnabled());
}

TEST_CASE("what comes after another job is shown says nothing there, and is found when the first is shown again") {
  SealBench it;
  const std::string other = it.bench.go_to("odometer");
  QSignalSpy sealed(&it.box, &past::SealBox::just_sealed);
  it.fill_pins();
  it.click("button-seal");
  it.box.show_job(other);
  CHECK(it.box.isHidden());
  test::wait_for_work(it.box);
  CHECK(sealed.isEmpty());
  CHECK(it.box.isHidden());
  CHECK(it.box.findChild<QLabel*>("seal-said")->isHidden());
  it.box.show_job(it.job);
  test::wait_for_work(it.box);
  CHECK(it.box.findChild<QLabel*>("seal-state")->text().startsWith("Sealed. Whole"));
}

TEST_CASE("shown again while it is signed, the form waits as it did, and says so") {
  SealBench it;
  it.fill_pins();
  it.click("button-seal");
  it.box.show_job(it.bench.go_to("odometer"));
  it.box.show_job(it.job);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  CHECK_FALSE(it.box.isHidden());
  CHECK(it.said().find("Signing") == 0);
  for (const auto* each : it.box.findChildren<QPushButton*>()) {
    CHECK_FALSE(each->isEnabled());
  }
  test::wait_for_work(it.box);
  CHECK(it.said().find("Signed and sealed.") == 0);
  CHECK(it.box.findChild<QLabel*>("seal-state")->text().startsWith("Sealed. Whole"));
}

TEST_CASE("an addition that is refused keeps what was typed but the PIN") {
  SealBench it;
  it.seal();
  it.press("button-addendum");
  it.fill("field-addendum-reason", "found later");
  it.fill("field-addendum-text", "0.1 l of oil topped up");
  it.fill("field-pin-1", "0000");
  it.press("button-sign-addendum");
  CHECK_FALSE(it.said().empty());
  CHECK(it.box.findChild<QLineEdit*>("field-addendum-reason")->text() == "found later");
  CHECK(it.box.findChild<QLineEdit*>("field-addendum-text")->text() == "0.1 l of oil topped up");
  CHECK(it.box.findChild<QLineEdit*>("field-pin-1")->text().isEmpty());
  CHECK(it.box.findChild<QPushButton*>("button-sign-addendum")->isEnabled());
}

TEST_CASE("thrown away while it signs, the box waits, and what was signed stands in the store") {
  test::UiBench bench("01-smooth-day");
  const std::string job = bench.go_to("");
  past::SealWays ways;
  ways.by = [&bench] { return store::By{bench.workbench().person().id, bench.workbench().now()}; };
  ways.rules.cost = {1, 8192};
  {
    past::SealBox box(bench.store(), ways);
    box.show_job(job);
    for (const char* field : {"field-pin-1", "field-pin-1-again", "field-pin-2", "field-pin-2-again"}) {
      QTest::keyClicks(box.findChild<QLineEdit*>(field), "2580");
    }
    box.findChild<QPushButton*>("button-seal")->click();
  }
  QCoreApplication::processEvents();
  CHECK(store::verify_job(bench.store(), job));
}

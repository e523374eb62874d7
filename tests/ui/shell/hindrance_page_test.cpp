#include "shimwright/shell/hindrance_page.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;
using test::named;

TEST_CASE("a lock is broken only after it was shown whose it is") {
  shell::HindrancePage page;
  page.show();
  const store::LockHolder holder{"Rolf Tarn", "bench-two", 1795770000000, 4711};
  page.show_hindrance(Error{"locked", "", {"Rolf Tarn writes.", {}}}, "/own/workshop.shimwright", holder);
  CHECK(named<QLabel>(page, "hindrance")->text() == "Rolf Tarn writes.");
  CHECK_FALSE(named(page, "button-break-really")->isVisible());
  std::optional<store::LockHolder> broken;
  QObject::connect(&page, &shell::HindrancePage::break_wanted, [&](const store::LockHolder& shown) { broken = shown; });
  test::press(page, "button-break-lock");
  CHECK_FALSE(broken);
  REQUIRE(QTest::qWaitForWindowActive(&page));
  CHECK(named(page, "button-keep-lock")->hasFocus());
  QTest::keyClick(page.focusWidget(), Qt::Key_Return);
  CHECK_FALSE(broken);
  CHECK_FALSE(named(page, "break-question")->isVisible());
  CHECK(named(page, "button-retry")->hasFocus());
  test::press(page, "button-break-lock");
  const auto labels = named(page, "break-question")->findChildren<QLabel*>();
  CHECK(std::any_of(labels.begin(), labels.end(), [](const QLabel* each) {
    return each->text().contains("Rolf Tarn") && each->text().contains("bench-two");
  }));
  test::press(page, "button-break-really");
  REQUIRE(broken);
  CHECK(*broken == holder);
}

TEST_CASE("what is no lock can be tried again, and nothing else") {
  shell::HindrancePage page;
  page.show();
  page.show_hindrance(Error{"not_a_store", "", {"No store.", {}}}, "/x", std::nullopt);
  CHECK_FALSE(named(page, "button-look")->isVisible());
  CHECK_FALSE(named(page, "button-break-lock")->isVisible());
  QSignalSpy retry(&page, &shell::HindrancePage::retry_wanted);
  test::press(page, "button-retry");
  CHECK(retry.count() == 1);
}

TEST_CASE("the last whole backup of a damaged store is offered, and one press takes it") {
  shell::HindrancePage page;
  page.show();
  page.show_hindrance(Error{"store_damaged", "", {"The end is missing.", {}}}, "/own/workshop.shimwright",
                      std::nullopt);
  CHECK_FALSE(named(page, "rescue")->isVisible());
  page.show_search("/kept");
  CHECK(named(page, "rescue")->isVisible());
  CHECK_FALSE(named(page, "button-put-back")->isVisible());
  store::BackupOffer offer{"/kept/monday.shimwright", 1795770000000, 12, 340, store::BackupOffer::Missing{1, 3}};
  page.take_focus();
  REQUIRE(QTest::qWaitForWindowActive(&page));
  CHECK(named(page, "rescue")->hasFocus());  // no button is under the next key while it is not known which
  page.show_offer(std::optional(offer), "/kept");
  CHECK(named(page, "button-put-back")->hasFocus());
  const auto buttons = page.findChildren<widgets::Button*>();
  CHECK(std::count_if(buttons.begin(), buttons.end(), [](const widgets::Button* each) {
          return each->isVisible() && each->kind() == widgets::Button::Kind::main;
        }) == 1);
  named(page, "button-retry-plain")->setFocus();
  page.show_offer(std::optional(offer), "/kept");
  CHECK(named(page, "button-retry-plain")->hasFocus());  // who has gone elsewhere stays there
  const auto shown = [&page] {
    QString all;
    for (const QLabel* each : named(page, "rescue")->findChildren<QLabel*>()) {
      all += each->text();
    }
    return all;
  };
  CHECK(shown().contains("Jobs: 12, entries: 340. Entered after it, and then missing: 3 entries, in jobs: 1"));
  QString wanted;
  QObject::connect(&page, &shell::HindrancePage::rescue_wanted, [&](const QString& backup) { wanted = backup; });
  test::press(page, "button-put-back");
  CHECK(wanted == "/kept/monday.shimwright");
  page.show_offer(std::optional<store::BackupOffer>(), "/kept");
  CHECK(shown().contains("no whole backup"));
  CHECK_FALSE(named(page, "button-put-back")->isVisible());
  page.show_hindrance(Error{"locked", "", {"Somebody writes.", {}}}, "/own/workshop.shimwright", std::nullopt);
  CHECK_FALSE(named(page, "rescue")->isVisible());
}

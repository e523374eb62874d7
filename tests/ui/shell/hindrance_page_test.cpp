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

#include "shimwright/shell/notices.h"

#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

namespace {

void sweep() {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

}  // namespace

TEST_CASE("a notice goes when it is understood; one that stays has no button") {
  shell::Notices notices;
  notices.tell("backup", "The backup was not made.");
  notices.tell("looks-only", "Looking only.", true);
  CHECK(test::named(notices, "button-notice-looks-only") == nullptr);
  test::press(notices, "button-notice-backup");
  sweep();
  CHECK(test::named(notices, "notice-backup") == nullptr);
  CHECK(test::named(notices, "notice-looks-only") != nullptr);
}

TEST_CASE("a later sentence takes the place of the earlier one") {
  shell::Notices notices;
  notices.tell("refused", "first");
  notices.tell("refused", "second");
  sweep();
  const auto bars = notices.findChildren<QFrame*>("notice-refused");
  REQUIRE(bars.size() == 1);
  CHECK(bars.front()->accessibleName() == "second");
}

TEST_CASE("an offer does what it says") {
  shell::Notices notices;
  int done = 0;
  notices.offer("typed", "Not saved yet.", "Close without it", [&done] { ++done; });
  test::press(notices, "button-notice-typed");
  CHECK(done == 1);
}

#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <QStandardPaths>
#include <catch2/catch.hpp>

#include "qt/warning_guard.h"

namespace {

// Says in which test case a warning came, and fails that case.
struct WarningListener : Catch::TestEventListenerBase {
  using TestEventListenerBase::TestEventListenerBase;

  void sectionEnded(const Catch::SectionStats& stats) override {
    const int now = shimwright::test::unexpected_warnings();
    if (now != reported) {
      reported = now;
      FAIL_CHECK("unexpected warning in: " << stats.sectionInfo.name);
    }
  }

  int reported = 0;
};
CATCH_REGISTER_LISTENER(WarningListener)

}  // namespace

int main(int count, char* arguments[]) {
  // A test needs no screen, stands in a time zone that shows what was forgotten, and leaves the person's settings alone.
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  qputenv("TZ", "Asia/Kathmandu");
  QStandardPaths::setTestModeEnabled(true);
  shimwright::test::watch_warnings();
  const QApplication application(count, arguments);
  const int failed = Catch::Session().run(count, arguments);
  return failed != 0 || shimwright::test::unexpected_warnings() != 0 ? 1 : 0;
}

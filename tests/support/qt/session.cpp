#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include <QApplication>
#include <QStandardPaths>
#include <catch2/catch.hpp>
#include <optional>

#include "qt/warning_guard.h"

namespace {

/// What each test program with Qt runs in: an application without a screen, in a time zone that shows a forgotten
/// offset, apart from the person's own settings. A warning fails the case in which it came.
struct QtSession : Catch::TestEventListenerBase {
  using TestEventListenerBase::TestEventListenerBase;

  void testRunStarting(const Catch::TestRunInfo&) override {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    qputenv("TZ", "Asia/Kathmandu");
    QStandardPaths::setTestModeEnabled(true);
    shimwright::test::watch_warnings();
    application.emplace(argument_count, arguments);
  }

  void sectionEnded(const Catch::SectionStats& stats) override {
    const int now = shimwright::test::unexpected_warnings();
    if (now != reported) {
      reported = now;
      FAIL_CHECK("unexpected warning in: " << stats.sectionInfo.name);
    }
  }

  void testRunEnded(const Catch::TestRunStats&) override { application.reset(); }

  char program_name[6] = "tests";
  char* arguments[2] = {program_name, nullptr};
  int argument_count = 1;
  std::optional<QApplication> application;
  int reported = 0;
};
CATCH_REGISTER_LISTENER(QtSession)

}  // namespace

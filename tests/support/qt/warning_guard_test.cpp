#include "qt/warning_guard.h"

#include <QDebug>
#include <QGuiApplication>
#include <QTimeZone>
#include <catch2/catch.hpp>
#include <thread>

using shimwright::test::ExpectedWarning;
using shimwright::test::unexpected_warnings;

TEST_CASE("an expected warning passes, also from another thread") {
  const ExpectedWarning here("dial not set");
  const ExpectedWarning there("store closed");
  qWarning() << "dial not set to zero";
  std::thread([] { qCritical() << "store closed early"; }).join();
  CHECK(unexpected_warnings() == 0);
}

TEST_CASE("less than a warning passes") {
  qDebug() << "a remark";
  qInfo() << "a remark";
  CHECK(unexpected_warnings() == 0);
}

TEST_CASE("tests run without a screen, away from Greenwich") {
  CHECK(QGuiApplication::platformName() == "offscreen");
  CHECK(QTimeZone::systemTimeZone().offsetFromUtc(QDateTime::currentDateTimeUtc()) == (5 * 60 + 45) * 60);
}

// The next three are run by name and have to fail: see CMakeLists.txt.
TEST_CASE("must fail: an unexpected warning", "[.]") {
  qWarning() << "nobody asked for this";
  CHECK(true);
}

TEST_CASE("must fail: an unexpected warning from another thread", "[.]") {
  std::thread([] { qWarning() << "nobody asked for this"; }).join();
  CHECK(true);
}

TEST_CASE("must fail: an expected warning that does not come", "[.]") {
  const ExpectedWarning expected("never said");
  CHECK(true);
}

#include "qt/warning_guard.h"

#include <QList>
#include <QMutex>
#include <QtGlobal>
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <utility>

namespace shimwright::test {
namespace {

struct Expectation {
  QString part;
  int seen = 0;
};

struct Log {
  QMutex mutex;
  QList<Expectation> expected;
  int unexpected = 0;
};

// Qt calls a plain function, so what it writes to cannot be handed in.
Log& log() {
  static Log one;
  return one;
}

// What the offscreen platform itself says, whatever the program does.
bool is_of_the_platform(const QString& text) {
  static constexpr std::array known = {"This plugin does not support", "propagateSizeHints", "XDG_RUNTIME_DIR not set"};
  return std::any_of(known.begin(), known.end(), [&](const char* part) { return text.contains(QLatin1String(part)); });
}

bool is_expected(const QString& text) {
  for (Expectation& each : log().expected) {
    if (text.contains(each.part)) {
      ++each.seen;
      return true;
    }
  }
  return false;
}

void handle(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text) {
  if (type == QtDebugMsg || type == QtInfoMsg) {
    return;
  }
  const QMutexLocker lock(&log().mutex);
  if (is_of_the_platform(text) || is_expected(text)) {
    return;
  }
  ++log().unexpected;
  std::fprintf(stderr, "unexpected warning: %s\n", qUtf8Printable(text));
}

}  // namespace

void watch_warnings() {
  qInstallMessageHandler(handle);
}

int unexpected_warnings() {
  const QMutexLocker lock(&log().mutex);
  return log().unexpected;
}

ExpectedWarning::ExpectedWarning(QString part) : part_(std::move(part)) {
  const QMutexLocker lock(&log().mutex);
  log().expected.append({part_, 0});
}

ExpectedWarning::~ExpectedWarning() {
  int seen = 0;
  {
    const QMutexLocker lock(&log().mutex);
    seen = log().expected.takeLast().seen;
  }
  INFO("expected warning: " << part_.toStdString());
  CHECK(seen > 0);
}

}  // namespace shimwright::test

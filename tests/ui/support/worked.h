#pragma once

#include <algorithm>

#include <QTest>

#include <catch2/catch.hpp>

#include "shimwright/widgets/background_work.h"

namespace shimwright::test {

/// Whether nothing is done in threads of their own for what is in this window.
inline bool at_rest(const QWidget& window) {
  const auto works = window.findChildren<widgets::BackgroundWork*>();
  return std::none_of(works.begin(), works.end(), [](const auto* work) { return work->runs(); });
}

/// Until what was begun there has come to its end, with what was thrown away gone.
inline void wait_for_work(const QWidget& window) {
  REQUIRE(QTest::qWaitFor([&window] { return at_rest(window); }, 60000));
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

}  // namespace shimwright::test

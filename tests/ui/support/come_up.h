#pragma once

#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/shell/main_window.h"

namespace shimwright::test {

/// Until the window is there with the bench on it, which comes once the window itself is painted.
inline void come_up(shell::MainWindow& window) {
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  REQUIRE(QTest::qWaitFor([&window] { return window.page().has_value(); }));
}

}  // namespace shimwright::test

#include "shimwright/bench/surroundings.h"

#include <QTest>
#include <catch2/catch.hpp>

TEST_CASE("the toolkit's timer calls back") {
  bool called = false;
  shimwright::bench::real_surroundings().after(1, [&] { called = true; });
  CHECK(QTest::qWaitFor([&] { return called; }, 5000));
}

#include <catch2/catch.hpp>

#include "float_words.h"
#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("what a change of shim costs comes from the sheets") {
  test::UiBench ui;
  ui.go_to("lower-float");
  const QString words = bench::change_words(ui.workbench().state(), "en");
  CHECK(words.contains("Hub ring off; Hub out; Pack ring off"));
  CHECK(words.contains("Renewed again: Retaining ring, pack"));
  CHECK(words.contains("Pressings of this pack so far: 1; the spec sheet allows"));
}

#include "shimwright/shell/wait_page.h"

#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

TEST_CASE("what is being done with the store is said") {
  shell::WaitPage page;
  page.set_doing("The store is going back to the backup");
  CHECK(test::named<QLabel>(page, "doing")->text() == "The store is going back to the backup");
}

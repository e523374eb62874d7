#include "shimwright/shell/icon.h"

#include <catch2/catch.hpp>

TEST_CASE("the program has an icon") {
  const QIcon icon = shimwright::shell::program_icon();
  CHECK_FALSE(icon.isNull());
  CHECK_FALSE(icon.pixmap(48, 48).toImage().allGray());
}

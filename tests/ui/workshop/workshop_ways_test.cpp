#include "shimwright/workshop/workshop_ways.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a backup is named after its store") {
  CHECK(workshop::backup_file("/kept", "/data/workshop.shimwright") == "/kept/workshop-backup.shimwright");
  CHECK(workshop::backup_file("/kept/", "/data/store") == "/kept/store-backup");
}

TEST_CASE("the clock of this machine knows its offset") {
  CHECK(workshop::usual_workshop_ways().clock().offset_min == 5 * 60 + 45);
}

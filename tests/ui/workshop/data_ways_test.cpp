#include "shimwright/workshop/data_ways.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a backup has the name of its day by the clock of the place, made by hand or by itself") {
  const job::Moment monday{1795421400000, 60, false};
  CHECK(workshop::backup_file("/kept", "/data/workshop.shimwright", monday) == "/kept/workshop-day-1.shimwright");
  CHECK(workshop::backup_file("/kept/", "/data/store", monday) == "/kept/store-day-1.shimwright");
  const job::Moment late{1795421400000 + 16 * 3600000LL, 60, false};
  CHECK(workshop::backup_file("/kept", "/data/store", late) == "/kept/store-day-2.shimwright");
}

TEST_CASE("the usual ways leave folder and person to the window") {
  const workshop::DataWays ways = workshop::usual_data_ways();
  CHECK(ways.choose_backup);
  CHECK(ways.choose_job_file);
  CHECK(ways.choose_export_folder);
  CHECK_FALSE(ways.backup_folder);
  CHECK_FALSE(ways.by);
}

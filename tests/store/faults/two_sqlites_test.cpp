#include <string>

#include <QTemporaryDir>

#include "connection.h"
#include "workbench_results.h"

namespace {

// The linker asks here what the linked SQLite is (tests/store/faults/CMakeLists.txt).
bool is_another = false;

}  // namespace

extern "C" const char* __real_sqlite3_sourceid();
extern "C" const char* __wrap_sqlite3_sourceid();
extern "C" const char* __wrap_sqlite3_sourceid() {
  return is_another ? "1999-12-31 another one" : __real_sqlite3_sourceid();
}

namespace shimwright::store {

TEST_CASE("a program put together with two versions of SQLite opens no store") {
  const QTemporaryDir folder;
  is_another = true;
  const auto opened = Connection::open(folder.filePath("a.sqlite"), Access::make);
  is_another = false;
  REQUIRE_FALSE(opened);
  CHECK(opened.error().code == "sqlite_differs");
  CHECK(Connection::open(folder.filePath("a.sqlite"), Access::make));
}

}  // namespace shimwright::store

#include "database_error.h"

#include <sqlite3.h>
#include <catch2/catch.hpp>

namespace shimwright::store {

TEST_CASE("what SQLite says becomes a sentence with its code") {
  CHECK(database_error(SQLITE_FULL, "").code == "disk_full");
  CHECK(database_error(SQLITE_IOERR_FSYNC, "").code == "disk_fault");
  CHECK(database_error(SQLITE_BUSY_SNAPSHOT, "").code == "store_busy");
  CHECK(database_error(SQLITE_READONLY_DBMOVED, "").code == "look_only");
  CHECK(database_error(SQLITE_NOTADB, "").code == "not_a_store");
  CHECK(database_error(SQLITE_CORRUPT_VTAB, "").code == "store_damaged");
  CHECK(database_error(SQLITE_CANTOPEN, "").code == "cannot_open");
  CHECK(database_error(SQLITE_CONSTRAINT_TRIGGER, "an entry is kept for ever").in_english() ==
        "This does not fit what is stored already, so it was not saved: an entry is kept for ever.");
  CHECK(database_error(SQLITE_ERROR, "no such table").code == "store_fault");
  CHECK(database_error(SQLITE_ERROR, "no such table").in_english().find("no such table") != std::string::npos);
}

TEST_CASE("an error of the driver is understood by its number") {
  CHECK(database_error(QSqlError("driver", "text", QSqlError::StatementError, "13")).code == "disk_full");
  CHECK(database_error(QSqlError()).code == "store_fault");
}

}  // namespace shimwright::store

#include "database_error.h"

#include <array>

#include <sqlite3.h>

namespace shimwright::store {

namespace {

struct Meaning {
  int sqlite_code;
  const char* code;
  const char* sentence;
};

constexpr std::array<Meaning, 12> meanings = {{
    {SQLITE_FULL, "disk_full",
     SHIMWRIGHT_TEXT("store", "The disk is full, so this was not saved; free some space and try again.")},
    {SQLITE_IOERR, "disk_fault",
     SHIMWRIGHT_TEXT("store",
                     "The disk could not be read or written, so this was not saved; look after the disk and "
                     "make a backup.")},
    {SQLITE_BUSY, "store_busy",
     SHIMWRIGHT_TEXT("store", "Another program holds the store just now; try again in a moment.")},
    {SQLITE_LOCKED, "store_busy",
     SHIMWRIGHT_TEXT("store", "Another program holds the store just now; try again in a moment.")},
    {SQLITE_READONLY, "look_only",
     SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved.")},
    {SQLITE_PERM, "look_only", SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved.")},
    {SQLITE_NOTADB, "not_a_store", SHIMWRIGHT_TEXT("store", "This file is not a store of this program.")},
    {SQLITE_CORRUPT, "store_damaged",
     SHIMWRIGHT_TEXT("store", "The store is damaged; keep it as it is and go on with the latest backup.")},
    {SQLITE_CANTOPEN, "cannot_open",
     SHIMWRIGHT_TEXT("store",
                     "The store could not be opened; look whether its folder is there and may be written to.")},
    {SQLITE_AUTH, "cannot_open",
     SHIMWRIGHT_TEXT("store",
                     "The store could not be opened; look whether its folder is there and may be written to.")},
    {SQLITE_CONSTRAINT, "kept_for_ever",
     SHIMWRIGHT_TEXT("store", "This does not fit what is stored already, so it was not saved: {0}.")},
    {SQLITE_TOOBIG, "too_large", SHIMWRIGHT_TEXT("store", "This is too large to be stored.")},
}};

}  // namespace

Error database_error(int sqlite_code, const QString& says) {
  // The upper bits only say which kind of the same fault it was.
  const int kind = sqlite_code & 0xFF;
  for (const Meaning& meaning : meanings) {
    if (meaning.sqlite_code == kind) {
      return Error{meaning.code, "", Message{meaning.sentence, {says.toStdString()}}};
    }
  }
  return Error{
      "store_fault", "",
      Message{SHIMWRIGHT_TEXT("store", "The store refused this, and nothing was saved: {0}. Report this fault."),
              {says.toStdString()}}};
}

Error database_error(const QSqlError& error) {
  return database_error(error.nativeErrorCode().toInt(), error.databaseText());
}

}  // namespace shimwright::store

#include "bare_store.h"

#include "job_row.h"

namespace shimwright::store::bench {

namespace {

constexpr const char* settings =
    "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON; PRAGMA "
    "trusted_schema = OFF";

int bind(sqlite3_stmt* statement, int place, const Value& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value)) {
    return sqlite3_bind_int64(statement, place, *number);
  }
  if (const auto* text = std::get_if<std::string>(&value)) {
    return sqlite3_bind_text64(statement, place, text->data(), text->size(), SQLITE_STATIC, SQLITE_UTF8);
  }
  if (const auto* bytes = std::get_if<Bytes>(&value)) {
    return sqlite3_bind_blob64(statement, place, bytes->content.data(), bytes->content.size(), SQLITE_STATIC);
  }
  return sqlite3_bind_null(statement, place);
}

std::string insert_of(const std::string& table, std::size_t columns) {
  if (table == "job") {
    return put_job_row;
  }
  std::string places;
  for (std::size_t column = 0; column < columns; ++column) {
    places += column == 0 ? "?" : ", ?";
  }
  return "INSERT INTO " + table + " VALUES (" + places + ")";
}

}  // namespace

std::unique_ptr<BareStore> BareStore::open(const std::string& path) {
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  std::unique_ptr<BareStore> store(new BareStore());
  const bool opened = sqlite3_open(path.c_str(), &store->database_) == SQLITE_OK &&
                      sqlite3_exec(store->database_, settings, nullptr, nullptr, nullptr) == SQLITE_OK &&
                      sqlite3_db_config(store->database_, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr) == SQLITE_OK;
  return opened ? std::move(store) : nullptr;
}

BareStore::~BareStore() {
  for (const auto& [sql, statement] : statements_) {
    sqlite3_finalize(statement);
  }
  sqlite3_close(database_);
}

sqlite3_stmt* BareStore::prepared(const std::string& sql) {
  const auto found = statements_.find(sql);
  if (found != statements_.end()) {
    return found->second;
  }
  sqlite3_stmt* statement = nullptr;
  sqlite3_prepare_v3(database_, sql.c_str(), -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
  statements_.emplace(sql, statement);
  return statement;
}

bool BareStore::step(sqlite3_stmt* statement) {
  const bool done = sqlite3_step(statement) == SQLITE_DONE;
  return sqlite3_reset(statement) == SQLITE_OK && done;
}

bool BareStore::insert(const std::string& table, const Row& row) {
  sqlite3_stmt* statement = prepared(insert_of(table, row.size()));
  int place = 0;
  for (const Value& value : row) {
    if (bind(statement, ++place, value) != SQLITE_OK) {
      return false;
    }
  }
  return step(statement);
}

bool BareStore::write(const RowsByTable& rows) {
  if (!step(prepared("BEGIN IMMEDIATE"))) {
    return false;
  }
  for (const auto& [table, of_table] : rows) {
    for (const Row& row : of_table) {
      if (!insert(table, row)) {
        return false;
      }
    }
  }
  return step(prepared("COMMIT"));
}

}  // namespace shimwright::store::bench

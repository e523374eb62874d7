#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include <sqlite3.h>

#include "value.h"

namespace shimwright::store::bench {

/// The rows one command has brought, by table.
using RowsByTable = std::vector<std::pair<std::string, std::vector<Row>>>;

/// What a durable command costs at least: the same rows, written through SQLite's own interface with the same settings,
/// every statement prepared once. It knows nothing of jobs, chains or refusals.
class BareStore {
 public:
  /// Opens a copy of a store.
  [[nodiscard]] static std::unique_ptr<BareStore> open(const std::string& path);
  ~BareStore();
  BareStore(const BareStore&) = delete;
  BareStore& operator=(const BareStore&) = delete;

  /// One transaction. False where SQLite refuses.
  [[nodiscard]] bool write(const RowsByTable& rows);

 private:
  BareStore() = default;
  [[nodiscard]] sqlite3_stmt* prepared(const std::string& sql);
  [[nodiscard]] bool step(sqlite3_stmt* statement);
  [[nodiscard]] bool insert(const std::string& table, const Row& row);

  sqlite3* database_ = nullptr;
  std::map<std::string, sqlite3_stmt*> statements_;
};

}  // namespace shimwright::store::bench

#pragma once

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

#include <sqlite3.h>

#include "connection.h"
#include "workbench_results.h"

/// Holds statements to their indexes.
namespace shimwright::store::test {

inline int keep_traced(unsigned /*event*/, void* list, void* /*statement*/, void* text) {
  static_cast<std::vector<std::string>*>(list)->emplace_back(static_cast<const char*>(text));
  return 0;
}

/// What the database was asked meanwhile.
inline std::vector<std::string> statements_of(Connection& connection, const std::function<void()>& run) {
  std::vector<std::string> statements;
  sqlite3_trace_v2(connection.handle(), SQLITE_TRACE_STMT, keep_traced, &statements);
  run();
  sqlite3_trace_v2(connection.handle(), 0, nullptr, nullptr);
  return statements;
}

/// The steps of its plan that read a table or an index from end to end.
inline std::vector<std::string> scans_of(Connection& connection, const std::string& sql) {
  const Row values(static_cast<std::size_t>(std::count(sql.begin(), sql.end(), '?')), text_value("x"));
  std::vector<std::string> scans;
  for (const Row& step : got(connection.rows("EXPLAIN QUERY PLAN " + sql, values))) {
    if (text_in(step, 3).find("SCAN") != std::string::npos) {
      scans.push_back(text_in(step, 3));
    }
  }
  return scans;
}

}  // namespace shimwright::store::test

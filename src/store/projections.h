#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/entry.h"
#include "value.h"

/// What follows from an entry by itself, as rows of typed tables: written with it, and made anew to be compared.
namespace shimwright::store {

struct ProjectionTable {
  std::string_view name;
  std::vector<std::string_view> columns;  ///< job and seq first
  std::string_view order;                 ///< of the rows of one job
};

struct ProjectedRow {
  const ProjectionTable* table = nullptr;
  Row values;  ///< as many as the table has columns, in their order
};

/// Every projection there is.
[[nodiscard]] const std::vector<ProjectionTable>& projection_tables();

[[nodiscard]] std::vector<ProjectedRow> projected_rows(const std::string& job, const job::Entry& entry);

/// `INSERT INTO measurement (job, seq, …) VALUES (?, ?, …)`
[[nodiscard]] std::string insert_into(const ProjectionTable& table);
/// `SELECT job, seq, … FROM measurement WHERE job = ? ORDER BY …`
[[nodiscard]] std::string select_from(const ProjectionTable& table);

}  // namespace shimwright::store

#pragma once

#include <vector>

#include <QString>

#include "shimwright/sheet/spec_sheet.h"

/// The values of a spec sheet as rows to read, digits as the sheet has them.
namespace shimwright::workshop {

/// A value of each side.
struct SideRow {
  QString name;
  QString lower;
  QString upper;
  QString unit;
  QString from;
};
[[nodiscard]] std::vector<SideRow> side_rows(const sheet::SpecSheet& spec);

struct LimitRow {
  QString name;
  QString limits;  ///< `0.25 to 0.85`, `at most 12`
  QString unit;
  QString from;
};
[[nodiscard]] std::vector<LimitRow> limit_rows(const sheet::SpecSheet& spec);

/// Millimetres, two decimals at least and as many as there are: `0.25`, `1.952`.
[[nodiscard]] QString millimetres(quantity::Length length);

}  // namespace shimwright::workshop

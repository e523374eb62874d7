#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "shimwright/record/record.h"

namespace shimwright::record {

/// Names readings on paper so that a reader can tell what was read where.
class ReadingLabels {
 public:
  explicit ReadingLabels(const Record& record);

  /// Of readings of one step that stand in one row, one at least. Several channels: the step's title before them. One
  /// alone: its own name, the step before it where the name takes up no word of the step's title.
  [[nodiscard]] std::string of(const std::vector<const ReadingLine*>& together) const;

 private:
  [[nodiscard]] std::string place(const ReadingLine& line) const;

  std::map<std::string, std::set<std::string>> steps_by_title_;
};

}  // namespace shimwright::record

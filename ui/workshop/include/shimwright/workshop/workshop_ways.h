#pragma once

#include <functional>

#include <QString>

#include "shimwright/job/entry.h"
#include "shimwright/record/page.h"
#include "shimwright/workshop/data_ways.h"

namespace shimwright::workshop {

/// What the workshop's pages take from outside, so that a test can fix it.
struct WorkshopWays {
  /// Lets a person say into which folder a backup goes; blank: not now.
  std::function<QString()> choose_folder;
  std::function<job::Moment()> clock;
  /// Lets a person say where a file goes; blank: nowhere.
  std::function<QString(const QString& suggestion)> choose_file = {};
  record::PaperSize paper = record::PaperSize::a4;
  DataWays data = {};
};

/// The dialog of the toolkit and the clock of this machine.
[[nodiscard]] WorkshopWays usual_workshop_ways();

}  // namespace shimwright::workshop

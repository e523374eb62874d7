#pragma once

#include <functional>

#include <QString>

#include "shimwright/job/entry.h"
#include "shimwright/record/page.h"
#include "shimwright/store/signing.h"
#include "shimwright/store/types.h"
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
  /// Who enters something, and when.
  std::function<store::By()> by = {};
  /// Lets a person choose the file of a sheet to bring in; blank: none.
  std::function<QString()> choose_sheet = {};
  /// Lets a person say where the file of a sheet goes; blank: nowhere.
  std::function<QString(const QString& suggestion)> save_sheet = {};
  /// Lets a person choose a picture; blank: none.
  std::function<QString()> choose_picture = {};
  /// What PINs cost to try.
  store::SigningRules signing = {};
  DataWays data = {};
};

/// Who enters something now; nobody where that is not known.
[[nodiscard]] store::By by_now(const WorkshopWays& ways);

/// The dialog of the toolkit and the clock of this machine.
[[nodiscard]] WorkshopWays usual_workshop_ways();

}  // namespace shimwright::workshop

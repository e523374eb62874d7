#pragma once

#include <functional>

#include <QString>

#include "shimwright/job/entry.h"
#include "shimwright/store/types.h"

namespace shimwright::workshop {

/// What the page of the data takes from outside.
struct DataWays {
  /// Where backups go, and another place for them.
  std::function<QString()> backup_folder = {};
  std::function<void(const QString& folder)> use_backup_folder = {};
  /// Let a person choose; blank: not now.
  std::function<QString(const QString& folder)> choose_backup = {};
  std::function<QString()> choose_job_file = {};
  std::function<QString()> choose_export_folder = {};
  /// Where a table of measurements goes, beginning with that name.
  std::function<QString(const QString& suggestion)> choose_table = {};
  /// Who takes a job in, and when.
  std::function<store::By()> by = {};
};

/// The dialogs of the toolkit; folder and person are the window's to say.
[[nodiscard]] DataWays usual_data_ways();

/// The file in that folder that the backup of that day is kept in, made by hand or by itself: seven files, one for each
/// day of the week, so that yesterday's is still there when today's was made of something spoilt.
[[nodiscard]] QString backup_file(const QString& folder, const std::string& store_path, const job::Moment& now);

}  // namespace shimwright::workshop

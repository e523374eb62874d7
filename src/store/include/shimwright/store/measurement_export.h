#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "shimwright/store/backup.h"
#include "shimwright/store/figures.h"
#include "shimwright/store/store.h"

/// The measurements of several jobs in one file for other programs (docs/formats/measurements.md).
namespace shimwright::store {

class WholeFile;

enum class TableForm { csv, json };

struct TableReport {
  std::string file;
  std::int64_t jobs = 0;
};

/// Writes job after job; nothing lies under the name before all of it is on the disk.
class MeasurementExport {
 public:
  /// `out` is absolute. Only an older file of the same kind is written over. Codes: `path_not_absolute`,
  /// `file_in_the_way`, `disk_full`, `disk_fault`.
  [[nodiscard]] static Result<MeasurementExport> begin(Store& store, std::vector<std::string> jobs,
                                                       const std::string& out, TableForm form);
  MeasurementExport(MeasurementExport&& other) noexcept;
  MeasurementExport& operator=(MeasurementExport&&) = delete;
  MeasurementExport(const MeasurementExport&) = delete;
  MeasurementExport& operator=(const MeasurementExport&) = delete;
  ~MeasurementExport();

  [[nodiscard]] std::int64_t jobs() const { return static_cast<std::int64_t>(jobs_.size()); }
  [[nodiscard]] bool all_written() const { return written_ == jobs_.size(); }
  /// The next job, as it stands in the store. Codes: as Store::load(); `disk_full`, `disk_fault`.
  [[nodiscard]] Result<void> write_next();
  /// After the last: gives the file its name.
  [[nodiscard]] Result<TableReport> finish();

 private:
  MeasurementExport(Store& store, std::vector<std::string> jobs, std::string out, TableForm form, WholeFile file);

  Store* store_;
  std::vector<std::string> jobs_;
  std::string out_;
  TableForm form_;
  std::unique_ptr<WholeFile> file_;
  std::size_t written_ = 0;
};

/// All of it in one go, over a store opened for it. Codes: those of MeasurementExport and Store::open(), `stopped`.
[[nodiscard]] Result<TableReport> export_period(const std::string& store_path, const Period& period,
                                                const std::string& out, TableForm form, const BackupWatch& watch = {});
[[nodiscard]] Result<TableReport> export_jobs(Store& store, std::vector<std::string> jobs, const std::string& out,
                                              TableForm form, const BackupWatch& watch = {});

}  // namespace shimwright::store

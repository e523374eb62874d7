#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include <QByteArray>
#include <QDir>
#include <QTemporaryDir>

#include "shimwright/bench/workbench.h"
#include "shimwright/store/store.h"

/// What tests of screens stand on: a workshop in a folder of its own with the shipped sheets and the people,
/// instruments and trays of a demonstration script, and a clock that stands until it is moved.
namespace shimwright::test {

class UiBench {
 public:
  /// `script`: a file of data/demo whose workshop it takes, `02-bearing-not-home`.
  /// `place`: a folder that outlives it, and may hold such a workshop already; blank: one that goes with it.
  explicit UiBench(const std::string& script = "02-bearing-not-home", const QString& place = {});

  [[nodiscard]] bench::Workbench& workbench() { return *workbench_; }
  [[nodiscard]] store::Store& store() { return *store_; }
  [[nodiscard]] std::string sheet_hash() const { return sheet_hash_; }
  [[nodiscard]] std::string spec_hash() const { return spec_hash_; }
  [[nodiscard]] QString file(const QString& name) const { return QDir(place_).filePath(name); }
  void move_clock(std::int64_t minutes) { *now_ms_ += minutes * 60000; }

  /// Opens a job as the script does and goes through its commands up to, not with, the first for step `until`; all of
  /// them for a blank one; `further` ones of those that follow too. The job is in hand then. Gives its id.
  std::string go_to(const std::string& until, std::size_t further = 0);
  /// Goes through the whole of another script over the same workshop, with these texts of its file replaced: an earlier
  /// job on a vehicle, for one. Gives the job's id.
  std::string go_through(const std::string& script, const std::vector<std::pair<QByteArray, QByteArray>>& changes);
  /// Where the demonstration scripts and their photos lie.
  [[nodiscard]] static std::string demo_folder();

 private:
  QTemporaryDir folder_;
  QString place_;
  std::unique_ptr<store::Store> store_;
  std::shared_ptr<std::int64_t> now_ms_;
  std::unique_ptr<bench::Workbench> workbench_;
  std::string script_;
  std::string sheet_hash_;
  std::string spec_hash_;
};

}  // namespace shimwright::test

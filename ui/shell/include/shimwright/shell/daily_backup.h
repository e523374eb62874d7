#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <string>
#include <thread>

#include <QObject>
#include <QString>

#include "shimwright/bench/workbench.h"
#include "shimwright/shell/settings.h"
#include "shimwright/store/backup.h"

namespace shimwright::shell {

/// Backs a store up in the background, to workshop::backup_file() of the day, where the last checked backup is older
/// than a day, and again as long as the window is open. A failure is told and stops nothing.
class DailyBackup : public QObject {
  Q_OBJECT

 public:
  DailyBackup(std::string store_path, bench::Workbench::Clock clock, Settings& settings, QObject* parent = nullptr);
  ~DailyBackup() override;
  DailyBackup(const DailyBackup&) = delete;
  DailyBackup& operator=(const DailyBackup&) = delete;

  [[nodiscard]] bool due() const;
  [[nodiscard]] bool running() const { return running_; }
  void start_if_due();
  /// Whether it is due or not; nothing where one runs already.
  void start();

 signals:
  void began();
  void done(qint64 at_ms);
  void failed(const shimwright::Error& error);

 private:
  void finish(const Result<store::BackupReport>& result, const QString& file, std::int64_t at_ms);

  std::string store_path_;
  bench::Workbench::Clock clock_;
  Settings* settings_;
  std::atomic<bool> stop_ = false;
  bool running_ = false;
  std::int64_t failed_at_ms_ = 0;
  std::thread worker_;
};

}  // namespace shimwright::shell

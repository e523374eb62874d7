#pragma once

#include <atomic>
#include <string>
#include <thread>

#include <QObject>

#include "shimwright/store/backup.h"

namespace shimwright::workshop {

/// A backup in a thread of its own. What it says arrives in the window's thread.
class BackupWork : public QObject {
  Q_OBJECT

 public:
  explicit BackupWork(QObject* parent = nullptr) : QObject(parent) {}
  /// Stops what is under way and waits for it.
  ~BackupWork() override;

  [[nodiscard]] bool runs() const { return thread_.joinable(); }
  /// One at a time: there must be none.
  void begin(std::string store_path, std::string out);
  /// It ends at the next photo or step; failed() follows with `stopped`, or made() where it was ready.
  void stop() { stop_ = true; }

 signals:
  void came_to(qint64 step, qint64 of_all);
  void made(const shimwright::store::BackupReport& report);
  void failed(const shimwright::Error& error);

 private:
  void end(const Result<store::BackupReport>& result);

  std::atomic<bool> stop_ = false;
  std::thread thread_;
};

}  // namespace shimwright::workshop

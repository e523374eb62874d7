#pragma once

#include <atomic>
#include <functional>
#include <thread>

#include <QObject>

#include "shimwright/store/backup.h"

namespace shimwright::workshop {

/// Work in a thread of its own, one at a time. What it says arrives in the window's thread.
class BackgroundWork : public QObject {
  Q_OBJECT

 public:
  /// What is to be done in the window's thread with what came of it.
  using Outcome = std::function<void()>;
  /// Runs in the thread; looks at the watch now and then.
  using Work = std::function<Outcome(const store::BackupWatch& watch)>;

  explicit BackgroundWork(QObject* parent = nullptr) : QObject(parent) {}
  /// Stops what is under way and waits for it; its outcome is dropped.
  ~BackgroundWork() override;

  [[nodiscard]] bool runs() const { return thread_.joinable(); }
  /// There must be none under way.
  void begin(Work work);
  /// It ends at the next step; its outcome says whether it was stopped.
  void stop() { stop_ = true; }

 signals:
  void came_to(qint64 step, qint64 of_all);

 private:
  void end(const Outcome& outcome);

  std::atomic<bool> stop_ = false;
  std::thread thread_;
};

}  // namespace shimwright::workshop

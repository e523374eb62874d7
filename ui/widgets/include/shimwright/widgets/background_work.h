#pragma once

#include <atomic>
#include <functional>
#include <thread>

#include <QObject>

#include "shimwright/store/backup.h"

namespace shimwright::widgets {

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
  /// Begins it as soon as what is under way has ended, whose outcome is dropped.
  void begin_instead(Work work);
  /// It ends at the next step; its outcome says whether it was stopped.
  void stop() { stop_ = true; }
  /// Nobody waits for it any more: it is stopped, and its outcome dropped.
  void drop();
  /// The same, and waits for its thread. Nothing can be begun afterwards: for whoever has what the work looks at.
  void end_now();

 signals:
  void came_to(qint64 step, qint64 of_all);

 private:
  void end(const Outcome& outcome);

  std::atomic<bool> stop_ = false;
  bool dropped_ = false;
  Work next_;
  std::thread thread_;
};

}  // namespace shimwright::widgets

#include "shimwright/widgets/background_work.h"

#include <QMetaObject>
#include <utility>

namespace shimwright::widgets {

BackgroundWork::~BackgroundWork() {
  end_now();
}

void BackgroundWork::begin(Work work) {
  stop_ = false;
  dropped_ = false;
  // The thread ends before this does, so that it may speak of it.
  thread_ = std::thread([this, work = std::move(work)] {
    const store::BackupWatch watch{&stop_, [this](std::int64_t step, std::int64_t of_all) {
                                     QMetaObject::invokeMethod(
                                         this,
                                         [this, step, of_all] {
                                           if (!dropped_) {
                                             emit came_to(step, of_all);
                                           }
                                         },
                                         Qt::QueuedConnection);
                                   }};
    const Outcome outcome = work(watch);
    QMetaObject::invokeMethod(
        this, [this, outcome] { end(outcome); }, Qt::QueuedConnection);
  });
}

void BackgroundWork::begin_instead(Work work) {
  if (!runs()) {
    begin(std::move(work));
    return;
  }
  drop();
  next_ = std::move(work);
}

void BackgroundWork::drop() {
  stop_ = true;
  dropped_ = true;
  next_ = nullptr;
}

void BackgroundWork::end_now() {
  drop();
  if (thread_.joinable()) {
    thread_.join();
  }
}

void BackgroundWork::end(const Outcome& outcome) {
  if (!thread_.joinable()) {
    return;
  }
  thread_.join();
  if (next_) {
    begin(std::exchange(next_, nullptr));
  } else if (!dropped_) {
    outcome();
  }
}

}  // namespace shimwright::widgets

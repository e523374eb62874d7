#include "shimwright/workshop/background_work.h"

#include <QMetaObject>
#include <utility>

namespace shimwright::workshop {

BackgroundWork::~BackgroundWork() {
  stop_ = true;
  if (thread_.joinable()) {
    thread_.join();
  }
}

void BackgroundWork::begin(Work work) {
  stop_ = false;
  // The thread ends before this does, so that it may speak of it.
  thread_ = std::thread([this, work = std::move(work)] {
    const store::BackupWatch watch{&stop_, [this](std::int64_t step, std::int64_t of_all) {
                                     QMetaObject::invokeMethod(
                                         this, [this, step, of_all] { emit came_to(step, of_all); },
                                         Qt::QueuedConnection);
                                   }};
    const Outcome outcome = work(watch);
    QMetaObject::invokeMethod(
        this, [this, outcome] { end(outcome); }, Qt::QueuedConnection);
  });
}

void BackgroundWork::end(const Outcome& outcome) {
  thread_.join();
  outcome();
}

}  // namespace shimwright::workshop

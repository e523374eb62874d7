#include "backup_work.h"

#include <QMetaObject>
#include <utility>

namespace shimwright::workshop {

BackupWork::~BackupWork() {
  stop_ = true;
  if (thread_.joinable()) {
    thread_.join();
  }
}

void BackupWork::begin(std::string store_path, std::string out) {
  stop_ = false;
  // The thread ends before this does, so that it may speak of it.
  thread_ = std::thread([this, from = std::move(store_path), to = std::move(out)] {
    const store::BackupWatch watch{&stop_, [this](std::int64_t step, std::int64_t of_all) {
                                     QMetaObject::invokeMethod(
                                         this, [this, step, of_all] { emit came_to(step, of_all); },
                                         Qt::QueuedConnection);
                                   }};
    const auto result = store::back_up(from, to, watch);
    QMetaObject::invokeMethod(
        this, [this, result] { end(result); }, Qt::QueuedConnection);
  });
}

void BackupWork::end(const Result<store::BackupReport>& result) {
  thread_.join();
  if (result) {
    emit made(*result);
  } else {
    emit failed(result.error());
  }
}

}  // namespace shimwright::workshop

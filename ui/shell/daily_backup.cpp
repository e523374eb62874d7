#include "shimwright/shell/daily_backup.h"

#include <QFileInfo>
#include <QTimer>
#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/workshop/data_ways.h"

namespace shimwright::shell {

namespace {

constexpr std::int64_t hour_ms = 60LL * 60 * 1000;
constexpr std::int64_t day_ms = 24 * hour_ms;

}  // namespace

DailyBackup::DailyBackup(std::string store_path, bench::Workbench::Clock clock, Settings& settings, QObject* parent)
    : QObject(parent), store_path_(std::move(store_path)), clock_(std::move(clock)), settings_(&settings) {
  auto* timer = widgets::child_of<QTimer>(this);
  timer->setInterval(static_cast<int>(hour_ms));
  connect(timer, &QTimer::timeout, this, &DailyBackup::start_if_due);
  timer->start();
}

DailyBackup::~DailyBackup() {
  stop_ = true;
  if (worker_.joinable()) {
    worker_.join();
  }
}

bool DailyBackup::due() const {
  const std::int64_t now = clock_().at_ms;
  // Where it failed, the next try waits an hour: a full disk does not get better by trying.
  if (failed_at_ms_ != 0 && now >= failed_at_ms_ && now - failed_at_ms_ < hour_ms) {
    return false;
  }
  const auto last = settings_->last_backup();
  return !last || last->at_ms > now || now - last->at_ms >= day_ms || !QFileInfo::exists(last->file);
}

void DailyBackup::start_if_due() {
  if (due()) {
    start();
  }
}

void DailyBackup::start() {
  if (running_) {
    return;
  }
  if (worker_.joinable()) {
    worker_.join();
  }
  const job::Moment now = clock_();
  const QString file = workshop::backup_file(settings_->backup_folder(), store_path_, now);
  running_ = true;
  emit began();
  worker_ = std::thread([this, file, at_ms = now.at_ms, store_path = store_path_] {
    const auto result = store::back_up(store_path, widgets::plain(file), {&stop_, {}});
    // The destructor waits for this thread, so the object is there; the call itself is dropped with it.
    QMetaObject::invokeMethod(
        this, [this, result, file, at_ms] { finish(result, file, at_ms); }, Qt::QueuedConnection);
  });
}

void DailyBackup::finish(const Result<store::BackupReport>& result, const QString& file, std::int64_t at_ms) {
  running_ = false;
  if (!result) {
    failed_at_ms_ = at_ms;
    if (result.error().code != "stopped") {
      emit failed(result.error());
    }
    return;
  }
  failed_at_ms_ = 0;
  settings_->set_last_backup({at_ms, file});
  emit done(at_ms);
}

}  // namespace shimwright::shell

#include "lock.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QSysInfo>

namespace shimwright::store {

namespace {

QString lock_path_of(const QString& store_path) {
  return store_path + QStringLiteral(".lock");
}

/// Beside the lock, since the lock itself only knows a process.
QString note_path_of(const QString& store_path) {
  return store_path + QStringLiteral(".writer.json");
}

bool write_note(const QString& path, const LockHolder& holder) {
  const QJsonObject note{{QStringLiteral("person"), QString::fromStdString(holder.person)},
                         {QStringLiteral("host"), QString::fromStdString(holder.host)},
                         {QStringLiteral("since_ms"), static_cast<qint64>(holder.since_ms)},
                         {QStringLiteral("process"), static_cast<qint64>(holder.process)}};
  QSaveFile file(path);
  return file.open(QIODevice::WriteOnly) && file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) &&
         file.write(QJsonDocument(note).toJson(QJsonDocument::Compact)) > 0 && file.commit();
}

std::optional<LockHolder> read_note(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return std::nullopt;
  }
  const QJsonObject note = QJsonDocument::fromJson(file.readAll()).object();
  LockHolder holder;
  holder.person = note[QStringLiteral("person")].toString().toStdString();
  holder.host = note[QStringLiteral("host")].toString().toStdString();
  holder.since_ms = note[QStringLiteral("since_ms")].toInteger();
  holder.process = note[QStringLiteral("process")].toInteger();
  return holder;
}

tl::unexpected<Error> locked(const QString& store_path) {
  const auto holder = holder_of(store_path);
  if (!holder || holder->person.empty()) {
    return refuse("locked", "",
                  SHIMWRIGHT_TEXT("store",
                                  "Another program writes in this store; close it there first, or open the "
                                  "store for looking."));
  }
  const QString since = QDateTime::fromMSecsSinceEpoch(holder->since_ms, Qt::UTC).toString(Qt::ISODate);
  return refuse("locked", "",
                SHIMWRIGHT_TEXT("store",
                                "{0} writes in this store on {1} since {2}; close it there first, or open the "
                                "store for looking."),
                {holder->person, holder->host, since.toStdString()});
}

tl::unexpected<Error> cannot_lock() {
  return refuse("cannot_open", "",
                SHIMWRIGHT_TEXT("store",
                                "The store could not be taken for writing; look whether its folder is there "
                                "and may be written to."));
}

}  // namespace

WriterLock::WriterLock(const QString& lock_path, QString note_path)
    : lock_(lock_path), note_path_(std::move(note_path)) {
  // However long somebody writes, it is theirs.
  lock_.setStaleLockTime(0);
}

WriterLock::~WriterLock() {
  if (lock_.isLocked()) {
    QFile::remove(note_path_);
  }
}

Result<std::unique_ptr<WriterLock>> WriterLock::take(const QString& store_path, const std::string& person,
                                                     std::int64_t now_ms) {
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  std::unique_ptr<WriterLock> lock(new WriterLock(lock_path_of(store_path), note_path_of(store_path)));
  if (!lock->lock_.tryLock(0)) {
    if (lock->lock_.error() == QLockFile::LockFailedError) {
      return locked(store_path);
    }
    return cannot_lock();
  }
  const LockHolder holder{person, QSysInfo::machineHostName().toStdString(), now_ms,
                          QCoreApplication::applicationPid()};
  if (!write_note(lock->note_path_, holder)) {
    return cannot_lock();
  }
  return lock;
}

std::optional<LockHolder> holder_of(const QString& store_path) {
  QLockFile lock(lock_path_of(store_path));
  qint64 process = 0;
  QString host;
  QString program;
  if (!lock.getLockInfo(&process, &host, &program)) {
    return std::nullopt;
  }
  auto holder = read_note(note_path_of(store_path));
  if (!holder || holder->process != process || holder->host != host.toStdString()) {
    // The note is of an earlier writer: its name would be a wrong one.
    return LockHolder{"", host.toStdString(), 0, process};
  }
  return holder;
}

Result<void> break_lock_of(const QString& store_path, const LockHolder& shown) {
  const auto holder = holder_of(store_path);
  if (!holder || *holder != shown) {
    return refuse("lock_changed", "",
                  SHIMWRIGHT_TEXT("store", "Somebody else writes in this store by now; look again who it is."));
  }
  if (!QFile::remove(lock_path_of(store_path))) {
    return cannot_lock();
  }
  QFile::remove(note_path_of(store_path));
  return {};
}

}  // namespace shimwright::store

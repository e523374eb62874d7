#include "replace_store.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include <QFile>
#include <QFileInfo>

#include "copy.h"
#include "disk.h"
#include "load.h"
#include "photos.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> differs(const std::string& job) {
  return refuse("restore_differs", job,
                SHIMWRIGHT_TEXT("store",
                                "The copy of the backup does not hold the same entries as the backup, so it is not "
                                "used; look after the disk."));
}

Result<std::vector<Row>> job_ids(Connection& connection) {
  return connection.rows("SELECT DISTINCT job FROM entry ORDER BY job");
}

/// Every entry of both, each proved by its own hash; gives how many.
Result<std::int64_t> equal_entries(Connection& source, Connection& copy) {
  auto jobs = job_ids(source);
  auto jobs_of_copy = job_ids(copy);
  if (!jobs || !jobs_of_copy) {
    return jobs ? passed_on(jobs_of_copy) : passed_on(jobs);
  }
  if (*jobs != *jobs_of_copy) {
    return differs({});
  }
  std::int64_t count = 0;
  for (const Row& row : *jobs) {
    const std::string job = text_in(row, 0);
    auto given = stored_entries(source, job);
    auto laid = stored_entries(copy, job);
    if (!given || !laid) {
      return given ? passed_on(laid) : passed_on(given);
    }
    if (*given != *laid || !record::check_chain(job, *laid)) {
      return differs(job);
    }
    count += static_cast<std::int64_t>(laid->size());
  }
  return count;
}

Result<std::int64_t> equal_entries(Connection& source, const QString& path) {
  auto copy = Connection::open(path, Access::look);
  return copy ? equal_entries(source, **copy) : passed_on(copy);
}

/// What SQLite lays beside a store and takes for a part of it.
constexpr std::array logs{"-wal", "-journal"};

QString name_to_keep_by(const QString& start) {
  for (int number = 1;; ++number) {
    QString name = start + QString::number(number);
    const bool taken = QFileInfo::exists(name) || std::any_of(logs.begin(), logs.end(), [&name](const char* log) {
                         return QFileInfo::exists(name + QLatin1String(log));
                       });
    if (!taken) {
      return name;
    }
  }
}

Result<void> copy_file(const QString& from, const QString& to) {
  constexpr qint64 piece = qint64{1} << 20;
  QFile source(from);
  if (!source.open(QIODevice::ReadOnly)) {
    return refuse("cannot_open", from.toStdString(),
                  SHIMWRIGHT_TEXT("store", "This cannot be read; look whether it is a file and may be read by you."));
  }
  auto copy = WholeFile::begin(to);
  if (!copy) {
    return passed_on(copy);
  }
  for (QByteArray bytes = source.read(piece); !bytes.isEmpty(); bytes = source.read(piece)) {
    if (auto written = copy->write(bytes); !written) {
      return written;
    }
  }
  if (source.error() != QFileDevice::NoError) {
    return refuse("disk_fault", from.toStdString(),
                  SHIMWRIGHT_TEXT("store",
                                  "What is there could not be kept beside its place, so nothing was changed; look "
                                  "after the disk."));
  }
  auto part = copy->unnamed();
  return part ? copy->name() : passed_on(part);
}

/// The file and its logs, byte for byte; the file last.
Result<void> keep(const QString& path, const QString& kept) {
  for (const char* ending : {"-wal", "-journal", ""}) {
    if (const QString from = path + QLatin1String(ending); QFileInfo::exists(from)) {
      if (auto copied = copy_file(from, kept + QLatin1String(ending)); !copied) {
        for (const char* log : logs) {
          QFile::remove(kept + QLatin1String(log));
        }
        return copied;
      }
    }
  }
  return {};
}

/// A log of what was there would be taken for one of the copy. It is out of the way before the copy comes, and comes
/// back where that fails.
class LogsAside {
 public:
  explicit LogsAside(QString store_path) : store_path_(std::move(store_path)) {}
  ~LogsAside() {
    for (const QString& log : aside_) {
      static_cast<void>(rename_over(name_aside(log), log));
    }
  }
  LogsAside(const LogsAside&) = delete;
  LogsAside& operator=(const LogsAside&) = delete;

  [[nodiscard]] Result<void> put() {
    for (const char* ending : logs) {
      const QString log = store_path_ + QLatin1String(ending);
      if (!QFileInfo::exists(log)) {
        continue;
      }
      if (auto renamed = rename_over(log, name_aside(log)); !renamed) {
        return renamed;
      }
      aside_.push_back(log);
    }
    QFile::remove(store_path_ + QStringLiteral("-shm"));  // made anew from the log
    return {};
  }
  /// They lie beside what is kept as well.
  void throw_away() {
    for (const QString& log : std::exchange(aside_, {})) {
      QFile::remove(name_aside(log));
    }
  }

 private:
  [[nodiscard]] static QString name_aside(const QString& log) { return log + QStringLiteral(".aside"); }
  QString store_path_;
  std::vector<QString> aside_;
};

Result<void> touch(const QString& path, const std::function<Result<void>(Connection&)>& last_touch) {
  if (!last_touch) {
    return {};
  }
  {
    auto copy = Connection::open(path, Access::write);
    if (!copy) {
      return passed_on(copy);
    }
    if (auto touched = last_touch(**copy); !touched) {
      return touched;
    }
  }
  return sync_file(path);
}

/// A copy that did not come to its place is taken away again.
class Laid {
 public:
  explicit Laid(QString path) : path_(std::move(path)) {}
  ~Laid() {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
      QFile::remove(path_ + QLatin1String(ending));
    }
  }
  Laid(const Laid&) = delete;
  Laid& operator=(const Laid&) = delete;
  [[nodiscard]] const QString& path() const { return path_; }

 private:
  QString path_;
};

}  // namespace

Result<Replacement> replace_store(Connection& source, const QString& store_path, const QString& ending,
                                  const std::function<Result<void>(Connection& copy)>& last_touch) {
  const Laid laid(store_path + QStringLiteral(".restored"));
  if (auto copied = lay_copy(source, laid.path()); !copied) {
    return passed_on(copied);
  }
  if (auto touched = touch(laid.path(), last_touch); !touched) {
    return passed_on(touched);
  }
  if (auto equal = equal_entries(source, laid.path()); !equal) {
    return passed_on(equal);
  }
  Replacement replacement;
  if (QFileInfo::exists(store_path)) {
    replacement.kept = name_to_keep_by(store_path + ending);
    if (auto kept = keep(store_path, replacement.kept); !kept) {
      return passed_on(kept);
    }
  }
  LogsAside aside(store_path);
  if (auto put = aside.put(); !put) {
    return passed_on(put);
  }
  auto renamed = rename_over(laid.path(), store_path);
  // It may lie there already, and only its name not be on the disk.
  if (renamed || !QFileInfo::exists(laid.path())) {
    aside.throw_away();
  }
  if (!renamed) {
    return passed_on(renamed);
  }
  auto equal = equal_entries(source, store_path);
  if (!equal) {
    return passed_on(equal);
  }
  replacement.entries = *equal;
  return replacement;
}

}  // namespace shimwright::store

#include "lock.h"

#include <array>
#include <cerrno>

#include <QByteArray>
#include <QCoreApplication>
#include <QFile>
#include <QList>
#include <QSysInfo>

#include <fcntl.h>
#include <unistd.h>

#include "disk.h"
#include "plain_time.h"

namespace shimwright::store {

namespace {

QString lock_path_of(const QString& store_path) {
  return store_path + QStringLiteral(".lock");
}

/// A file that is closed at the end unless it is taken out. Closing gives up what was locked on it.
class OpenFile {
 public:
  OpenFile(const QString& path, int flags)
      : file_(::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC, S_IRUSR | S_IWUSR)) {}
  ~OpenFile() {
    if (file_ >= 0) {
      ::close(file_);
    }
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  [[nodiscard]] bool is_open() const { return file_ >= 0; }
  [[nodiscard]] int get() const { return file_; }
  [[nodiscard]] int taken_out() { return std::exchange(file_, -1); }

 private:
  int file_;
};

// Of the open file and not of the process: two windows of one program keep each other out as well.
struct flock whole_file() {
  struct flock range = {};
  range.l_type = F_WRLCK;
  range.l_whence = SEEK_SET;
  return range;
}

bool lock_file(int file) {
  struct flock range = whole_file();
  return ::fcntl(file, F_OFD_SETLK, &range) == 0;
}

bool is_locked_elsewhere(int file) {
  struct flock range = whole_file();
  return ::fcntl(file, F_OFD_GETLK, &range) == 0 && range.l_type != F_UNLCK;
}

std::string this_host() {
  return QSysInfo::machineHostName().toStdString();
}

/// Process, program, host, since when, person: a line each. A name has no line of its own to break out of.
QByteArray text_of(const LockHolder& holder) {
  const QByteArray person = QByteArray::fromStdString(holder.person).simplified();
  return QByteArray::number(qlonglong{holder.process}) + "\nshimwright\n" + QByteArray::fromStdString(holder.host) +
         '\n' + QByteArray::number(qlonglong{holder.since_ms}) + '\n' + person + '\n';
}

std::optional<LockHolder> read_holder(int file) {
  std::array<char, 4096> bytes{};
  const ssize_t count = ::pread(file, bytes.data(), bytes.size(), 0);
  const QList<QByteArray> lines = QByteArray(bytes.data(), qMax<qsizetype>(count, 0)).split('\n');
  constexpr qsizetype up_to_host = 3;
  constexpr qsizetype up_to_person = 5;
  if (lines.size() <= up_to_host) {
    return std::nullopt;
  }
  LockHolder holder{"", lines[2].toStdString(), 0, lines[0].toLongLong()};
  if (lines.size() > up_to_person) {
    holder.since_ms = lines[3].toLongLong();
    holder.person = lines[4].toStdString();
  }
  return holder;
}

bool write_holder(int file, const LockHolder& holder) {
  const QByteArray text = text_of(holder);
  return ::ftruncate(file, 0) == 0 && ::pwrite(file, text.constData(), size_t(text.size()), 0) == text.size();
}

tl::unexpected<Error> locked(const QString& store_path) {
  const auto holder = holder_of(store_path);
  if (!holder || holder->person.empty()) {
    return refuse("locked", "",
                  SHIMWRIGHT_TEXT("store",
                                  "Another program writes in this store; close it there first, or open the "
                                  "store for looking."));
  }
  return refuse(
      "locked", "",
      SHIMWRIGHT_TEXT("store",
                      "{0} has had this store open on the computer {1} since {2}; close it there first, or open the "
                      "store for looking."),
      {holder->person, holder->host, plain_time(holder->since_ms)});
}

tl::unexpected<Error> cannot_lock() {
  return refuse("cannot_open", "",
                SHIMWRIGHT_TEXT("store",
                                "The store could not be taken for writing; look whether its folder is there "
                                "and may be written to."));
}

}  // namespace

WriterLock::~WriterLock() {
  // Through the open file: if the lock was broken, the file of that name is the next writer's.
  static_cast<void>(::ftruncate(file_, 0));
  ::close(file_);
}

Result<std::unique_ptr<WriterLock>> WriterLock::take(const QString& store_path, const std::string& person,
                                                     std::int64_t now_ms) {
  OpenFile file(lock_path_of(store_path), O_RDWR | O_CREAT);
  if (!file.is_open()) {
    return is_out_of_space(errno) ? disk_is_full() : cannot_lock();
  }
  if (!lock_file(file.get())) {
    return errno == EAGAIN || errno == EACCES ? locked(store_path) : cannot_lock();
  }
  const auto before = read_holder(file.get());
  if (before && before->host != this_host()) {
    return locked(store_path);
  }
  if (!write_holder(file.get(), {person, this_host(), now_ms, QCoreApplication::applicationPid()})) {
    return is_out_of_space(errno) ? disk_is_full() : cannot_lock();
  }
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  return std::unique_ptr<WriterLock>(new WriterLock(file.taken_out()));
}

std::optional<LockHolder> holder_of(const QString& store_path) {
  const OpenFile file(lock_path_of(store_path), O_RDONLY);
  if (!file.is_open()) {
    return std::nullopt;
  }
  auto holder = read_holder(file.get());
  // What a program of this machine left behind when it was killed holds nothing.
  if (holder && holder->host == this_host() && !is_locked_elsewhere(file.get())) {
    return std::nullopt;
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
  return {};
}

}  // namespace shimwright::store

#include "disk.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <string_view>

#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace shimwright::store {

namespace {

constexpr const char* unfinished = ".part";

QByteArray name_of(const QString& path) {
  return QFile::encodeName(path);
}

tl::unexpected<Error> cannot_make(const QString& path) {
  if (is_out_of_space(errno)) {
    return disk_is_full();
  }
  return refuse(
      "cannot_open", path.toStdString(),
      SHIMWRIGHT_TEXT("store", "This could not be made; look whether the folder is there and may be written to."));
}

tl::unexpected<Error> not_on_disk(const QString& path) {
  if (is_out_of_space(errno)) {
    return disk_is_full();
  }
  return refuse("disk_fault", path.toStdString(),
                SHIMWRIGHT_TEXT("store", "This could not be brought to the disk; look after the disk and try again."));
}

Result<void> sync_path(const QString& path, int flags) {
  const int file = ::open(name_of(path).constData(), flags | O_CLOEXEC);
  const bool synced = file >= 0 && ::fsync(file) == 0;
  const int fault = errno;
  if (file >= 0) {
    ::close(file);
  }
  errno = fault;
  return synced ? Result<void>() : not_on_disk(path);
}

bool write_all(int file, const QByteArray& content) {
  for (qsizetype done = 0; done < content.size();) {
    const ssize_t count = ::write(file, content.constData() + done, size_t(content.size() - done));
    if (count < 0 && errno != EINTR) {
      return false;
    }
    done += qMax<qsizetype>(count, 0);
  }
  return true;
}

/// Gives 0 or the fault's number: closing and taking away would write over it.
int write_and_sync(const QByteArray& name, const QByteArray& content) {
  const int file = ::open(name.constData(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, S_IRUSR | S_IWUSR);
  if (file < 0) {
    return errno;
  }
  const int fault = write_all(file, content) && ::fsync(file) == 0 ? 0 : errno;
  ::close(file);
  return fault;
}

Result<void> make_one_folder(const QString& path) {
  // Another program may have made it in between.
  if (::mkdir(name_of(path).constData(), S_IRWXU) != 0 && errno != EEXIST) {
    return cannot_make(path);
  }
  return sync_folder(QFileInfo(path).absolutePath());
}

}  // namespace

bool is_out_of_space(int error_number) {
  return error_number == ENOSPC || error_number == EDQUOT;
}

tl::unexpected<Error> disk_is_full() {
  return refuse("disk_full", "",
                SHIMWRIGHT_TEXT("store", "The disk is full, so this was not saved; free some space and try again."));
}

Result<void> sync_file(const QString& path) {
  return sync_path(path, O_RDONLY);
}

Result<void> sync_folder(const QString& path) {
  return sync_path(path, O_RDONLY | O_DIRECTORY);
}

Result<void> rename_over(const QString& from, const QString& to) {
  if (std::rename(name_of(from).constData(), name_of(to).constData()) != 0) {
    return not_on_disk(to);
  }
  return sync_folder(QFileInfo(to).absolutePath());
}

Result<void> write_whole_file(const QString& path, const QByteArray& content) {
  const QString part = path + QLatin1String(unfinished);
  const int fault = write_and_sync(name_of(part), content);
  if (fault != 0) {
    ::unlink(name_of(part).constData());
    errno = fault;
    return not_on_disk(path);
  }
  return rename_over(part, path);
}

Result<WholeFile> WholeFile::begin(const QString& path) {
  const QByteArray part = name_of(path + QLatin1String(unfinished));
  const int file = ::open(part.constData(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, S_IRUSR | S_IWUSR);
  if (file < 0) {
    return not_on_disk(path);
  }
  return WholeFile(path, file);
}

WholeFile::~WholeFile() {
  if (file_ >= 0) {
    ::close(file_);
  }
  if (!path_.isEmpty()) {
    ::unlink(name_of(path_ + QLatin1String(unfinished)).constData());
  }
}

Result<void> WholeFile::write(const QByteArray& content) {
  return write_all(file_, content) ? Result<void>() : not_on_disk(path_);
}

Result<QString> WholeFile::unnamed() {
  if (::fsync(file_) != 0) {
    return not_on_disk(path_);
  }
  ::close(std::exchange(file_, -1));
  return path_ + QLatin1String(unfinished);
}

Result<void> WholeFile::name() {
  auto renamed = rename_over(path_ + QLatin1String(unfinished), path_);
  if (renamed) {
    path_.clear();
  }
  return renamed;
}

Result<void> make_private_folder(const QString& path) {
  if (QFileInfo(path).isDir()) {
    return {};
  }
  const QString above = QFileInfo(path).absolutePath();
  if (above != path) {
    if (auto made = make_private_folder(above); !made) {
      return made;
    }
  }
  return make_one_folder(path);
}

Result<void> make_private_file(const QString& path) {
  if (QFileInfo::exists(path)) {
    return {};
  }
  const int file = ::open(name_of(path).constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
  if (file < 0) {
    return cannot_make(path);
  }
  ::close(file);
  return {};
}

bool is_network_file_system(const QByteArray& type) {
  constexpr std::array<std::string_view, 13> known = {"nfs",   "nfs3",       "nfs4",      "cifs", "smb",
                                                      "smb2",  "smb3",       "smbfs",     "afs",  "ncpfs",
                                                      "davfs", "fuse.sshfs", "fuse.davfs"};
  const QByteArray lower = type.toLower();
  return std::find(known.begin(), known.end(), std::string_view(lower.constData(), std::size_t(lower.size()))) !=
         known.end();
}

QByteArray file_system_of(const QString& folder) {
  QString there = folder;
  while (!QFileInfo::exists(there) && QFileInfo(there).absolutePath() != there) {
    there = QFileInfo(there).absolutePath();
  }
  return QStorageInfo(there).fileSystemType();
}

}  // namespace shimwright::store

#include "disk.h"

#include <algorithm>
#include <array>
#include <string_view>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>

#include <fcntl.h>
#include <unistd.h>

namespace shimwright::store {

namespace {

tl::unexpected<Error> cannot_make(const QString& path) {
  return refuse(
      "cannot_open", path.toStdString(),
      SHIMWRIGHT_TEXT("store", "This could not be made; look whether the folder is there and may be written to."));
}

Result<void> sync_path(const QString& path, int flags) {
  const int file = ::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
  const bool synced = file >= 0 && ::fsync(file) == 0;
  if (file >= 0) {
    ::close(file);
  }
  if (!synced) {
    return refuse(
        "disk_fault", path.toStdString(),
        SHIMWRIGHT_TEXT("store", "This could not be brought to the disk; look after the disk and try again."));
  }
  return {};
}

}  // namespace

Result<void> sync_file(const QString& path) {
  return sync_path(path, O_RDONLY);
}

Result<void> sync_folder(const QString& path) {
  return sync_path(path, O_RDONLY | O_DIRECTORY);
}

Result<void> make_private_folder(const QString& path) {
  if (QFileInfo(path).isDir()) {
    return {};
  }
  if (!QDir().mkpath(path) || !QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner)) {
    return cannot_make(path);
  }
  return {};
}

Result<void> make_private_file(const QString& path) {
  if (QFileInfo::exists(path)) {
    return {};
  }
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly) ||
      !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner)) {
    return cannot_make(path);
  }
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

bool lies_on_network_share(const QString& path) {
  return is_network_file_system(QStorageInfo(path).fileSystemType());
}

}  // namespace shimwright::store

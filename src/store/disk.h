#pragma once

#include <utility>

#include <QString>

#include "shimwright/quantity/error.h"

/// What has to reach the disk, and who may read it.
namespace shimwright::store {

/// Whether a call of the system that left this `errno` failed for want of room.
[[nodiscard]] bool is_out_of_space(int error_number);
/// Code: `disk_full`.
[[nodiscard]] tl::unexpected<Error> disk_is_full();

/// Writes a file that only its owner reads, whole or not at all: under another name, brought to the disk, renamed over
/// what lies there, and the folder brought to the disk. Codes: `disk_full`, `disk_fault`.
[[nodiscard]] Result<void> write_whole_file(const QString& path, const QByteArray& content);
/// The same for what is written piece by piece, and looked at before it takes its name. Thrown away unless named.
class WholeFile {
 public:
  /// Codes of all its functions: `disk_full`, `disk_fault`.
  [[nodiscard]] static Result<WholeFile> begin(const QString& path);
  WholeFile(WholeFile&& other) noexcept : path_(std::move(other.path_)), file_(std::exchange(other.file_, -1)) {}
  WholeFile& operator=(WholeFile&&) = delete;
  WholeFile(const WholeFile&) = delete;
  WholeFile& operator=(const WholeFile&) = delete;
  ~WholeFile();

  [[nodiscard]] Result<void> write(const QByteArray& content);
  /// Brings it to the disk; it can be read under this name then.
  [[nodiscard]] Result<QString> unnamed();
  /// After unnamed(): gives it its name, over what lies there.
  [[nodiscard]] Result<void> name();

 private:
  WholeFile(QString path, int file) : path_(std::move(path)), file_(file) {}
  QString path_;
  int file_;  ///< -1: closed
};

/// Gives a file that is on the disk another name, over what lies there. Codes: `disk_full`, `disk_fault`.
[[nodiscard]] Result<void> rename_over(const QString& from, const QString& to);

/// Brings a file's content to the disk. Code: `disk_fault`.
[[nodiscard]] Result<void> sync_file(const QString& path);
/// Brings the names in a folder to the disk: without it a new file may be gone after a power cut.
[[nodiscard]] Result<void> sync_folder(const QString& path);

/// Makes a folder that only its owner reads, where there is none, its name on the disk. Codes: `cannot_open`,
/// `disk_full`, `disk_fault`.
[[nodiscard]] Result<void> make_private_folder(const QString& path);
/// Makes an empty file that only its owner reads, where there is none. Codes: `cannot_open`, `disk_full`.
[[nodiscard]] Result<void> make_private_file(const QString& path);

/// Whether this is the name of a file system that lies on another machine (`nfs4`, `cifs`, …).
[[nodiscard]] bool is_network_file_system(const QByteArray& type);
/// The name of the file system a folder lies on, or will lie on where it is still to be made.
[[nodiscard]] QByteArray file_system_of(const QString& folder);

}  // namespace shimwright::store

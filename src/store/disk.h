#pragma once

#include <QString>

#include "shimwright/quantity/error.h"

/// What has to reach the disk, and who may read it.
namespace shimwright::store {

/// Brings a file's content to the disk. Code: `disk_fault`.
[[nodiscard]] Result<void> sync_file(const QString& path);
/// Brings the names in a folder to the disk: without it a new file may be gone after a power cut.
[[nodiscard]] Result<void> sync_folder(const QString& path);

/// Makes a folder that only its owner reads, where there is none. Code: `cannot_open`.
[[nodiscard]] Result<void> make_private_folder(const QString& path);
/// Makes an empty file that only its owner reads, where there is none. Code: `cannot_open`.
[[nodiscard]] Result<void> make_private_file(const QString& path);

/// Whether this is the name of a file system that lies on another machine (`nfs4`, `cifs`, …).
[[nodiscard]] bool is_network_file_system(const QByteArray& type);
[[nodiscard]] bool lies_on_network_share(const QString& path);

}  // namespace shimwright::store

#pragma once

#include <optional>
#include <string>

#include "connection.h"

namespace shimwright::store {

[[nodiscard]] QString photo_folder(const QString& store_path);
/// `photos/ab/abcd…` beside the store.
[[nodiscard]] QString photo_place(const QString& store_path, const std::string& sha256);
/// `image/jpeg` or `image/png`, by the first bytes, whatever the file is called.
[[nodiscard]] std::optional<std::string> media_type_of(const QByteArray& content);
/// Nothing where it cannot be read.
[[nodiscard]] std::optional<std::string> hash_of_file(const QString& path);
/// Whole or not at all, and on the disk when this returns. Code: `disk_fault`, `cannot_open`.
[[nodiscard]] Result<void> write_photo(const QString& path, const QByteArray& content);

}  // namespace shimwright::store

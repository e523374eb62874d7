#include "sheet_files.h"

#include <QFile>
#include <QSaveFile>

namespace shimwright::workshop {

namespace {

constexpr qint64 most_bytes = qint64{16} * 1024 * 1024;

}  // namespace

Result<std::string> read_sheet_file(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return refuse("file_unreadable", path.toStdString(),
                  SHIMWRIGHT_TEXT("sheet", "This file cannot be read; choose it again."));
  }
  if (file.size() > most_bytes) {
    return refuse("file_too_large", path.toStdString(),
                  SHIMWRIGHT_TEXT("sheet", "This file is too large for a sheet; choose another."));
  }
  return file.readAll().toStdString();
}

Result<void> write_sheet_file(const QString& path, const std::string& bytes) {
  QSaveFile file(path);
  const QByteArray content = QByteArray::fromStdString(bytes);
  if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size() || !file.commit()) {
    return refuse("file_unwritten", path.toStdString(),
                  SHIMWRIGHT_TEXT("sheet", "The file could not be written; look at the folder and its space."));
  }
  return {};
}

}  // namespace shimwright::workshop

#include <QDir>
#include <QFile>
#include <QSaveFile>

#include "disk.h"
#include "load.h"
#include "shimwright/store/seal.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> job_file_not_written(const QString& path) {
  return refuse("cannot_write", path.toStdString(),
                SHIMWRIGHT_TEXT("store", "The signed file cannot be written here: look at the folder and its space."));
}

/// A job number as it may stand in the name of a file.
std::string for_file_name(const std::string& number) {
  std::string name;
  for (const char each : number) {
    const bool plain = (each >= '0' && each <= '9') || (each >= 'A' && each <= 'Z') || (each >= 'a' && each <= 'z');
    name += plain ? each : '-';
  }
  return name;
}

}  // namespace

Result<std::string> write_job_file(const Store& store, const std::string& job, const std::string& folder) {
  auto sealed = signed_record_of(store, job);
  if (!sealed) {
    return passed_on(sealed);
  }
  if (auto made = make_private_folder(QString::fromStdString(folder)); !made) {
    return passed_on(made);
  }
  const std::string name = "job-" + for_file_name(sealed->statement.number) + "-" + job + ".signed.json";
  const QString path = QDir(QString::fromStdString(folder)).absoluteFilePath(QString::fromStdString(name));
  const std::string bytes = record::signed_record_json(*sealed);
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) ||
      file.write(bytes.data(), static_cast<qint64>(bytes.size())) != static_cast<qint64>(bytes.size()) ||
      !file.commit()) {
    return job_file_not_written(path);
  }
  if (!sync_file(path) || !sync_folder(QString::fromStdString(folder))) {
    return job_file_not_written(path);
  }
  QFile again(path);
  if (!again.open(QIODevice::ReadOnly) || again.readAll().toStdString() != bytes) {
    return job_file_not_written(path);
  }
  return path.toStdString();
}

}  // namespace shimwright::store

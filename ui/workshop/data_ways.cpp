#include "shimwright/workshop/data_ways.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>

#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

DataWays usual_data_ways() {
  DataWays ways;
  ways.choose_backup = [](const QString& folder) {
    return QFileDialog::getOpenFileName(nullptr, QCoreApplication::translate("workshop", "Choose the backup"), folder);
  };
  ways.choose_job_file = [] {
    return QFileDialog::getOpenFileName(
        nullptr, QCoreApplication::translate("workshop", "Choose the file of the job"), QString(),
        QCoreApplication::translate("workshop", "Files of jobs (*.jsonl);;All files (*)"));
  };
  ways.choose_export_folder = [] {
    return QFileDialog::getExistingDirectory(
        nullptr, QCoreApplication::translate("workshop", "Choose the folder for the file of the job"));
  };
  ways.choose_table = [](const QString& suggestion) {
    return QFileDialog::getSaveFileName(nullptr, QCoreApplication::translate("workshop", "Save the measurements"),
                                        suggestion,
                                        QCoreApplication::translate("workshop", "Measurements (*.csv *.json)"));
  };
  return ways;
}

QString backup_file(const QString& folder, const std::string& store_path, const job::Moment& now) {
  const QDateTime local = QDateTime::fromMSecsSinceEpoch(now.at_ms, Qt::OffsetFromUTC, now.offset_min * 60);
  return QDir::cleanPath(QDir(folder).absoluteFilePath(QStringLiteral("%1-day-%2.shimwright")
                                                           .arg(QFileInfo(widgets::qt(store_path)).completeBaseName())
                                                           .arg(local.date().dayOfWeek())));
}

}  // namespace shimwright::workshop

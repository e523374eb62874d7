#include "shimwright/workshop/workshop_ways.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>

namespace shimwright::workshop {

WorkshopWays usual_workshop_ways() {
  return {[] {
            return QFileDialog::getExistingDirectory(
                nullptr, QCoreApplication::translate("workshop", "Choose the folder for the backup"));
          },
          [] {
            const QDateTime now = QDateTime::currentDateTime();
            return job::Moment{now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60, false};
          }};
}

QString backup_file(const QString& folder, const QString& store_path) {
  const QFileInfo store(store_path);
  const QString ending = store.suffix().isEmpty() ? QString() : QLatin1Char('.') + store.suffix();
  return QDir::cleanPath(QDir(folder).absoluteFilePath(store.completeBaseName() + QStringLiteral("-backup") + ending));
}

}  // namespace shimwright::workshop

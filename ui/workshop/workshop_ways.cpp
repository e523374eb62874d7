#include "shimwright/workshop/workshop_ways.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileDialog>

namespace shimwright::workshop {

WorkshopWays usual_workshop_ways() {
  return {[] {
            return QFileDialog::getExistingDirectory(
                nullptr, QCoreApplication::translate("workshop", "Choose the folder for backups"));
          },
          [] {
            const QDateTime now = QDateTime::currentDateTime();
            return job::Moment{now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60, false};
          },
          [](const QString& suggestion) {
            return QFileDialog::getSaveFileName(nullptr,
                                                QCoreApplication::translate("workshop", "Save the blank sheet as PDF"),
                                                suggestion, QCoreApplication::translate("workshop", "PDF (*.pdf)"));
          },
          record::PaperSize::a4, usual_data_ways()};
}

}  // namespace shimwright::workshop

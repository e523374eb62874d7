#include "shimwright/workshop/workshop_ways.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileDialog>

namespace shimwright::workshop {

WorkshopWays usual_workshop_ways() {
  WorkshopWays ways{[] {
                      return QFileDialog::getExistingDirectory(
                          nullptr, QCoreApplication::translate("workshop", "Choose the folder for backups"));
                    },
                    [] {
                      const QDateTime now = QDateTime::currentDateTime();
                      return job::Moment{now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60, false};
                    },
                    [](const QString& suggestion) {
                      return QFileDialog::getSaveFileName(
                          nullptr, QCoreApplication::translate("workshop", "Save the blank sheet as PDF"), suggestion,
                          QCoreApplication::translate("workshop", "PDF (*.pdf)"));
                    }};
  ways.choose_sheet = [] {
    return QFileDialog::getOpenFileName(nullptr, QCoreApplication::translate("workshop", "Choose the file of a sheet"),
                                        QString(), QCoreApplication::translate("workshop", "Sheets (*.json)"));
  };
  ways.save_sheet = [](const QString& suggestion) {
    return QFileDialog::getSaveFileName(nullptr, QCoreApplication::translate("workshop", "Save the sheet as a file"),
                                        suggestion, QCoreApplication::translate("workshop", "Sheets (*.json)"));
  };
  ways.data = usual_data_ways();
  return ways;
}

store::By by_now(const WorkshopWays& ways) {
  return ways.by ? ways.by() : store::By{"", ways.clock()};
}

}  // namespace shimwright::workshop

#include <QCoreApplication>
#include <QFileDialog>

#include "shimwright/past/vehicle_page.h"

namespace shimwright::past {

VehicleWays usual_vehicle_ways() {
  return {[](const QString& suggestion) {
    return QFileDialog::getSaveFileName(nullptr, QCoreApplication::translate("past", "Save the measurements"),
                                        suggestion, QCoreApplication::translate("past", "Measurements (*.csv *.json)"));
  }};
}

}  // namespace shimwright::past

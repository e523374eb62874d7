#pragma once

#include <vector>

#include <QString>

#include "float_chart.h"
#include "shimwright/store/vehicle_history.h"

class QGridLayout;
class QWidget;

/// What the page of a vehicle says, put together from its history.
namespace shimwright::past {

/// The points of one disc in the order of time. Kilometres are their places where every one of them is known and none
/// goes back; else days.
[[nodiscard]] std::vector<ChartPoint> chart_points(const store::VehicleHistory& history, sheet::Side side);

/// The same numbers as a table, latest job first.
void fill_number_table(const store::VehicleHistory& history, QWidget* table);

/// `Unit D7, gearbox serial …`: what the last job says of the vehicle, and what its number says by itself.
[[nodiscard]] QString vehicle_words(const store::VehicleHistory& history);

/// A name for the file: `vehicle-TESTVN009TA030417.csv`.
[[nodiscard]] QString export_file_name(const std::string& vehicle_key, const QString& ending);

}  // namespace shimwright::past

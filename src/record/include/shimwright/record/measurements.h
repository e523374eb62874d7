#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/record.h"

/// Every number of a record in one list, for tables and comparisons.
namespace shimwright::record {

enum class MeasurementKind {
  odometer,
  reading,
  peak,
  teach_in,
  depth,
  old_shim,
  shim_measured,
  trial,
  shim,
  float_run
};
/// `odometer`, `reading`, … as in files.
[[nodiscard]] std::string_view name_of(MeasurementKind kind);

struct Measurement {
  MeasurementKind kind = MeasurementKind::reading;
  Stamp stamp;
  Place place;  ///< blank for the odometer, and for a shim chosen
  std::optional<Side> side;
  std::string
      channel;  ///< id; of depths `depth-1` …, `reference`, `stamp`; of floats `rest`, `lifted`, `zero_after`, `float`
  std::string channel_title;          ///< where the sheet has one
  bool as_found = false;              ///< of a float
  std::optional<int> spot;            ///< of a float
  std::optional<int> series;          ///< of a float
  std::optional<int> attempt;         ///< of a peak, a teach-in
  std::string shim;                   ///< mark of the shim tried or chosen
  std::string word;                   ///< of a trial how the gauge went in; of a shim who or what chose it
  std::optional<TypedNumber> number;  ///< unset for a trial; of a float lifted minus rest
  ReadingVerdict verdict = ReadingVerdict::none;
  std::optional<job::LimitUsed> limit;
  std::optional<job::InstrumentUsed> instrument;
  bool counts = true;  ///< false: a later one took its place, or it was asked again after its assembly came off
};

/// In the order of the record: odometer, readings, peaks, teach-ins, old shims, shims, floats. What was taken back is
/// not there.
[[nodiscard]] std::vector<Measurement> measurements(const Record& record);

}  // namespace shimwright::record

#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "shimwright/job/context.h"

namespace shimwright::job {

/// A reading of a shim, and the micrometer it was read with.
struct MicrometerReading {
  quantity::TypedNumber number;
  Instrument micrometer;
};

/// A shim's thickness as the readings give it.
struct MeasuredShim {
  quantity::Length thickness;  ///< the mean in whole micrometres
  double u_mm = 0.0;           ///< standard uncertainty of that, its rounding included
  double mean_mm = 0.0;
  std::optional<double> deviation_mm;  ///< of one reading; unset for a single one
  std::size_t readings = 0;
};

/// Mean and uncertainty by metrology::mean_reading(); where several micrometers were used the coarsest speaks for all.
/// Nothing without a reading.
[[nodiscard]] std::optional<MeasuredShim> measured_shim(const std::vector<MicrometerReading>& readings);

}  // namespace shimwright::job

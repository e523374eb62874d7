#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

struct InstrumentLine {
  job::InstrumentUsed instrument;
  quantity::Unit unit = quantity::Unit::millimetre;  ///< of what it reads
};

/// Each state of each instrument once, in the order of their first reading.
class InstrumentLines {
 public:
  void add(const std::optional<job::InstrumentUsed>& used, quantity::Unit read_in) {
    if (!used || (!used->repeatability && !used->calibrated_on)) {
      return;
    }
    const bool known = std::any_of(lines_.begin(), lines_.end(),
                                   [&used](const InstrumentLine& each) { return each.instrument == *used; });
    if (!known) {
      lines_.push_back({*used, quantity::default_unit(quantity::dimension_of(read_in))});
    }
  }
  void add(const std::vector<ReadingLine>& readings) {
    for (const ReadingLine& each : readings) {
      add(each.instrument, each.number.unit);
    }
  }
  [[nodiscard]] const std::vector<InstrumentLine>& lines() const { return lines_; }

 private:
  std::vector<InstrumentLine> lines_;
};

std::vector<InstrumentLine> instrument_lines(const Record& record) {
  InstrumentLines found;
  for (const OldShim& each : record.old_shims) {
    found.add(each.reading.instrument, each.reading.number.unit);
  }
  for (const ShimUse& each : record.shims) {
    for (const Depths& depths : each.depths) {
      found.add(depths.instrument, depths.reference.unit);
    }
    found.add(each.measured);
  }
  for (const FloatSeries& series : record.floats) {
    for (const FloatSpot& spot : series.spots) {
      for (const FloatRunLine& run : spot.runs) {
        found.add(run.instrument, run.lifted.unit);
      }
    }
  }
  found.add(record.readings);
  found.add(record.peaks);
  return found.lines();
}

/// Two figures of a standard deviation: `0.0042 mm`.
std::string repeatability_text(const InstrumentLine& line) {
  if (!line.instrument.repeatability) {
    return SHIMWRIGHT_TEXT("record", "not tested");
  }
  const auto one = quantity::read_number("1", line.unit);
  const double base_units = static_cast<double>(*line.instrument.repeatability) / 1000.0;
  const double value = base_units / static_cast<double>(one ? one->base : 1);
  const int decimals = value > 0 ? std::clamp(static_cast<int>(std::ceil(-std::log10(value))) + 1, 0, 6) : 0;
  return fmt::format("{:.{}f} {}", value, decimals, quantity::symbol_of(line.unit));
}

std::string calibration_text(const job::InstrumentUsed& instrument) {
  std::string text = joined({instrument.calibrated_on.value_or(""), instrument.calibrated_to.value_or("")},
                            SHIMWRIGHT_TEXT("record", " to "));
  if (instrument.overdue) {
    text += SHIMWRIGHT_TEXT("record", ", overdue");
  }
  return text;
}

}  // namespace

void write_instruments(PageWriter& writer, const Record& record) {
  Table table;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Instrument"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Resolution"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Permissible error"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Repeatability"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Calibrated")}};
  for (const InstrumentLine& line : instrument_lines(record)) {
    table.rows.push_back({{line.instrument.name},
                          {quantity::shortest_text(line.instrument.resolution, line.unit)},
                          {"± " + quantity::shortest_text(line.instrument.permissible_error, line.unit)},
                          {repeatability_text(line)},
                          {calibration_text(line.instrument)}});
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Instruments as they were"), table);
}

}  // namespace shimwright::record

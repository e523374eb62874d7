#include "shimwright/record/measurements.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>
#include <utility>

namespace shimwright::record {

namespace {

constexpr std::array<std::string_view, 10> kind_names = {"odometer", "reading",       "peak",  "teach_in", "depth",
                                                         "old_shim", "shim_measured", "trial", "shim",     "float"};

class Listing {
 public:
  explicit Listing(const Record& record) : record_(record) {}

  [[nodiscard]] std::vector<Measurement> take() {
    count_the_last_of_each();
    return std::move(all_);
  }

  void add_odometer() {
    if (record_.vehicle.odometer) {
      Measurement& line = add(MeasurementKind::odometer, record_.job.opened, {});
      line.channel = "odometer";
      line.number = record_.vehicle.odometer;
    }
  }

  void add_line(MeasurementKind kind, const ReadingLine& reading) {
    Measurement& line = add(kind, reading.stamp, reading.place);
    line.side = reading.side;
    line.channel = reading.channel;
    line.channel_title = reading.channel_title;
    line.attempt = reading.attempt;
    line.number = reading.number;
    line.verdict = reading.verdict;
    line.limit = reading.limit;
    line.instrument = reading.instrument;
  }

  void add_teach_in(const TeachIn& tried) {
    for (const TeachInValue& value : tried.values) {
      if (value.before) {
        add_value(tried, value, value.channel + ".before").number = value.before;
      }
      if (value.after) {
        Measurement& line = add_value(tried, value, value.channel + ".after");
        line.number = value.after->number;
        line.verdict = value.after->verdict;
        line.limit = value.after->limit;
        line.instrument = value.after->instrument;
      }
    }
  }

  void add_shims(const ShimUse& use) {
    for (const Trial& trial : use.trials) {
      Measurement& line = add(MeasurementKind::trial, trial.stamp, {});
      line.side = use.side;
      line.place.assembly = use.assemblies.front();
      line.shim = trial.shim;
      line.word = shim::name_of(trial.fit);
      line.counts = in_present_round(use);
    }
    for (const Depths& depths : use.depths) {
      for (std::size_t at = 0; at < depths.readings.size(); ++at) {
        add_depth(use, depths, "depth-" + std::to_string(at + 1), depths.readings[at]);
      }
      add_depth(use, depths, "reference", depths.reference);
      if (depths.pack_stamp) {
        add_depth(use, depths, "stamp", *depths.pack_stamp);
      }
    }
    for (const ReadingLine& measured : use.measured) {
      add_line(MeasurementKind::shim_measured, measured);
      all_.back().side = use.side;
    }
    for (const ShimChoice& choice : use.choices) {
      Measurement& line = add(MeasurementKind::shim, choice.stamp, {});
      line.side = use.side;
      line.place.assembly = use.assemblies.front();
      line.shim = choice.shim;
      line.word = job::name_of(choice.by);
      line.number =
          TypedNumber{choice.thickness.count(), choice.thickness.count() % 10 == 0 ? 2 : 3, quantity::Unit::millimetre};
      line.counts = is_last_use(use) && !use.fitted.empty() && &choice == &use.choices.back();
    }
  }

  void add_float(const FloatSeries& series) {
    for (std::size_t at = 0; at < series.spots.size(); ++at) {
      const FloatSpot& spot = series.spots[at];
      for (const FloatRunLine& run : spot.runs) {
        const TypedNumber value{run.value.count(), run.decimals, quantity::Unit::millimetre};
        add_run(series, spot, run, "rest").number = run.rest;
        add_run(series, spot, run, "lifted").number = run.lifted;
        if (run.zero_after) {
          add_run(series, spot, run, "zero_after").number = run.zero_after;
        }
        Measurement& line = add_run(series, spot, run, "float");
        line.number = value;
        line.limit = job::LimitUsed{quantity::Unit::millimetre, series.limits.least.count(), series.limits.most.count(),
                                    2, series.limits.source};
        if (series.judged && series.judged->spot_verdicts.size() == series.spots.size()) {
          line.verdict = series.judged->spot_verdicts[at];
        }
      }
    }
  }

 private:
  Measurement& add(MeasurementKind kind, const Stamp& stamp, const Place& place) {
    Measurement line;
    line.kind = kind;
    line.stamp = stamp;
    line.place = place;
    all_.push_back(std::move(line));
    return all_.back();
  }

  Measurement& add_value(const TeachIn& tried, const TeachInValue& value, std::string channel) {
    Measurement& line = add(MeasurementKind::teach_in, tried.stamp, tried.place);
    line.channel = std::move(channel);
    line.channel_title = value.channel_title;
    line.attempt = tried.attempt;
    return line;
  }

  void add_depth(const ShimUse& use, const Depths& depths, std::string channel, const TypedNumber& number) {
    Measurement& line = add(MeasurementKind::depth, depths.stamp, {});
    line.side = use.side;
    line.place.assembly = use.assemblies.front();
    line.channel = std::move(channel);
    line.number = number;
    line.instrument = depths.instrument;
    line.counts = in_present_round(use) && &depths == &use.depths.back() && !measured_later(use);
  }

  Measurement& add_run(const FloatSeries& series, const FloatSpot& spot, const FloatRunLine& run, std::string channel) {
    Measurement& line = add(MeasurementKind::float_run, run.stamp, series.place);
    line.side = series.side;
    line.channel = std::move(channel);
    line.as_found = series.as_found;
    line.spot = spot.spot;
    line.series = series.series;
    line.instrument = run.instrument;
    line.counts = series.as_found ? is_last_as_found(series) : series.latest;
    return line;
  }

  /// Whether the bearing did not come off again since.
  [[nodiscard]] bool in_present_round(const ShimUse& use) const {
    const auto from = record_.side_counts_from.find(use.side);
    return from == record_.side_counts_from.end() || use.assemblies.front() >= from->second;
  }

  [[nodiscard]] bool is_last_use(const ShimUse& use) const {
    return std::none_of(record_.shims.begin(), record_.shims.end(), [&](const ShimUse& other) {
      return other.side == use.side && other.assemblies.front() > use.assemblies.front();
    });
  }

  [[nodiscard]] bool measured_later(const ShimUse& use) const {
    return std::any_of(record_.shims.begin(), record_.shims.end(), [&](const ShimUse& other) {
      return other.side == use.side && !other.depths.empty() && other.assemblies.front() > use.assemblies.front();
    });
  }

  [[nodiscard]] bool is_last_as_found(const FloatSeries& series) const {
    const auto last = std::find_if(record_.floats.rbegin(), record_.floats.rend(),
                                   [&](const FloatSeries& each) { return each.as_found && each.side == series.side; });
    return last != record_.floats.rend() && &*last == &series;
  }

  /// Of numbers that belong to a step: those of its present round, and of a channel the last; of a teach-in those of
  /// the last attempt, whatever it has.
  void count_the_last_of_each() {
    std::map<std::tuple<MeasurementKind, std::string, std::string>, std::int64_t> last;
    for (auto line = all_.rbegin(); line != all_.rend(); ++line) {
      const bool of_step = line->kind == MeasurementKind::reading || line->kind == MeasurementKind::peak ||
                           line->kind == MeasurementKind::teach_in || line->kind == MeasurementKind::old_shim ||
                           line->kind == MeasurementKind::shim_measured;
      if (!of_step) {
        continue;
      }
      const auto from = record_.step_counts_from.find(line->place.step);
      const bool asked_again = from != record_.step_counts_from.end() && line->place.assembly < from->second;
      const std::string channel = line->kind == MeasurementKind::teach_in ? std::string() : line->channel;
      const auto taken = last.try_emplace({line->kind, line->place.step, channel}, line->stamp.entry).first;
      line->counts = !asked_again && taken->second == line->stamp.entry;
    }
  }

  const Record& record_;
  std::vector<Measurement> all_;
};

}  // namespace

std::string_view name_of(MeasurementKind kind) {
  return kind_names.at(static_cast<std::size_t>(kind));
}

std::vector<Measurement> measurements(const Record& record) {
  Listing listing(record);
  listing.add_odometer();
  for (const ReadingLine& each : record.readings) {
    listing.add_line(MeasurementKind::reading, each);
  }
  for (const ReadingLine& each : record.peaks) {
    listing.add_line(MeasurementKind::peak, each);
  }
  for (const TeachIn& each : record.teach_ins) {
    listing.add_teach_in(each);
  }
  for (const OldShim& each : record.old_shims) {
    listing.add_line(MeasurementKind::old_shim, each.reading);
  }
  for (const ShimUse& each : record.shims) {
    listing.add_shims(each);
  }
  for (const FloatSeries& each : record.floats) {
    listing.add_float(each);
  }
  return listing.take();
}

}  // namespace shimwright::record

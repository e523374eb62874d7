#include "shimwright/record/comparison.h"

#include <algorithm>
#include <string>
#include <utility>

#include "shimwright/record/measurements.h"
#include "wording.h"

namespace shimwright::record {

namespace {

/// One value of one job with what it is matched by.
struct Compared {
  std::string key;
  Message name;
  ComparedValue value;
  std::optional<std::int64_t> base;  ///< of a number: compared in place of its digits
};

std::string bearing(Side side) {
  return side == Side::lower ? SHIMWRIGHT_TEXT("word", "large bearing") : SHIMWRIGHT_TEXT("word", "small bearing");
}

std::string disc(Side side) {
  return side == Side::lower ? SHIMWRIGHT_TEXT("word", "lower disc") : SHIMWRIGHT_TEXT("word", "upper disc");
}

Message plain_text(std::string text) {
  return {"{0}", {std::move(text)}};
}

class Gathering {
 public:
  explicit Gathering(const Record& record) {
    add_head(record);
    add_shims(record);
    for (const bool as_found : {true, false}) {
      for (const Side side : {Side::lower, Side::upper}) {
        add_float(record, side, as_found);
      }
    }
    for (const Measurement& each : measurements(record)) {
      add_measurement(each);
    }
    for (const PartLine& each : record.parts) {
      add_part(each);
    }
  }

  [[nodiscard]] std::vector<Compared> take() { return std::move(all_); }

 private:
  /// What comes later under the same key takes the place of what was there.
  void put(Compared next) {
    for (Compared& each : all_) {
      if (each.key == next.key) {
        each = std::move(next);
        return;
      }
    }
    all_.push_back(std::move(next));
  }

  void add_head(const Record& record) {
    if (!record.job.spec.name.empty()) {
      put({"spec",
           {SHIMWRIGHT_TEXT("record", "Spec sheet"), {}},
           {{SHIMWRIGHT_TEXT("record", "{0}, issue {1}"),
             {record.job.spec.name, std::to_string(record.job.spec.issue)}},
            {}},
           {}});
    }
    if (record.vehicle.odometer) {
      put({"odometer",
           {SHIMWRIGHT_TEXT("record", "Odometer"), {}},
           {plain_text(quantity::printed_text_of(*record.vehicle.odometer)), {}},
           record.vehicle.odometer->base});
    }
  }

  void add_shims(const Record& record) {
    for (const Side side : {Side::lower, Side::upper}) {
      if (const std::string fitted = shim_fitted(record, side); !fitted.empty()) {
        put({"shim/" + std::string(sheet::name_of(side)),
             {SHIMWRIGHT_TEXT("record", "Shim fitted, {0}"), {bearing(side)}},
             {plain_text(fitted), {}},
             {}});
      }
    }
  }

  void add_float(const Record& record, Side side, bool as_found) {
    const FloatSeries* last = nullptr;
    for (const FloatSeries& each : record.floats) {
      last = each.side == side && each.as_found == as_found ? &each : last;
    }
    if (last == nullptr) {
      return;
    }
    const std::string key = "float/" + std::string(sheet::name_of(side)) + (as_found ? "/as-found/" : "/");
    const FloatJudged said = last->judged.value_or(FloatJudged());
    const bool judged = said.spot_floats.size() == last->spots.size();
    const bool has_verdict = said.spot_verdicts.size() == last->spots.size();
    for (std::size_t at = 0; at < last->spots.size(); ++at) {
      const std::int64_t um = judged ? said.spot_floats[at] : last->spots[at].runs.back().value.count();
      const auto verdict = has_verdict ? said.spot_verdicts[at] : ReadingVerdict::none;
      const std::string spot = std::to_string(last->spots[at].spot);
      put({key + spot,
           {as_found ? SHIMWRIGHT_TEXT("record", "Float as found, {0}, spot {1}")
                     : SHIMWRIGHT_TEXT("record", "Float, {0}, spot {1}"),
            {disc(side), spot}},
           {plain_text(millimetre_digits(um) + " mm"), verdict},
           um});
    }
    if (const auto& mean = said.mean; mean) {
      put({key + "mean",
           {as_found ? SHIMWRIGHT_TEXT("record", "Float as found, {0}, mean")
                     : SHIMWRIGHT_TEXT("record", "Float, {0}, mean"),
            {disc(side)}},
           {plain_text(millimetre_digits(*mean) + " mm"), ReadingVerdict::none},
           *mean});
    }
  }

  void add_measurement(const Measurement& line) {
    const bool elsewhere = line.kind == MeasurementKind::odometer || line.kind == MeasurementKind::float_run ||
                           line.kind == MeasurementKind::shim || line.kind == MeasurementKind::trial;
    if (elsewhere || !line.counts || !line.number) {
      return;
    }
    const std::string side = line.side ? std::string(sheet::name_of(*line.side)) : std::string();
    put({std::string(name_of(line.kind)) + "/" + line.place.step + "/" + side + "/" + line.channel,
         name_of_line(line),
         {plain_text(quantity::printed_text_of(*line.number)), line.verdict},
         line.number->base});
  }

  static Message name_of_line(const Measurement& line) {
    if (line.kind == MeasurementKind::depth && line.side) {
      return {SHIMWRIGHT_TEXT("record", "Depth, {0}: {1}"), {bearing(*line.side), line.channel}};
    }
    const bool before = line.kind == MeasurementKind::teach_in && line.channel.ends_with(".before");
    const std::string title = line.channel_title.empty() ? line.channel : line.channel_title;
    if (before) {
      return {SHIMWRIGHT_TEXT("record", "{0}: {1}, before"), {line.place.title, title}};
    }
    return title == line.place.title ? plain_text(title) : Message{"{0}: {1}", {line.place.title, title}};
  }

  void add_part(const PartLine& part) {
    const std::string batch = part.batch.empty() ? std::string("–") : part.batch;
    put({"part/" + part.part,
         plain_text(part.title),
         {{SHIMWRIGHT_TEXT("record", "{0} of {1}, batch {2}"), {std::to_string(part.quantity), part.number, batch}},
          {}},
         {}});
  }

  std::vector<Compared> all_;
};

bool differ(const Compared& first, const Compared& second) {
  const bool same_number = first.base && second.base && *first.base == *second.base;
  return first.value.verdict != second.value.verdict || (!same_number && first.value.text != second.value.text);
}

}  // namespace

std::vector<ComparedRow> compare(const Record& first, const Record& second) {
  const std::vector<Compared> left = Gathering(first).take();
  std::vector<Compared> right = Gathering(second).take();
  std::vector<ComparedRow> rows;
  for (const Compared& each : left) {
    const auto other = std::find_if(right.begin(), right.end(), [&](const Compared& of) { return of.key == each.key; });
    if (other == right.end()) {
      rows.push_back({each.name, each.value, std::nullopt, true});
    } else {
      rows.push_back({each.name, each.value, other->value, differ(each, *other)});
      right.erase(other);
    }
  }
  for (const Compared& each : right) {
    rows.push_back({each.name, std::nullopt, each.value, true});
  }
  return rows;
}

}  // namespace shimwright::record

#include <algorithm>
#include <map>

#include "gather.h"

namespace shimwright::record {

namespace {

bool is_millimetre(const TypedNumber& number) {
  return number.unit == quantity::Unit::millimetre;
}

FloatRunLine run_line(const Source& source, const job::Entry& entry, const job::FloatRun& run) {
  FloatRunLine line;
  line.stamp = stamp_of(source, entry);
  line.rest = run.rest;
  line.lifted = run.lifted;
  line.zero_after = run.zero_after;
  line.instrument = run.instrument;
  line.value = quantity::micrometres(run.lifted.base - run.rest.base);
  const bool whole = is_millimetre(run.rest) && is_millimetre(run.lifted);
  line.decimals = whole ? std::max(run.rest.decimals, run.lifted.decimals) : 3;
  return line;
}

FloatJudged judged(const Source& source, const job::Entry& entry, const job::Advised& advised) {
  FloatJudged said;
  said.stamp = stamp_of(source, entry);
  said.spot_floats = advised.spot_floats;
  said.spot_verdicts = advised.spot_verdicts;
  said.mean = advised.mean;
  if (!advised.spot_floats.empty()) {
    const auto [least, most] = std::minmax_element(advised.spot_floats.begin(), advised.spot_floats.end());
    said.spread = *most - *least;
  }
  said.expanded_u = advised.expanded_u;
  said.trials_agree = advised.trials_agree;
  said.conclusion = advised.conclusion;
  said.shim = advised.shim;
  said.reason = advised.reason;
  return said;
}

FloatLimits limits_of(const Source& source, Side side) {
  if (!source.state.sheets.spec) {
    return {};
  }
  const sheet::FloatSpec& spec = source.state.sheets.spec->side(side).disc_float;
  return {spec.least, spec.most, spec.max_spread, spec.guard_factor, spec.source};
}

/// Follows the job entry by entry, so that runs of different series never mix.
class Follower {
 public:
  explicit Follower(const Source& source) : source_(source) {}

  void take(const job::Entry& entry) {
    if (const auto* run = std::get_if<job::FloatRun>(&entry.body)) {
      add(entry, *run);
    } else if (const auto* begun = std::get_if<job::SeriesBegun>(&entry.body)) {
      reasons_[{begun->at.step, begun->at.assembly, begun->series}] = begun->reason;
    } else if (const auto* advised = std::get_if<job::Advised>(&entry.body)) {
      if (FloatSeries* series = latest_at(advised->at)) {
        series->judged = judged(source_, entry, *advised);
      }
    }
  }

  [[nodiscard]] std::vector<FloatSeries> finish() {
    for (const Side side : {Side::lower, Side::upper}) {
      FloatSeries* last = nullptr;
      for (FloatSeries& each : all_) {
        last = each.side == side && !each.as_found ? &each : last;
      }
      if (last != nullptr) {
        last->latest =
            last->place.assembly == source_.state.assembly || job::passed(source_.state.step(last->place.step));
      }
    }
    return std::move(all_);
  }

 private:
  struct Key {
    std::string step;
    int assembly = 1;
    int series = 1;
    friend auto operator<=>(const Key&, const Key&) = default;
  };

  FloatSeries* latest_at(const job::StepRef& at) {
    const auto found = std::find_if(all_.rbegin(), all_.rend(), [&](const FloatSeries& each) {
      return each.place.step == at.step && each.place.assembly == at.assembly;
    });
    return found == all_.rend() ? nullptr : &*found;
  }

  FloatSeries& series_of(const job::FloatRun& run) {
    const auto found = std::find_if(all_.begin(), all_.end(), [&](const FloatSeries& each) {
      return each.place.step == run.at.step && each.place.assembly == run.at.assembly && each.series == run.series;
    });
    if (found != all_.end()) {
      return *found;
    }
    FloatSeries series;
    series.side = run.side;
    series.as_found = run.as_found;
    series.place = place_of(source_, run.at.step, run.at.assembly);
    series.series = run.series;
    const auto reason = reasons_.find({run.at.step, run.at.assembly, run.series});
    series.reason = reason == reasons_.end() ? std::nullopt : std::optional(reason->second);
    series.limits = limits_of(source_, run.side);
    all_.push_back(std::move(series));
    return all_.back();
  }

  void add(const job::Entry& entry, const job::FloatRun& run) {
    auto& spots = series_of(run).spots;
    const auto after =
        std::find_if(spots.begin(), spots.end(), [&](const FloatSpot& each) { return each.spot >= run.spot; });
    if (after != spots.end() && after->spot == run.spot) {
      after->runs.push_back(run_line(source_, entry, run));
    } else {
      spots.insert(after, {run.spot, {run_line(source_, entry, run)}});
    }
  }

  const Source& source_;
  std::vector<FloatSeries> all_;
  std::map<Key, job::SeriesReason> reasons_;
};

/// Advice is given after every run; of one series the last word is enough.
void keep_last(std::vector<Disagreement>& all, Disagreement next) {
  for (Disagreement& each : all) {
    if (each.side == next.side && each.assembly == next.assembly && each.series == next.series) {
      each = std::move(next);
      return;
    }
  }
  all.push_back(std::move(next));
}

/// A judgement stands on all runs before it: it falls where one of them was taken back later.
void drop_stale(const Source& source, std::vector<FloatSeries>& all) {
  for (const job::Entry& entry : source.state.entries) {
    const auto* withdrawal = std::get_if<job::Withdrawn>(&entry.body);
    if (withdrawal == nullptr || withdrawal->entry < 1 || withdrawal->entry > entry.seq) {
      continue;
    }
    const auto& target = source.state.entries[static_cast<std::size_t>(withdrawal->entry - 1)];
    const auto* run = std::get_if<job::FloatRun>(&target.body);
    for (FloatSeries& series : all) {
      const bool same = run != nullptr && series.place.step == run->at.step &&
                        series.place.assembly == run->at.assembly && run->series <= series.series;
      if (same && series.judged && series.judged->stamp.entry > target.seq && series.judged->stamp.entry < entry.seq) {
        series.judged.reset();
      }
    }
  }
}

}  // namespace

std::vector<FloatSeries> float_series(const Source& source) {
  Follower follower(source);
  for (const job::Entry* entry : source.live) {
    follower.take(*entry);
  }
  std::vector<FloatSeries> all = follower.finish();
  drop_stale(source, all);
  return all;
}

std::vector<Disagreement> disagreements(const Source& source, const std::vector<FloatSeries>& floats) {
  std::vector<Disagreement> found;
  for (const job::Entry* entry : source.live) {
    const auto* advised = std::get_if<job::Advised>(&entry->body);
    if (advised == nullptr || advised->trials_agree.value_or(true)) {
      continue;
    }
    int series = 1;
    for (const FloatSeries& each : floats) {
      const bool here = each.place.step == advised->at.step && each.place.assembly == advised->at.assembly;
      const bool begun = !each.spots.empty() && each.spots.front().runs.front().stamp.entry < entry->seq;
      series = here && begun ? std::max(series, each.series) : series;
    }
    keep_last(found, {stamp_of(source, *entry), advised->side, advised->at.assembly, series, advised->reason});
  }
  return found;
}

}  // namespace shimwright::record

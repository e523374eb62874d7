#include "shimwright/record/vehicle_life.h"

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <utility>

#include "wording.h"

namespace shimwright::record {

namespace {

std::optional<std::string> written_at(const job::JobState& state, sheet::Role role) {
  if (state.sheets.job == nullptr) {
    return std::nullopt;
  }
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* written = step->role == role ? job::latest<job::Written>(state, step->id) : nullptr;
    if (written != nullptr && !written->text.empty()) {
      return written->text;
    }
  }
  return std::nullopt;
}

/// The last series of each disc that was judged; of final floats only the last word of the present assembly.
std::vector<FloatInLife> floats_in_life(const Record& record) {
  std::vector<FloatInLife> found;
  for (const bool as_found : {true, false}) {
    for (const Side side : {Side::lower, Side::upper}) {
      const FloatSeries* last = nullptr;
      for (const FloatSeries& each : record.floats) {
        const bool counts = each.side == side && each.as_found == as_found && (as_found || each.latest);
        last = counts ? &each : last;
      }
      if (last != nullptr && last->judged && last->judged->mean) {
        found.push_back({side, as_found, *last->judged->mean, last->judged->expanded_u, last->limits.least,
                         last->limits.most, disc_verdict(last->judged->spot_verdicts)});
      }
    }
  }
  return found;
}

std::string millimetres(std::int64_t micrometres) {
  return millimetre_digits(micrometres);
}

Message facts_of(Side side, const JobInLife& fitted, const JobInLife& found, const FloatInLife& then,
                 const FloatInLife& now) {
  std::vector<std::string> arguments{
      found.old_pack.value_or(std::string()),
      side == Side::lower ? SHIMWRIGHT_TEXT("word", "lower disc") : SHIMWRIGHT_TEXT("word", "upper disc"),
      millimetres(then.mean_um),
      fitted.number,
      millimetres(now.mean_um),
      found.number};
  constexpr std::int64_t metres_in_km = 1000;
  if (fitted.odometer && found.odometer && found.odometer->base >= fitted.odometer->base) {
    arguments.push_back(std::to_string((found.odometer->base - fitted.odometer->base) / metres_in_km));
    return {
        SHIMWRIGHT_TEXT("record", "Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5} after {6} km."),
        std::move(arguments)};
  }
  return {SHIMWRIGHT_TEXT("record",
                          "Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5}; over which distance is "
                          "not known."),
          std::move(arguments)};
}

Message conclusion_of(const FloatInLife& then, const FloatInLife& now) {
  const std::int64_t more = now.mean_um - then.mean_um;
  if (!then.expanded_u_um || !now.expanded_u_um) {
    return {SHIMWRIGHT_TEXT("record", "How uncertain both were was not kept, so nothing is said of the difference."),
            {}};
  }
  // Both uncertainties are of 95 %; the two measurements are independent.
  const double u = std::hypot(static_cast<double>(*then.expanded_u_um), static_cast<double>(*now.expanded_u_um));
  const std::string u_text = millimetres(static_cast<std::int64_t>(std::ceil(u)));
  const std::string size = millimetres(std::abs(more));
  if (static_cast<double>(std::abs(more)) <= u) {
    return {SHIMWRIGHT_TEXT("record",
                            "The difference of {0} mm cannot be told apart from none: it is known to ± {1} mm (95 %)."),
            {size, u_text}};
  }
  if (more > 0) {
    return {SHIMWRIGHT_TEXT("record", "That is {0} mm more, ± {1} mm (95 %)."), {size, u_text}};
  }
  return {SHIMWRIGHT_TEXT("record",
                          "That is {0} mm less, ± {1} mm (95 %). Wear only adds: look at the serial and at both "
                          "measurements."),
          {size, u_text}};
}

/// A serial as it is compared: how somebody wrote it is not what is on the pack.
std::string folded(const std::string& serial) {
  std::string key;
  for (const char each : serial) {
    const auto character = static_cast<unsigned char>(each);
    if (character >= 0x80 || std::isalnum(character) != 0) {
      key += static_cast<char>(std::toupper(character));
    }
  }
  return key;
}

bool leaves(const JobInLife& job, const std::string& pack) {
  const std::optional<std::string>& left = job.new_pack ? job.new_pack : job.old_pack;
  return job.closed && left && folded(*left) == folded(pack);
}

/// The last closed job before `at` that left this pack in the vehicle, new or the one it found, and set or measured
/// this side of it. An earlier one says nothing of wear: its shim is not the one that stood there.
const JobInLife* left_before(const std::vector<JobInLife>& jobs, std::size_t at, const std::string& pack, Side side) {
  for (std::size_t before = at; before > 0; --before) {
    const JobInLife& job = jobs[before - 1];
    if (leaves(job, pack) && (job.new_pack || job.shims.count(side) > 0 || job.float_of(side, false) != nullptr)) {
      return &job;
    }
  }
  return nullptr;
}

}  // namespace

const FloatInLife* JobInLife::float_of(Side side, bool as_found) const {
  for (const FloatInLife& each : floats) {
    if (each.side == side && each.as_found == as_found) {
      return &each;
    }
  }
  return nullptr;
}

JobInLife job_in_life(const job::JobState& state) {
  const Record record = make_record(state, {});
  JobInLife line;
  line.number = record.job.number;
  line.opened = record.job.opened.moment;
  line.odometer = record.vehicle.odometer;
  for (const ShimUse& use : record.shims) {
    if (!use.choices.empty()) {
      line.shims[use.side] = use.choices.back().shim;
    }
  }
  line.floats = floats_in_life(record);
  line.old_pack = written_at(state, sheet::Role::old_pack_serial);
  line.new_pack = written_at(state, sheet::Role::new_pack_serial);
  line.closed = record.job.closed.has_value();
  for (const job::Entry& entry : state.entries) {
    line.sealed = line.sealed || std::holds_alternative<job::Sealed>(entry.body);
    line.addenda += std::holds_alternative<job::AddendumAdded>(entry.body) ? 1 : 0;
  }
  return line;
}

std::vector<Wear> wear_of_packs(const std::vector<JobInLife>& jobs) {
  std::vector<Wear> all;
  for (std::size_t at = 0; at < jobs.size(); ++at) {
    const JobInLife& found = jobs[at];
    for (const Side side : {Side::lower, Side::upper}) {
      const JobInLife* fitted = found.old_pack ? left_before(jobs, at, *found.old_pack, side) : nullptr;
      const FloatInLife* then = fitted == nullptr ? nullptr : fitted->float_of(side, false);
      const FloatInLife* now = found.float_of(side, true);
      if (then != nullptr && now != nullptr) {
        all.push_back({side, *found.old_pack, facts_of(side, *fitted, found, *then, *now), conclusion_of(*then, *now)});
      }
    }
  }
  return all;
}

}  // namespace shimwright::record

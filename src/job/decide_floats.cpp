#include <algorithm>

#include "desk.h"
#include "round.h"
#include "shimwright/job/judgement.h"

namespace shimwright::job {

namespace {

Result<FloatRun> float_run(const Desk& desk, const sheet::Step& step, const EnterFloatRun& command) {
  const std::string place = command.step + "/spot " + std::to_string(command.spot);
  const auto spots = static_cast<int>(desk.state.sheets.spec->side(step.its_side()).disc_float.spot_angles_deg.size());
  if (command.spot < 1 || command.spot > spots) {
    return refuse("unknown_spot", place, SHIMWRIGHT_TEXT("job", "There are spots 1 to {0}: choose one of them."),
                  {std::to_string(spots)});
  }
  FloatRun run;
  run.at = desk.at(step);
  run.side = step.its_side();
  run.as_found = std::get<sheet::FloatStep>(step.body).as_found;
  run.spot = command.spot;
  run.series = present_series(desk.state, step, command.spot);
  auto rest = number_typed(place + "/rest", command.rest, quantity::Unit::millimetre);
  if (!rest) {
    return tl::make_unexpected(rest.error());
  }
  auto lifted = number_typed(place + "/lifted", command.lifted, quantity::Unit::millimetre);
  if (!lifted) {
    return tl::make_unexpected(lifted.error());
  }
  run.rest = *rest;
  run.lifted = *lifted;
  if (!is_blank(command.zero_after)) {
    auto zero = number_typed(place + "/zero after", command.zero_after, quantity::Unit::millimetre);
    if (!zero) {
      return tl::make_unexpected(zero.error());
    }
    run.zero_after = *zero;
  }
  auto instrument = instrument_used(desk, place + "/instrument", command.instrument, sheet::InstrumentKind::dial_gauge);
  if (!instrument) {
    return tl::make_unexpected(instrument.error());
  }
  run.instrument = *std::move(instrument);
  return run;
}

/// Some methods cannot measure the old pack before it is off; a float taken all the same would be no finding.
Result<void> method_allows(const Desk& desk, const sheet::Step& step) {
  const bool as_found = std::get<sheet::FloatStep>(step.body).as_found;
  if (as_found && !desk.state.sheets.spec->side(step.its_side()).disc_float.as_found) {
    return refuse("as_found_not_allowed", step.id,
                  SHIMWRIGHT_TEXT("job",
                                  "The method of this gearbox has no float as found: leave “{0}” out, not measured, "
                                  "because the spec sheet does not allow it."),
                  {title_of(step)});
  }
  return {};
}

/// Zero has to come back within a division, or the run is no measurement: what came back instead.
std::optional<quantity::TypedNumber> zero_lost(const FloatRun& run) {
  const std::int64_t division = run.instrument ? run.instrument->resolution : 10;
  const bool lost = run.zero_after && std::abs(run.zero_after->base - run.rest.base) > division;
  return lost ? run.zero_after : std::nullopt;
}

int series_begun(const JobState& state, const sheet::Step& step) {
  int most = 1;
  for (const Entry* entry : round_entries(state, step)) {
    if (const auto* begun = std::get_if<SeriesBegun>(&entry->body)) {
      most = std::max(most, begun->series);
    }
  }
  return most;
}

}  // namespace

Bodies decide_on(const Desk& desk, const EnterFloatRun& command) {
  const auto step = step_of_kind<sheet::FloatStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  if (auto allowed = method_allows(desk, **step); !allowed) {
    return tl::make_unexpected(allowed.error());
  }
  auto run = float_run(desk, **step, command);
  if (!run) {
    return tl::make_unexpected(run.error());
  }
  if (const auto zero = zero_lost(*run)) {
    return refuse("zero_lost", command.step + "/spot " + std::to_string(command.spot),
                  SHIMWRIGHT_TEXT("job",
                                  "Zero came back at {0} mm, more than a division off: discard this run, set zero and "
                                  "lift again."),
                  {quantity::digits_of(*zero)});
  }
  return with_advice(desk, **step, {*std::move(run)});
}

Bodies decide_on(const Desk& desk, const BeginSeries& command) {
  const auto step = step_of_kind<sheet::FloatStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto runs = present_runs(desk.state, **step);
  const auto spots = static_cast<int>(runs.size());
  SeriesBegun begun{desk.at(**step), series_begun(desk.state, **step) + 1, command.spots, command.reason};
  for (const int spot : command.spots) {
    if (spot < 1 || spot > spots) {
      return refuse("unknown_spot", command.step,
                    SHIMWRIGHT_TEXT("job", "There are spots 1 to {0}: choose one of them."), {std::to_string(spots)});
    }
  }
  if (begun.spots.empty()) {
    for (int spot = 1; spot <= spots; ++spot) {
      begun.spots.push_back(spot);
    }
  }
  const bool measured = std::any_of(runs.begin(), runs.end(), [](const auto& each) { return !each.empty(); });
  if (!measured) {
    return refuse(
        "nothing_measured", command.step,
        SHIMWRIGHT_TEXT("job", "Nothing is measured here yet: there is nothing to measure again, begin with spot 1."));
  }
  return std::vector<EntryBody>{std::move(begun)};
}

}  // namespace shimwright::job

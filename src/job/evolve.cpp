#include "shimwright/job/evolve.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "round.h"

namespace shimwright::job {

namespace {

StepState held_or_accepted(std::int64_t seq, bool fine, std::vector<Question> questions) {
  if (fine && questions.empty()) {
    return Accepted{seq};
  }
  return Held{seq, std::move(questions), fine};
}

bool fine(ReadingVerdict verdict) {
  return verdict == ReadingVerdict::none || verdict == ReadingVerdict::within;
}

/// Turns one entry that counts into what it changes. A visitor: one small function a kind.
class Applier {
 public:
  Applier(JobState& state, const Entry& entry) : state_(state), entry_(entry) {}

  void operator()(const Opened& opened) const { state_.opened = opened; }
  void operator()(const Done& done) const { put(done.at, Accepted{entry_.seq}); }
  void operator()(const Checked& checked) const { put(checked.at, held_or_accepted(entry_.seq, checked.in_order, {})); }
  void operator()(const Chosen& chosen) const { put(chosen.at, held_or_accepted(entry_.seq, chosen.accepted, {})); }
  void operator()(const Written& written) const {
    put(written.at, held_or_accepted(entry_.seq, true, written.questions));
  }
  void operator()(const Signed& signature) const {
    put(signature.at, Accepted{entry_.seq});
    close_if_last(signature.at.step);
  }
  void operator()(const Deviated& deviated) const {
    put(deviated.at, DeviationTaken{entry_.seq});
    close_if_last(deviated.at.step);
  }
  void operator()(const NotRequired& not_required) const { put(not_required.at, SaidNotRequired{entry_.seq}); }
  void operator()(const ShimTried& tried) const {
    put(tried.at, InWork{});
    forget_shim_found_at(tried.at.step);
  }
  void operator()(const DepthsRead& depths) const {
    put(depths.at, InWork{});
    forget_shim_found_at(depths.at.step);
  }
  void operator()(const FloatRun& run) const { put(run.at, InWork{}); }
  void operator()(const SeriesBegun& series) const { put(series.at, InWork{}); }

  void operator()(const Read& read) const {
    const sheet::Step* step = state_.sheets.job->find(read.at.step);
    const auto* body = step == nullptr ? nullptr : std::get_if<sheet::ReadStep>(&step->body);
    if (body == nullptr) {
      return;
    }
    const ChannelReadings readings = channel_readings(state_, *step);
    const bool complete = std::all_of(body->channels.begin(), body->channels.end(), [&](const sheet::Channel& channel) {
      return readings.by_channel.count(channel.id) == 1;
    });
    const bool all_fine = std::all_of(readings.by_channel.begin(), readings.by_channel.end(),
                                      [](const auto& each) { return fine(each.second->verdict); });
    if (complete || !all_fine || !readings.questions.empty()) {
      put(read.at, held_or_accepted(entry_.seq, complete && all_fine, readings.questions));
    } else {
      put(read.at, InWork{});
    }
  }

  void operator()(const PartsFitted& fitted) const {
    const sheet::Step* step = state_.sheets.job->find(fitted.at.step);
    if (step == nullptr || parts_missing(state_, *step).empty()) {
      put(fitted.at, Accepted{entry_.seq});
    } else {
      put(fitted.at, InWork{});
    }
  }

  void operator()(const PeakRead& peak) const {
    const bool too_many = peak.most_attempts && peak.attempt > *peak.most_attempts;
    put(peak.at, held_or_accepted(entry_.seq, fine(peak.reading.verdict) && !too_many, {}));
  }

  void operator()(const PhotoTaken& photo) const {
    const sheet::Step* step = state_.sheets.job->find(photo.at.step);
    const auto* body = step == nullptr ? nullptr : std::get_if<sheet::PhotoStep>(&step->body);
    if (body == nullptr) {
      return;  // a picture beside another kind of step: on the record, without moving the step
    }
    int count = 0;
    for (const Entry* each : round_entries(state_, *step)) {
      count += std::holds_alternative<PhotoTaken>(each->body) ? 1 : 0;
    }
    if (count >= body->least) {
      put(photo.at, Accepted{entry_.seq});
    } else {
      put(photo.at, InWork{});
    }
  }

  void operator()(const Confirmed& confirmed) const {
    const auto found = state_.steps.find(confirmed.at.step);
    if (found == state_.steps.end()) {
      return;
    }
    if (auto* held = std::get_if<Held>(&found->second)) {
      auto& open = held->questions;
      open.erase(std::remove_if(open.begin(), open.end(),
                                [&](const Question& each) { return each.code == confirmed.question; }),
                 open.end());
      if (open.empty() && held->only_questions) {
        found->second = Accepted{held->entry};
      }
    }
  }

  void operator()(const Advised& advised) const {
    switch (advised.conclusion) {
      case Conclusion::keep:
      case Conclusion::for_information:
        put(advised.at,
            held_or_accepted(entry_.seq, true, still_open(state_, advised.at.step, entry_.seq, advised.questions)));
        break;
      case Conclusion::try_shim:
      case Conclusion::fit_shim:
      case Conclusion::far:
      case Conclusion::edge:
        put(advised.at, InWork{});
        forget_shim_found_at(advised.at.step);
        break;
      default:
        put(advised.at, Held{entry_.seq, advised.questions, false});
        forget_shim_found_at(advised.at.step);
        break;
    }
  }

  void operator()(const ShimChosen& chosen) const {
    state_.shims[chosen.side] = chosen.shim;
    put(chosen.at, held_or_accepted(entry_.seq, true, chosen.questions));
  }

  void operator()(const TeachInTried& tried) const {
    const bool values_fine = std::all_of(tried.values.begin(), tried.values.end(), [](const AttemptValue& value) {
      return !value.after || fine(value.after->verdict);
    });
    put(tried.at, held_or_accepted(entry_.seq, tried.completed && values_fine, {}));
  }

  void operator()(const Withdrawn&) const {}  // evolve folds anew
  void operator()(const Noted&) const {}
  void operator()(const Parked& parked) const { state_.parked = parked; }
  void operator()(const HandedOver& handed) const { state_.at_bench = handed.to; }

  void operator()(const Sealed&) const { state_.sealed = state_.sealed ? state_.sealed : entry_.seq; }
  void operator()(const AddendumAdded&) const {}

  void operator()(const TakenUp& taken) const {
    state_.parked.reset();
    for (const std::string& step_id : taken.unproven) {
      const auto found = state_.steps.find(step_id);
      const std::int64_t answer = found == state_.steps.end() ? 0 : deciding_entry(found->second);
      if (answer != 0) {  // taken back since, there is nothing to prove
        found->second = Unproven{answer};
      }
    }
  }

  void operator()(const AssemblyBegun& begun) const {
    state_.assembly = begun.assembly;
    for (const Side side : begun.sides) {
      state_.shims.erase(side);
    }
    for (const sheet::Step* step : state_.sheets.job->steps()) {
      const auto found = state_.steps.find(step->id);
      if (asked_again(*step, begun) && !std::holds_alternative<NotAsked>(found->second)) {
        found->second = Open{};
      }
    }
  }

 private:
  static std::int64_t deciding_entry(const StepState& state) {
    struct Deciding {
      std::int64_t operator()(const Accepted& each) const { return each.entry; }
      std::int64_t operator()(const Held& each) const { return each.entry; }
      std::int64_t operator()(const DeviationTaken& each) const { return each.entry; }
      std::int64_t operator()(const SaidNotRequired& each) const { return each.entry; }
      std::int64_t operator()(const Unproven& each) const { return each.entry; }
      std::int64_t operator()(const Open&) const { return 0; }
      std::int64_t operator()(const InWork&) const { return 0; }
      std::int64_t operator()(const NotAsked&) const { return 0; }
    };
    return std::visit(Deciding{}, state);
  }

  void put(const StepRef& at, StepState step_state) const {
    const auto found = state_.steps.find(at.step);
    if (found != state_.steps.end()) {
      found->second = std::move(step_state);
    }
  }

  /// A shim is chosen on what is known; something new known opens the choice again.
  void forget_shim_found_at(const std::string& step_id) const {
    const sheet::Step* step = state_.sheets.job->find(step_id);
    const bool finds_shim = step != nullptr && (std::holds_alternative<sheet::GaugeFitStep>(step->body) ||
                                                std::holds_alternative<sheet::DepthStep>(step->body));
    if (finds_shim && step->side) {
      state_.shims.erase(*step->side);
    }
  }

  void close_if_last(const std::string& step_id) const {
    const auto steps = state_.sheets.job->steps();
    state_.closed = state_.closed || (!steps.empty() && steps.back()->id == step_id);
  }

  JobState& state_;
  const Entry& entry_;
};

/// Advice that stands on an entry falls with it: all that was given on its step later, until the step was asked again.
void withdraw(JobState& state, std::int64_t seq) {
  state.withdrawn.insert(seq);
  const auto at_fault =
      std::find_if(state.entries.begin(), state.entries.end(), [&](const Entry& each) { return each.seq == seq; });
  if (at_fault == state.entries.end() || !advice_stands_on(at_fault->body)) {
    return;
  }
  const std::string& step_id = step_of(at_fault->body)->step;
  const sheet::Step* step = state.sheets.job->find(step_id);
  for (auto later = std::next(at_fault); later != state.entries.end(); ++later) {
    const auto* begun = std::get_if<AssemblyBegun>(&later->body);
    if (begun != nullptr && step != nullptr && asked_again(*step, *begun) && state.withdrawn.count(later->seq) == 0) {
      return;
    }
    const auto* advised = std::get_if<Advised>(&later->body);
    if (advised != nullptr && advised->at.step == step_id) {
      state.withdrawn.insert(later->seq);
    }
  }
}

JobState fold_anew(JobState state) {
  JobState anew = begin(std::move(state.sheets));
  std::swap(anew.withdrawn, state.withdrawn);
  anew.entries.reserve(state.entries.size());
  for (Entry& entry : state.entries) {
    anew.entries.push_back(std::move(entry));
    if (anew.withdrawn.count(anew.entries.back().seq) == 0) {
      const Entry current = anew.entries.back();
      std::visit(Applier(anew, current), current.body);
    }
  }
  return anew;
}

}  // namespace

JobState begin(Sheets sheets) {
  JobState state;
  state.sheets = std::move(sheets);
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const bool other_method =
        step->only_for && step->side && state.sheets.spec->side(*step->side).method != *step->only_for;
    state.steps.emplace(step->id, other_method ? StepState(NotAsked{}) : StepState(Open{}));
  }
  return state;
}

JobState evolve(JobState state, const Entry& entry) {
  state.entries.push_back(entry);
  const auto* withdrawal = std::get_if<Withdrawn>(&entry.body);
  if (withdrawal != nullptr && withdrawal->entry < entry.seq) {
    withdraw(state, withdrawal->entry);
    return fold_anew(std::move(state));
  }
  std::visit(Applier(state, entry), entry.body);
  return state;
}

JobState fold(Sheets sheets, const std::vector<Entry>& entries) {
  JobState state = begin(std::move(sheets));
  for (const Entry& entry : entries) {
    state = evolve(std::move(state), entry);
  }
  return state;
}

}  // namespace shimwright::job

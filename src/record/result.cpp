#include <algorithm>

#include "gather.h"
#include "wording.h"

namespace shimwright::record {

namespace {

enum class DiscState { free, near_limit, off, accepted_off, measured, not_measured };

/// What became of one disc, in the words of its last measurement.
struct Disc {
  DiscState state = DiscState::not_measured;
  ReadingVerdict verdict = ReadingVerdict::none;
  int assembly = 1;
};

const sheet::Step* float_step(const Source& source, Side side) {
  for (const sheet::Step* step : steps_of(source)) {
    const auto* body = std::get_if<sheet::FloatStep>(&step->body);
    if (body != nullptr && !body->as_found && step->side == side) {
      return step;
    }
  }
  return nullptr;
}

Disc disc_of(const Source& source, const Record& record, Side side) {
  Disc disc;
  const auto last = std::find_if(record.floats.begin(), record.floats.end(),
                                 [&](const FloatSeries& each) { return each.side == side && each.latest; });
  if (last == record.floats.end()) {
    return disc;
  }
  disc.assembly = last->place.assembly;
  disc.state = DiscState::measured;
  const auto& judged = last->judged;
  if (!judged) {
    return disc;
  }
  const job::Conclusion conclusion = judged->conclusion;
  disc.verdict = disc_verdict(judged->spot_verdicts);
  const sheet::Step* step = float_step(source, side);
  const bool accepted = step != nullptr && std::holds_alternative<job::Accepted>(source.state.step(step->id));
  const bool deviated = step != nullptr && std::holds_alternative<job::DeviationTaken>(source.state.step(step->id));
  if (conclusion == job::Conclusion::keep && accepted) {
    disc.state = disc.verdict == ReadingVerdict::within ? DiscState::free : DiscState::near_limit;
  } else if (disc.verdict != ReadingVerdict::none) {
    disc.state = deviated ? DiscState::accepted_off : DiscState::off;
  }
  return disc;
}

Message sentence(const Disc& disc, Side side) {
  const std::string name = disc_word(side);
  const std::string assembly = ordinal_word(disc.assembly);
  const std::string verdict = disc_verdict_word(disc.verdict);
  switch (disc.state) {
    case DiscState::free:
      return {SHIMWRIGHT_TEXT("record", "{0} disc free within limits at the {1} assembly."), {name, assembly}};
    case DiscState::near_limit:
      return {SHIMWRIGHT_TEXT("record", "{0} disc free close to its limit at the {1} assembly."), {name, assembly}};
    case DiscState::accepted_off:
      return {SHIMWRIGHT_TEXT("record", "{0} disc {1} at the {2} assembly, accepted with a reason, below."),
              {name, verdict, assembly}};
    case DiscState::off:
      return {SHIMWRIGHT_TEXT("record", "{0} disc not free within limits at the {1} assembly: {2}."),
              {name, assembly, verdict}};
    case DiscState::measured:
      return {SHIMWRIGHT_TEXT("record", "{0} disc measured at the {1} assembly, not judged."), {name, assembly}};
    case DiscState::not_measured:
      break;
  }
  return {SHIMWRIGHT_TEXT("record", "Float of the {0} disc not measured."),
          {side == Side::lower ? SHIMWRIGHT_TEXT("record", "lower") : SHIMWRIGHT_TEXT("record", "upper")}};
}

void add_discs(const Source& source, const Record& record, std::vector<Message>& result) {
  const Disc lower = disc_of(source, record, Side::lower);
  const Disc upper = disc_of(source, record, Side::upper);
  const bool nothing_yet = lower.state == DiscState::not_measured && upper.state == DiscState::not_measured;
  if (nothing_yet && !record.job.closed) {
    return;
  }
  if (lower.state == DiscState::free && upper.state == DiscState::free && lower.assembly == upper.assembly) {
    result.push_back({SHIMWRIGHT_TEXT("record", "Both discs free within limits at the {0} assembly."),
                      {ordinal_word(lower.assembly)}});
    return;
  }
  result.push_back(sentence(lower, Side::lower));
  result.push_back(sentence(upper, Side::upper));
}

void add_shims(const Source& source, const Record& record, std::vector<Message>& result) {
  const auto& shims = source.state.shims;
  const auto lower = shims.find(Side::lower);
  const auto upper = shims.find(Side::upper);
  if (lower != shims.end() && upper != shims.end()) {
    result.push_back(
        {SHIMWRIGHT_TEXT("record", "Large bearing shim {0}, small bearing shim {1}."), {lower->second, upper->second}});
    return;
  }
  if (lower != shims.end()) {
    result.push_back({SHIMWRIGHT_TEXT("record", "Large bearing shim {0}."), {lower->second}});
  } else if (record.job.closed) {
    result.push_back({SHIMWRIGHT_TEXT("record", "No shim on record for the large bearing."), {}});
  }
  if (upper != shims.end()) {
    result.push_back({SHIMWRIGHT_TEXT("record", "Small bearing shim {0}."), {upper->second}});
  } else if (record.job.closed) {
    result.push_back({SHIMWRIGHT_TEXT("record", "No shim on record for the small bearing."), {}});
  }
}

bool is_teach_in(const sheet::Step& step) {
  return std::holds_alternative<sheet::TeachInStep>(step.body);
}

const sheet::Step* road_test_step(const Source& source) {
  const auto steps = steps_of(source);
  const auto found =
      std::find_if(steps.begin(), steps.end(), [](const auto* each) { return each->role == sheet::Role::road_test; });
  return found == steps.end() ? nullptr : *found;
}

bool is_accepted(const Source& source, const sheet::Step& step) {
  return std::holds_alternative<job::Accepted>(source.state.step(step.id));
}

void add_teach_in(const Source& source, const Record& record, std::vector<Message>& result) {
  const auto steps = steps_of(source);
  if (std::none_of(steps.begin(), steps.end(), [](const sheet::Step* step) { return is_teach_in(*step); })) {
    return;
  }
  const bool all_done = std::all_of(steps.begin(), steps.end(), [&](const sheet::Step* step) {
    return !is_teach_in(*step) || is_accepted(source, *step);
  });
  const sheet::Step* road_test = road_test_step(source);
  const bool road_test_passed = road_test != nullptr && is_accepted(source, *road_test);
  if (all_done && road_test_passed) {
    result.push_back({SHIMWRIGHT_TEXT("record", "Teach-in completed, road test passed."), {}});
    return;
  }
  if (all_done) {
    result.push_back({SHIMWRIGHT_TEXT("record", "Teach-in completed."), {}});
  } else if (record.job.closed || !record.teach_ins.empty()) {
    result.push_back({record.teach_ins.empty() ? SHIMWRIGHT_TEXT("record", "Teach-in not done.")
                                               : SHIMWRIGHT_TEXT("record", "Teach-in not completed."),
                      {}});
  }
  if (road_test != nullptr && record.job.closed) {
    const bool asked = !source.state.live(road_test->id).empty();
    result.push_back({road_test_passed ? SHIMWRIGHT_TEXT("record", "Road test passed.")
                      : asked          ? SHIMWRIGHT_TEXT("record", "Road test not passed.")
                                       : SHIMWRIGHT_TEXT("record", "Road test not done."),
                      {}});
  }
}

void add_deviations(const Record& record, std::vector<Message>& result) {
  const std::size_t count = record.deviations.size();
  if (count == 0 && record.job.closed) {
    result.push_back({SHIMWRIGHT_TEXT("record", "No deviation."), {}});
  } else if (count == 1) {
    result.push_back({SHIMWRIGHT_TEXT("record", "One deviation, below."), {}});
  } else if (count > 1) {
    result.push_back({SHIMWRIGHT_TEXT("record", "{0} deviations, below."), {std::to_string(count)}});
  }
}

}  // namespace

std::vector<Message> result_of(const Source& source, const Record& record) {
  std::vector<Message> result;
  if (!source.state.opened) {
    return {{SHIMWRIGHT_TEXT("record", "This job was never opened."), {}}};
  }
  if (!record.job.closed) {
    const auto& next = record.job.next_step;
    result.push_back(next ? Message{SHIMWRIGHT_TEXT("record", "Open job: not finished; next is “{0}”."), {*next}}
                          : Message{SHIMWRIGHT_TEXT("record", "Open job: not finished."), {}});
  }
  add_discs(source, record, result);
  add_shims(source, record, result);
  add_teach_in(source, record, result);
  add_deviations(record, result);
  return result;
}

}  // namespace shimwright::record

#include "shimwright/job/questions.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "round.h"
#include "tray_steps.h"

namespace shimwright::job {

namespace {

using quantity::Length;
using quantity::millimetre_text;

std::string text(Length length) {
  return millimetre_text(length, length.count() % 10 == 0 ? 2 : 3);
}

/// A stamp means nothing without its sign.
std::string signed_text(Length length) {
  return (length.count() > 0 ? "+" : "") + quantity::with_true_minus(text(length));
}

Question question(std::string code, std::string_view text, std::vector<std::string> arguments) {
  return {std::move(code), Message{std::string(text), std::move(arguments)}};
}

Length size_of(Length length) {
  return Length(std::abs(length.count()));
}

std::optional<Length> old_shim(const JobState& state, Side side) {
  const sheet::Step* step = step_with_role(*state.sheets.job, sheet::Role::old_shim, side);
  const auto* body = step == nullptr ? nullptr : std::get_if<sheet::ReadStep>(&step->body);
  if (body == nullptr || body->channels.empty()) {
    return std::nullopt;
  }
  const Reading* reading = latest_reading(state, step->id, body->channels.front().id);
  return reading == nullptr ? std::nullopt : std::optional(Length(reading->number.base));
}

/// The last advice on a final float of that side in that assembly that came to a mean.
const Advised* final_float(const JobState& state, Side side, int assembly) {
  const Advised* found = nullptr;
  for (const Entry* entry : state.live()) {
    const auto* advised = std::get_if<Advised>(&entry->body);
    if (advised != nullptr && advised->side == side && advised->at.assembly == assembly && advised->mean &&
        advised->conclusion != Conclusion::for_information) {
      found = advised;
    }
  }
  return found;
}

/// The shim a side had in an assembly: chosen then, or in the last assembly before that chose one.
std::optional<Length> thickness_in(const JobState& state, Side side, int assembly) {
  std::optional<Length> found;
  for (const Entry* entry : state.live()) {
    const auto* chosen = std::get_if<ShimChosen>(&entry->body);
    if (chosen != nullptr && chosen->side == side && chosen->at.assembly <= assembly) {
      found = chosen->thickness;
    }
  }
  return found;
}

constexpr double turn_slack = 0.12;  // of a turn: a missed one stands out from any honest scatter

bool whole_turns_off(double difference_um, Length turn) {
  const double turns = std::abs(difference_um) / static_cast<double>(turn.count());
  return std::round(turns) >= 1.0 && std::abs(turns - std::round(turns)) <= turn_slack;
}

Question turn_question(double read_um, double expected_um, Length turn) {
  const Length read(std::llround(read_um));
  const Length expected(std::llround(expected_um));
  return question(
      "turn_missed",
      SHIMWRIGHT_TEXT("job",
                      "{0} mm was read where about {1} mm was expected: a whole turn of the dial ({2} mm) may "
                      "have been missed. Look at the turn counter and measure again, or confirm."),
      {text(read), text(expected), text(turn)});
}

std::optional<Question> one_spot_a_turn_off(const std::vector<std::int64_t>& spot_floats, Length turn) {
  for (std::size_t at = 0; at < spot_floats.size(); ++at) {
    double others = 0;
    for (std::size_t other = 0; other < spot_floats.size(); ++other) {
      others += other == at ? 0.0 : static_cast<double>(spot_floats[other]);
    }
    others /= static_cast<double>(spot_floats.size() - 1);
    const auto own = static_cast<double>(spot_floats[at]);
    if (whole_turns_off(own - others, turn)) {
      return turn_question(own, others, turn);
    }
  }
  return std::nullopt;
}

bool opposite(ReadingVerdict one, ReadingVerdict other) {
  return (one == ReadingVerdict::too_large && other == ReadingVerdict::too_small) ||
         (one == ReadingVerdict::too_small && other == ReadingVerdict::too_large);
}

std::optional<ReadingVerdict> one_way(const std::vector<ReadingVerdict>& spots) {
  std::optional<ReadingVerdict> way;
  for (const ReadingVerdict each : spots) {
    if (each == ReadingVerdict::too_small || each == ReadingVerdict::too_large) {
      if (way && *way != each) {
        return std::nullopt;
      }
      way = each;
    }
  }
  return way;
}

}  // namespace

std::optional<Question> far_from_old_shim(const JobState& state, Side side, Length thickness,
                                          const std::vector<TrayShim>& tray) {
  const auto old = old_shim(state, side);
  const auto step = step_beside(tray, thickness);
  if (!old || !step || size_of(thickness - *old) <= *step + Length(step->count() / 4)) {
    return std::nullopt;
  }
  return question("far_from_old_shim",
                  SHIMWRIGHT_TEXT("job",
                                  "The shim taken out measured {0} mm, this one has {1} mm: more than one step apart. "
                                  "Look at seating and parts again, or confirm."),
                  {text(*old), text(thickness)});
}

std::optional<Question> not_the_chosen_shim(const JobState& state, Side side, Length measured,
                                            const std::vector<TrayShim>& tray) {
  const auto chosen = state.shims.find(side);
  const TrayShim* shim = chosen == state.shims.end() ? nullptr : shim_with_id(tray, chosen->second);
  if (shim == nullptr) {
    return std::nullopt;
  }
  const auto step = step_beside(tray, shim->thickness);
  const Length allowed = step ? Length(step->count() / 4) : quantity::micrometres(20);
  if (size_of(measured - shim->thickness) <= allowed) {
    return std::nullopt;
  }
  return question("not_the_chosen_shim",
                  SHIMWRIGHT_TEXT("job",
                                  "{0} mm is not the shim chosen ({1}, {2} mm). Measure the shim that lies on this "
                                  "bearing's place again, or confirm."),
                  {text(measured), shim->id, text(shim->thickness)});
}

std::optional<Question> stamp_differs(const JobState& state, Side side, Length stamp) {
  const sheet::Step* step = step_with_role(*state.sheets.job, sheet::Role::stamp, side);
  const auto* body = step == nullptr ? nullptr : std::get_if<sheet::ReadStep>(&step->body);
  if (body == nullptr || body->channels.empty()) {
    return std::nullopt;
  }
  const Reading* read = latest_reading(state, step->id, body->channels.front().id);
  if (read == nullptr || read->number.base == stamp.count()) {
    return std::nullopt;
  }
  return question(
      "stamp_differs",
      SHIMWRIGHT_TEXT("job",
                      "The stamp was read as {0} mm when the pack was unpacked and is {1} mm here. Read it on "
                      "the pack again, or confirm."),
      {signed_text(Length(read->number.base)), signed_text(stamp)});
}

std::optional<Question> other_pack(const JobState& state, const std::string& serial, const Context& context) {
  static_cast<void>(state);
  const auto& previous = context.previous_pack;
  if (!previous || !previous->pack_serial || *previous->pack_serial == serial) {
    return std::nullopt;
  }
  return question(
      "other_pack",
      SHIMWRIGHT_TEXT("job",
                      "Job {0} left pack {1} in this vehicle; this one is {2}. Its floats as found are no wear "
                      "of that pack. Read the serial again, or confirm."),
      {previous->job_number, *previous->pack_serial, serial});
}

std::vector<Question> as_found_questions(const JobState& state, Side side, Length mean, const Context& context) {
  std::vector<Question> questions;
  if (!context.previous_pack) {
    return questions;
  }
  const sheet::Step* serial_step = step_with_role(*state.sheets.job, sheet::Role::old_pack_serial);
  const Written* serial = serial_step == nullptr ? nullptr : latest<Written>(state, serial_step->id);
  if (serial != nullptr) {
    if (auto other = other_pack(state, serial->text, context)) {
      questions.push_back(*std::move(other));
    }
  }
  const auto left = context.previous_pack->final_float.find(side);
  constexpr Length scatter = quantity::micrometres(50);
  if (left != context.previous_pack->final_float.end() && mean + scatter < left->second) {
    questions.push_back(question(
        "less_than_left",
        SHIMWRIGHT_TEXT("job",
                        "Job {0} left this disc with {1} mm, now it has {2} mm: wear only adds. It may be another "
                        "pack. Look at its serial, or confirm."),
        {context.previous_pack->job_number, text(left->second), text(mean)}));
  }
  return questions;
}

std::optional<Question> turn_missed(const JobState& state, const sheet::Step& step,
                                    const std::vector<std::int64_t>& spot_floats, std::optional<double> sensitivity,
                                    Length turn) {
  if (spot_floats.size() < 2 || !step.side || turn.count() <= 0) {
    return std::nullopt;
  }
  if (auto spot = one_spot_a_turn_off(spot_floats, turn)) {
    return spot;
  }
  const Advised* before = state.assembly > 1 ? final_float(state, *step.side, state.assembly - 1) : nullptr;
  const auto old_thickness = thickness_in(state, *step.side, state.assembly - 1);
  const auto new_thickness = thickness_in(state, *step.side, state.assembly);
  if (before == nullptr || !before->mean || !old_thickness || !new_thickness || !sensitivity) {
    return std::nullopt;
  }
  double mean = 0;
  for (const std::int64_t each : spot_floats) {
    mean += static_cast<double>(each);
  }
  mean /= static_cast<double>(spot_floats.size());
  const auto change = static_cast<double>((*new_thickness - *old_thickness).count());
  const double expected = static_cast<double>(*before->mean) - *sensitivity * change;
  return whole_turns_off(mean - expected, turn) ? std::optional(turn_question(mean, expected, turn)) : std::nullopt;
}

std::optional<Question> shims_exchanged(const JobState& state, Side side, ReadingVerdict verdict,
                                        const Context& context) {
  static_cast<void>(context);
  const Side other_side = side == Side::lower ? Side::upper : Side::lower;
  const Advised* other = final_float(state, other_side, state.assembly);
  const auto other_way = other == nullptr ? std::nullopt : one_way(other->spot_verdicts);
  const auto own = thickness_in(state, side, state.assembly);
  const auto others = thickness_in(state, other_side, state.assembly);
  if (!other_way || !opposite(verdict, *other_way) || !own || !others) {
    return std::nullopt;
  }
  // With the other's shim in its place a bearing that was to get the thicker one has too little: its float is too
  // large.
  const bool would_fit = *own > *others ? verdict == ReadingVerdict::too_large : verdict == ReadingVerdict::too_small;
  if (*own == *others || !would_fit) {
    return std::nullopt;
  }
  return question(
      "shims_exchanged",
      SHIMWRIGHT_TEXT("job",
                      "Both discs are off, opposite ways: the large and the small shim may lie in each other's "
                      "place ({0} and {1} mm). Look at both when the pack is off, or confirm."),
      {text(*own), text(*others)});
}

std::optional<Question> hundredths_in_doubt(const quantity::TypedNumber& number, const LimitUsed& limit) {
  if (number.decimals != 0 || !limit.most || number.base <= *limit.most || number.base % 100 != 0) {
    return std::nullopt;
  }
  const std::int64_t hundredth = number.base / 100;
  if (hundredth > *limit.most || (limit.least && hundredth < *limit.least)) {
    return std::nullopt;
  }
  quantity::TypedNumber meant = number;
  meant.base = hundredth;
  meant.decimals = 2;
  return question(
      "hundredths_in_doubt",
      SHIMWRIGHT_TEXT("job", "{0} was typed without a decimal mark: was {1} meant? Enter it again, or confirm."),
      {quantity::text_of(number), quantity::text_of(meant)});
}

}  // namespace shimwright::job

#include <algorithm>
#include <set>

#include "desk.h"
#include "round.h"
#include "shimwright/job/judgement.h"
#include "shimwright/job/questions.h"

namespace shimwright::job {

namespace {

bool sign_typed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) {
    return false;
  }
  for (const std::string_view mark : {"-", "+", "\u2212", "\uFF0D", "\uFF0B"}) {
    if (text.substr(first, mark.size()) == mark) {
      return true;
    }
  }
  return false;
}

std::optional<LimitUsed> limit_of(const Desk& desk, const sheet::Channel& channel) {
  if (!channel.limit) {
    return std::nullopt;
  }
  const auto& limits = desk.state.sheets.spec->limits;
  const auto found = limits.find(*channel.limit);
  if (found == limits.end()) {
    return std::nullopt;
  }
  const sheet::Limit& limit = found->second;
  return LimitUsed{limit.unit, limit.least, limit.most, limit.decimals, limit.source};
}

ReadingVerdict verdict_of(std::int64_t base, const LimitUsed& limit) {
  if (limit.least && base < *limit.least) {
    return ReadingVerdict::too_small;
  }
  return limit.most && base > *limit.most ? ReadingVerdict::too_large : ReadingVerdict::within;
}

const sheet::Channel* channel_of(const sheet::Step& step, const std::string& id) {
  const auto& channels = std::get<sheet::ReadStep>(step.body).channels;
  const auto found =
      std::find_if(channels.begin(), channels.end(), [&](const sheet::Channel& each) { return each.id == id; });
  return found == channels.end() ? nullptr : &*found;
}

std::optional<Question> role_question(const Desk& desk, const sheet::Step& step, const Reading& reading) {
  if (step.role == sheet::Role::new_shim && step.side) {
    return not_the_chosen_shim(desk.state, *step.side, quantity::Length(reading.number.base),
                               tray_of(desk.state, *step.side, desk.context));
  }
  return std::nullopt;
}

}  // namespace

Result<JudgedReading> judged_reading(const Desk& desk, const sheet::Step& step, const sheet::Channel& channel,
                                     const TypedReading& typed) {
  const std::string place = step.id + "/" + channel.id;
  auto number = number_typed(place, typed.text, channel.unit);
  if (!number) {
    return tl::make_unexpected(number.error());
  }
  if (channel.signed_value && number->base != 0 && !sign_typed(typed.text)) {
    return refuse(
        "sign_missing", place,
        SHIMWRIGHT_TEXT("job", "A stamp has a sign: read plus or minus on the pack and enter it with the number."));
  }
  JudgedReading judged;
  judged.reading.channel = channel.id;
  judged.reading.number = *number;
  if (channel.instrument) {
    auto instrument = instrument_used(desk, place, typed.instrument, *channel.instrument);
    if (!instrument) {
      return tl::make_unexpected(instrument.error());
    }
    judged.reading.instrument = *std::move(instrument);
  }
  if (auto limit = limit_of(desk, channel)) {
    judged.reading.verdict = verdict_of(number->base, *limit);
    if (auto doubt = hundredths_in_doubt(*number, *limit)) {
      judged.questions.push_back(*std::move(doubt));
    }
    judged.reading.limit = std::move(limit);
  }
  if (channel.equals) {
    const Reading* other = latest_reading(desk.state, channel.equals->step, channel.equals->channel);
    const bool equal = other != nullptr && other->number.base == number->base;
    judged.reading.verdict = equal ? ReadingVerdict::within : ReadingVerdict::not_equal;
  }
  if (auto doubt = role_question(desk, step, judged.reading)) {
    judged.questions.push_back(*std::move(doubt));
  }
  return judged;
}

Bodies decide_on(const Desk& desk, const EnterReadings& command) {
  const auto step = step_of_kind<sheet::ReadStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  Read read{desk.at(**step), {}, {}};
  std::set<std::string> seen;
  for (const TypedReading& typed : command.readings) {
    const sheet::Channel* channel = channel_of(**step, typed.channel);
    if (channel == nullptr || !seen.insert(typed.channel).second) {
      return refuse("unknown_channel", command.step + "/" + typed.channel,
                    SHIMWRIGHT_TEXT("job", "“{0}” asks for no such reading, or for it only once: look at its fields."),
                    {title_of(**step)});
    }
    auto judged = judged_reading(desk, **step, *channel, typed);
    if (!judged) {
      return tl::make_unexpected(judged.error());
    }
    read.readings.push_back(std::move(judged->reading));
    read.questions.insert(read.questions.end(), judged->questions.begin(), judged->questions.end());
  }
  if (read.readings.empty()) {
    return refuse("empty", command.step,
                  SHIMWRIGHT_TEXT("job", "Nothing was entered: enter a reading, or leave the step open."));
  }
  return std::vector<EntryBody>{std::move(read)};
}

namespace {

int peaks_so_far(const JobState& state, std::string_view step_id) {
  int count = 0;
  for (const Entry* entry : state.live(step_id)) {
    count += std::holds_alternative<PeakRead>(entry->body) ? 1 : 0;
  }
  return count;
}

std::optional<int> most_attempts(const Desk& desk, const sheet::PeakStep& peak) {
  if (!peak.attempts_limit) {
    return std::nullopt;
  }
  const auto& limits = desk.state.sheets.spec->limits;
  const auto found = limits.find(*peak.attempts_limit);
  if (found == limits.end()) {
    return std::nullopt;
  }
  const auto& most = found->second.most;
  return most ? std::optional(static_cast<int>(*most)) : std::nullopt;
}

}  // namespace

Bodies decide_on(const Desk& desk, const EnterPeak& command) {
  const auto step = step_of_kind<sheet::PeakStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto& peak = std::get<sheet::PeakStep>((*step)->body);
  auto judged = judged_reading(desk, **step, peak.channel, command.reading);
  if (!judged) {
    return tl::make_unexpected(judged.error());
  }
  return std::vector<EntryBody>{PeakRead{desk.at(**step), peaks_so_far(desk.state, command.step) + 1,
                                         std::move(judged->reading), most_attempts(desk, peak)}};
}

namespace {

Result<AttemptValue> attempt_value(const Desk& desk, const sheet::Step& step, const sheet::Channel& channel,
                                   const TypedAttemptValue& typed) {
  AttemptValue value{channel.id, std::nullopt, std::nullopt};
  if (!is_blank(typed.before)) {
    auto before = number_typed(step.id + "/" + channel.id + "/before", typed.before, channel.unit);
    if (!before) {
      return tl::make_unexpected(before.error());
    }
    value.before = *before;
  }
  if (!is_blank(typed.after)) {
    auto after = judged_reading(desk, step, channel, {channel.id, typed.after, ""});
    if (!after) {
      return tl::make_unexpected(after.error());
    }
    value.after = std::move(after->reading);
  }
  return value;
}

int attempts_so_far(const JobState& state, std::string_view step_id) {
  int count = 0;
  for (const Entry* entry : state.live(step_id)) {
    count += std::holds_alternative<TeachInTried>(entry->body) ? 1 : 0;
  }
  return count;
}

}  // namespace

Bodies decide_on(const Desk& desk, const TryTeachIn& command) {
  const auto step = step_of_kind<sheet::TeachInStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  TeachInTried tried{desk.at(**step),   attempts_so_far(desk.state, command.step) + 1,
                     command.completed, {},
                     command.code,      command.reason};
  for (const sheet::Channel& channel : std::get<sheet::TeachInStep>((*step)->body).channels) {
    const auto typed = std::find_if(command.values.begin(), command.values.end(),
                                    [&](const TypedAttemptValue& each) { return each.channel == channel.id; });
    if (typed != command.values.end()) {
      auto value = attempt_value(desk, **step, channel, *typed);
      if (!value) {
        return tl::make_unexpected(value.error());
      }
      tried.values.push_back(*std::move(value));
    }
    const bool read_after =
        !tried.values.empty() && tried.values.back().channel == channel.id && tried.values.back().after;
    if (command.completed && !read_after) {
      return refuse("value_missing", command.step + "/" + channel.id + "/after",
                    SHIMWRIGHT_TEXT("job", "A completed teach-in has a value after it: read it and enter it."));
    }
  }
  if (!command.completed && is_blank(command.reason)) {
    return refuse("reason_missing", command.step,
                  SHIMWRIGHT_TEXT("job", "Say why the teach-in broke off, with its code if it shows one."));
  }
  return std::vector<EntryBody>{std::move(tried)};
}

}  // namespace shimwright::job

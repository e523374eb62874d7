#include "round.h"

#include <algorithm>

namespace shimwright::job {

namespace {

bool changes(const AssemblyBegun& begun, Side side) {
  return std::find(begun.sides.begin(), begun.sides.end(), side) != begun.sides.end();
}

int last_change_of(const JobState& state, Side side) {
  int assembly = 1;
  for (const Entry* entry : state.live()) {
    const auto* begun = std::get_if<AssemblyBegun>(&entry->body);
    if (begun != nullptr && changes(*begun, side)) {
      assembly = begun->assembly;
    }
  }
  return assembly;
}

}  // namespace

int round_start(const JobState& state, const sheet::Step& step) {
  switch (step.again) {
    case sheet::Again::never:
      return 1;
    case sheet::Again::strip:
    case sheet::Again::assembly:
      return state.assembly;
    case sheet::Again::side:
      return step.side ? last_change_of(state, *step.side) : 1;
  }
  return 1;
}

std::vector<const Entry*> round_entries(const JobState& state, const sheet::Step& step) {
  const int from = round_start(state, step);
  std::vector<const Entry*> found;
  for (const Entry* entry : state.live(step.id)) {
    if (step_of(entry->body)->assembly >= from) {
      found.push_back(entry);
    }
  }
  return found;
}

std::vector<Question> still_open(const JobState& state, std::string_view step_id, std::int64_t asked_by,
                                 const std::vector<Question>& questions) {
  std::vector<Question> open = questions;
  for (const Entry* entry : state.live(step_id)) {
    const auto* confirmed = std::get_if<Confirmed>(&entry->body);
    if (confirmed != nullptr && entry->seq > asked_by) {
      open.erase(std::remove_if(open.begin(), open.end(),
                                [&](const Question& each) { return each.code == confirmed->question; }),
                 open.end());
    }
  }
  return open;
}

ChannelReadings channel_readings(const JobState& state, const sheet::Step& step) {
  ChannelReadings found;
  std::map<std::string, const Entry*> source;
  for (const Entry* entry : round_entries(state, step)) {
    if (const auto* read = std::get_if<Read>(&entry->body)) {
      for (const Reading& reading : read->readings) {
        found.by_channel[reading.channel] = &reading;
        source[reading.channel] = entry;
      }
    }
  }
  std::set<const Entry*> asked;
  for (const auto& [channel, entry] : source) {
    if (asked.insert(entry).second) {
      const auto open = still_open(state, step.id, entry->seq, std::get<Read>(entry->body).questions);
      found.questions.insert(found.questions.end(), open.begin(), open.end());
    }
  }
  return found;
}

const sheet::Step* step_with_role(const sheet::JobSheet& sheet, sheet::Role role, std::optional<Side> side) {
  for (const sheet::Step* step : sheet.steps()) {
    if (step->role == role && (!side || step->side == side)) {
      return step;
    }
  }
  return nullptr;
}

const Reading* latest_reading(const JobState& state, std::string_view step_id, std::string_view channel) {
  const Reading* found = nullptr;
  for (const Entry* entry : state.live(step_id)) {
    if (const auto* read = std::get_if<Read>(&entry->body)) {
      for (const Reading& reading : read->readings) {
        if (reading.channel == channel) {
          found = &reading;
        }
      }
    }
  }
  return found;
}

}  // namespace shimwright::job

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

/// A reading that was read anew takes its own question with it, not those of the readings entered with it.
bool about(const Question& question, const Reading& reading) {
  return question.code == "hundredths_in_doubt" && !question.message.arguments.empty() &&
         question.message.arguments.front() == quantity::text_of(reading.number);
}

bool about_replaced_reading(const Question& question, const Entry& entry,
                            const std::map<std::string, const Reading*>& current) {
  bool replaced = false;
  for (const Reading& reading : std::get<Read>(entry.body).readings) {
    if (about(question, reading)) {
      if (current.at(reading.channel) == &reading) {
        return false;
      }
      replaced = true;
    }
  }
  return replaced;
}

}  // namespace

bool asked_again(const sheet::Step& step, const AssemblyBegun& begun) {
  switch (step.again) {
    case sheet::Again::never:
      return false;
    case sheet::Again::strip:
    case sheet::Again::assembly:
      return true;
    case sheet::Again::side:
      return step.side && changes(begun, *step.side);
  }
  return false;
}

bool asked_by_engine(std::string_view question) {
  return question == "unit_in_doubt" || question == "dial_reversed";
}

bool advice_stands_on(const EntryBody& body) {
  const auto* confirmed = std::get_if<Confirmed>(&body);
  return std::holds_alternative<ShimTried>(body) || std::holds_alternative<DepthsRead>(body) ||
         std::holds_alternative<FloatRun>(body) || std::holds_alternative<SeriesBegun>(body) ||
         (confirmed != nullptr && asked_by_engine(confirmed->question));
}

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

std::vector<std::string> parts_missing(const JobState& state, const sheet::Step& step) {
  const auto* body = std::get_if<sheet::PartStep>(&step.body);
  std::vector<std::string> missing = body == nullptr ? std::vector<std::string>() : body->parts;
  for (const Entry* entry : round_entries(state, step)) {
    const auto* fitted = std::get_if<PartsFitted>(&entry->body);
    for (const PartFitted& part : fitted == nullptr ? std::vector<PartFitted>() : fitted->parts) {
      missing.erase(std::remove(missing.begin(), missing.end(), part.part), missing.end());
    }
  }
  return missing;
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
      for (const Question& each : still_open(state, step.id, entry->seq, std::get<Read>(entry->body).questions)) {
        if (!about_replaced_reading(each, *entry, found.by_channel)) {
          found.questions.push_back(each);
        }
      }
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

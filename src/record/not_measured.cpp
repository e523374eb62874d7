#include "gather.h"

namespace shimwright::record {

namespace {

bool measures(const sheet::StepBody& body) {
  return std::holds_alternative<sheet::ReadStep>(body) || std::holds_alternative<sheet::PeakStep>(body) ||
         std::holds_alternative<sheet::GaugeFitStep>(body) || std::holds_alternative<sheet::DepthStep>(body) ||
         std::holds_alternative<sheet::FloatStep>(body) || std::holds_alternative<sheet::TeachInStep>(body);
}

bool is_a_measurement(const job::EntryBody& body) {
  return std::holds_alternative<job::Read>(body) || std::holds_alternative<job::PeakRead>(body) ||
         std::holds_alternative<job::ShimTried>(body) || std::holds_alternative<job::DepthsRead>(body) ||
         std::holds_alternative<job::FloatRun>(body) || std::holds_alternative<job::TeachInTried>(body);
}

bool measured_anywhere(const Source& source, const std::string& step) {
  for (const job::Entry* entry : source.state.live(step)) {
    if (is_a_measurement(entry->body)) {
      return true;
    }
  }
  return false;
}

const job::Entry* entry_numbered(const Source& source, std::int64_t seq) {
  const auto& entries = source.state.entries;
  return seq >= 1 && static_cast<std::size_t>(seq) <= entries.size() ? &entries[static_cast<std::size_t>(seq - 1)]
                                                                     : nullptr;
}

/// The entry that gave the reason, where the step was passed with one.
const job::Entry* reason_entry(const Source& source, const job::StepState& state) {
  if (const auto* taken = std::get_if<job::DeviationTaken>(&state)) {
    return entry_numbered(source, taken->entry);
  }
  const auto* said = std::get_if<job::SaidNotRequired>(&state);
  return said == nullptr ? nullptr : entry_numbered(source, said->entry);
}

NotMeasured line_for(const Source& source, const sheet::Step& step) {
  NotMeasured line;
  line.place = place_of(source, step.id, source.state.assembly);
  if (const job::Entry* entry = reason_entry(source, source.state.step(step.id))) {
    line.stamp = stamp_of(source, *entry);
    if (const auto* deviated = std::get_if<job::Deviated>(&entry->body)) {
      line.why = WhyNotMeasured::deviation;
      line.reason = deviated->reason;
    } else if (const auto* said = std::get_if<job::NotRequired>(&entry->body)) {
      line.why = WhyNotMeasured::not_required;
      line.reason = said->reason;
    }
  }
  return line;
}

bool channel_read(const Source& source, const std::string& step, const std::string& channel) {
  for (const job::Entry* entry : source.state.live(step)) {
    const auto* read = std::get_if<job::Read>(&entry->body);
    for (std::size_t at = 0; read != nullptr && at < read->readings.size(); ++at) {
      if (read->readings[at].channel == channel) {
        return true;
      }
    }
  }
  return false;
}

/// Of a step that was read in part: what is missing.
void add_missing_channels(const Source& source, const sheet::Step& step, std::vector<NotMeasured>& found) {
  const auto* body = std::get_if<sheet::ReadStep>(&step.body);
  for (std::size_t at = 0; body != nullptr && at < body->channels.size(); ++at) {
    if (!channel_read(source, step.id, body->channels[at].id)) {
      NotMeasured line = line_for(source, step);
      line.place.title += ": " + text_of(source, body->channels[at].title);
      found.push_back(std::move(line));
    }
  }
}

}  // namespace

std::vector<NotMeasured> not_measured(const Source& source) {
  std::vector<NotMeasured> found;
  for (const sheet::Step* step : steps_of(source)) {
    const job::StepState& state = source.state.step(step->id);
    const bool asked = !std::holds_alternative<job::NotAsked>(state);
    const bool again_open = std::holds_alternative<job::Open>(state);
    if (!measures(step->body) || !asked) {
      continue;
    }
    if (again_open || !measured_anywhere(source, step->id)) {
      found.push_back(line_for(source, *step));
    } else {
      add_missing_channels(source, *step, found);
    }
  }
  return found;
}

}  // namespace shimwright::record

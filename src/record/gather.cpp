#include "gather.h"

#include <algorithm>

namespace shimwright::record {

namespace {

SheetHead head_of(const Source& source, const sheet::JobSheet& sheet, const std::string& hash) {
  SheetHead head;
  head.id = sheet.id;
  head.name = sheet.name;
  head.title = text_of(source, sheet.title);
  head.issue = sheet.issue;
  head.hash = hash;
  head.demonstration = sheet.demonstration;
  return head;
}

SheetHead head_of(const Source& source, const sheet::SpecSheet& spec, const std::string& hash) {
  SheetHead head;
  head.id = spec.id;
  head.name = spec.gearbox;
  head.title = text_of(source, spec.title);
  head.issue = spec.issue;
  head.hash = hash;
  head.source = spec.source;
  head.demonstration = spec.demonstration;
  return head;
}

std::vector<const sheet::Channel*> channels_of(const sheet::Step& step) {
  std::vector<const sheet::Channel*> found;
  const auto add_all = [&](const std::vector<sheet::Channel>& channels) {
    for (const sheet::Channel& channel : channels) {
      found.push_back(&channel);
    }
  };
  if (const auto* read = std::get_if<sheet::ReadStep>(&step.body)) {
    add_all(read->channels);
  } else if (const auto* teach_in = std::get_if<sheet::TeachInStep>(&step.body)) {
    add_all(teach_in->channels);
  } else if (const auto* peak = std::get_if<sheet::PeakStep>(&step.body)) {
    found.push_back(&peak->channel);
  }
  return found;
}

std::vector<std::pair<std::string, PersonName>> people_of(const Source& source) {
  std::map<std::string, PersonName> people;
  const auto add = [&](const std::string& id) {
    const auto known = source.names.persons.find(id);
    people[id] = known == source.names.persons.end() ? PersonName{"?", ""} : known->second;
  };
  for (const job::Entry& entry : source.state.entries) {
    add(entry.person);
    if (const auto* handed = std::get_if<job::HandedOver>(&entry.body)) {
      add(handed->to);
    }
  }
  return {people.begin(), people.end()};
}

/// The last sign step signed, or left out with a reason.
const job::Entry* closing_entry(const Source& source) {
  const auto steps = steps_of(source);
  const job::Entry* closing = nullptr;
  for (const job::Entry* entry : source.live) {
    const bool closes =
        std::holds_alternative<job::Signed>(entry->body) || std::holds_alternative<job::Deviated>(entry->body);
    if (closes && !steps.empty() && job::step_of(entry->body)->step == steps.back()->id) {
      closing = entry;
    }
  }
  return closing;
}

}  // namespace

Source source_of(const job::JobState& state, const RecordNames& names) {
  return {state, names, state.opened ? state.opened->language : std::string("en"), state.live()};
}

std::string initials_of(const Source& source, const std::string& person) {
  const auto found = source.names.persons.find(person);
  return found == source.names.persons.end() ? "?" : found->second.initials;
}

Stamp stamp_of(const Source& source, const job::Entry& entry) {
  return {entry.seq, entry.moment, entry.person, initials_of(source, entry.person)};
}

const sheet::Step* step_named(const Source& source, std::string_view id) {
  return source.state.sheets.job ? source.state.sheets.job->find(id) : nullptr;
}

std::vector<const sheet::Step*> steps_of(const Source& source) {
  return source.state.sheets.job ? source.state.sheets.job->steps() : std::vector<const sheet::Step*>{};
}

std::string text_of(const Source& source, const sheet::Text& text) {
  return text.by_language.empty() ? std::string() : text.in(source.language);
}

Place place_of(const Source& source, const std::string& step, int assembly) {
  Place place{step, step, "", assembly, false};
  if (!source.state.sheets.job) {
    return place;
  }
  const sheet::Stage* stage = source.state.sheets.job->stage_of(step);
  const sheet::Step* found = source.state.sheets.job->find(step);
  if (stage != nullptr && found != nullptr) {
    place.title = text_of(source, found->title);
    place.stage = text_of(source, stage->title);
    place.once = found->again == sheet::Again::never;
  }
  return place;
}

const sheet::Channel* channel_named(const sheet::Step* step, std::string_view id) {
  if (step == nullptr) {
    return nullptr;
  }
  const auto channels = channels_of(*step);
  const auto found = std::find_if(channels.begin(), channels.end(), [&](const auto* each) { return each->id == id; });
  return found == channels.end() ? nullptr : *found;
}

std::string channel_title(const Source& source, const sheet::Step* step, const std::string& channel) {
  const sheet::Channel* found = channel_named(step, channel);
  return found == nullptr ? channel : text_of(source, found->title);
}

bool is_only_channel(const sheet::Step* step) {
  return step == nullptr || channels_of(*step).size() < 2;
}

std::optional<Personal> personal_of(const Source& source, const std::optional<job::PrivateReference>& reference) {
  if (!reference) {
    return std::nullopt;
  }
  const auto found = source.names.texts.find(reference->id);
  return Personal{reference->id, reference->digest, found == source.names.texts.end() ? std::nullopt : found->second};
}

ReadingLine reading_line(const Source& source, const job::Entry& entry, const job::StepRef& at,
                         const job::Reading& reading) {
  const sheet::Step* step = step_named(source, at.step);
  const sheet::Channel* channel = channel_named(step, reading.channel);
  ReadingLine line;
  line.stamp = stamp_of(source, entry);
  line.place = place_of(source, at.step, at.assembly);
  line.side = step == nullptr ? std::nullopt : step->side;
  line.channel = reading.channel;
  line.channel_title = channel_title(source, step, reading.channel);
  line.only_channel = is_only_channel(step);
  line.number = reading.number;
  line.verdict = reading.verdict;
  line.limit = reading.limit;
  line.has_sign = channel != nullptr && channel->signed_value;
  if (channel != nullptr && channel->equals) {
    line.must_equal = place_of(source, channel->equals->step, 1).title;
  }
  line.instrument = reading.instrument;
  return line;
}

JobHead job_head(const Source& source) {
  const job::JobState& state = source.state;
  JobHead head;
  head.language = source.language;
  head.assembly = state.assembly;
  head.people = people_of(source);
  if (state.opened) {
    head.number = state.opened->number;
  }
  if (!state.entries.empty()) {
    head.opened = stamp_of(source, state.entries.front());
  }
  if (state.sheets.job) {
    head.sheet = head_of(source, *state.sheets.job, state.sheets.job_hash);
    const sheet::Step* next = state.next_step();
    head.next_step = next == nullptr ? std::nullopt : std::optional(text_of(source, next->title));
  }
  if (state.sheets.spec) {
    head.spec = head_of(source, *state.sheets.spec, state.sheets.spec_hash);
  }
  const job::Entry* closing = state.closed ? closing_entry(source) : nullptr;
  head.closed = closing == nullptr ? std::nullopt : std::optional(stamp_of(source, *closing));
  return head;
}

Vehicle vehicle(const Source& source) {
  Vehicle shown;
  if (!source.state.opened) {
    return shown;
  }
  const job::Opened& opened = *source.state.opened;
  shown.key = opened.vehicle_key;
  shown.chassis_reason = opened.chassis_reason;
  shown.plate = personal_of(source, opened.plate);
  shown.customer_reference = personal_of(source, opened.customer_reference);
  shown.complaint = personal_of(source, opened.complaint);
  shown.odometer = opened.odometer;
  shown.gearbox = opened.gearbox;
  shown.gearbox_serial = opened.gearbox_serial;
  shown.build_date = opened.build_date;
  return shown;
}

}  // namespace shimwright::record

#include "gather.h"

namespace shimwright::record {

namespace {

bool stands_with_the_shims(const sheet::Step* step) {
  return step != nullptr && step->side && (step->role == sheet::Role::old_shim || step->role == sheet::Role::new_shim);
}

/// The later of two readings of one channel in one assembly counts; the earlier stays and says so.
void mark_entered_again(std::vector<ReadingLine>& lines) {
  for (std::size_t later = 0; later < lines.size(); ++later) {
    for (std::size_t earlier = 0; earlier < later; ++earlier) {
      const ReadingLine& new_line = lines[later];
      ReadingLine& old_line = lines[earlier];
      if (old_line.place.step == new_line.place.step && old_line.place.assembly == new_line.place.assembly &&
          old_line.channel == new_line.channel) {
        old_line.entered_again = true;
      }
    }
  }
}

}  // namespace

std::vector<ReadingLine> readings(const Source& source) {
  std::vector<ReadingLine> lines;
  for (const job::Entry* entry : source.live) {
    const auto* read = std::get_if<job::Read>(&entry->body);
    if (read == nullptr || stands_with_the_shims(step_named(source, read->at.step))) {
      continue;
    }
    for (const job::Reading& reading : read->readings) {
      lines.push_back(reading_line(source, *entry, read->at, reading));
    }
  }
  mark_entered_again(lines);
  return lines;
}

std::vector<ReadingLine> peaks(const Source& source) {
  std::vector<ReadingLine> lines;
  for (const job::Entry* entry : source.live) {
    if (const auto* peak = std::get_if<job::PeakRead>(&entry->body)) {
      lines.push_back(reading_line(source, *entry, peak->at, peak->reading));
      lines.back().attempt = peak->attempt;
      lines.back().most_attempts = peak->most_attempts;
    }
  }
  return lines;
}

std::vector<TeachIn> teach_ins(const Source& source) {
  std::vector<TeachIn> attempts;
  for (const job::Entry* entry : source.live) {
    const auto* tried = std::get_if<job::TeachInTried>(&entry->body);
    if (tried == nullptr) {
      continue;
    }
    TeachIn attempt;
    attempt.stamp = stamp_of(source, *entry);
    attempt.place = place_of(source, tried->at.step, tried->at.assembly);
    attempt.attempt = tried->attempt;
    attempt.completed = tried->completed;
    attempt.code = tried->code;
    attempt.reason = tried->reason;
    const sheet::Step* step = step_named(source, tried->at.step);
    for (const job::AttemptValue& value : tried->values) {
      attempt.values.push_back({value.channel, channel_title(source, step, value.channel), value.before, value.after});
    }
    attempts.push_back(std::move(attempt));
  }
  return attempts;
}

std::vector<PartLine> parts(const Source& source) {
  std::vector<PartLine> lines;
  for (const job::Entry* entry : source.live) {
    const auto* fitted = std::get_if<job::PartsFitted>(&entry->body);
    if (fitted == nullptr) {
      continue;
    }
    for (const job::PartFitted& part : fitted->parts) {
      const sheet::PartItem* item = source.state.sheets.spec ? source.state.sheets.spec->part(part.part) : nullptr;
      lines.push_back({stamp_of(source, *entry), place_of(source, fitted->at.step, fitted->at.assembly), part.part,
                       item == nullptr ? part.part : text_of(source, item->title), part.number, part.quantity,
                       part.batch});
    }
  }
  return lines;
}

std::vector<WorkValueLine> work_values(const Source& source) {
  std::vector<WorkValueLine> lines;
  if (source.state.sheets.spec) {
    for (const auto& [id, value] : source.state.sheets.spec->work_values) {
      lines.push_back({id, text_of(source, value.title), value.value, value.source});
    }
  }
  return lines;
}

}  // namespace shimwright::record

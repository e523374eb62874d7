#include "gather.h"
#include "wording.h"

namespace shimwright::record {

std::vector<NoteLine> notes(const Source& source) {
  std::vector<NoteLine> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* note = std::get_if<job::Noted>(&entry->body)) {
      const auto place =
          note->step ? std::optional(place_of(source, *note->step, source.state.assembly)) : std::nullopt;
      found.push_back({stamp_of(source, *entry), place, note->text});
    }
  }
  return found;
}

std::vector<Stop> stops(const Source& source) {
  std::vector<Stop> found;
  for (const job::Entry* entry : source.live) {
    Stop stop;
    stop.stamp = stamp_of(source, *entry);
    if (const auto* parked = std::get_if<job::Parked>(&entry->body)) {
      stop.kind = StopKind::parked;
      stop.text = parked->waits_for;
      stop.due = parked->due;
    } else if (const auto* taken = std::get_if<job::TakenUp>(&entry->body)) {
      stop.kind = StopKind::taken_up;
      for (const std::string& step : taken->unproven) {
        stop.unproven.push_back(place_of(source, step, source.state.assembly).title);
      }
    } else if (const auto* handed = std::get_if<job::HandedOver>(&entry->body)) {
      stop.kind = StopKind::handed_over;
      stop.text = handed->remark;
      stop.to = initials_of(source, handed->to);
    } else {
      continue;
    }
    found.push_back(std::move(stop));
  }
  return found;
}

std::vector<Assembly> assemblies(const Source& source) {
  std::vector<Assembly> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* begun = std::get_if<job::AssemblyBegun>(&entry->body)) {
      found.push_back({stamp_of(source, *entry), begun->assembly, begun->sides, begun->reason});
    }
  }
  return found;
}

std::vector<TakenBack> taken_back(const Source& source) {
  std::vector<TakenBack> found;
  for (const job::Entry& entry : source.state.entries) {
    const auto* withdrawal = std::get_if<job::Withdrawn>(&entry.body);
    if (withdrawal == nullptr) {
      continue;
    }
    TakenBack line;
    line.stamp = stamp_of(source, entry);
    line.reason = withdrawal->reason;
    const auto at = static_cast<std::size_t>(withdrawal->entry - 1);
    if (withdrawal->entry >= 1 && at < source.state.entries.size()) {
      const job::Entry& target = source.state.entries[at];
      line.entered = stamp_of(source, target);
      if (const job::StepRef* step = job::step_of(target.body)) {
        line.place = place_of(source, step->step, step->assembly);
      }
      line.what = what_was_entered(source, target);
    }
    found.push_back(std::move(line));
  }
  return found;
}

}  // namespace shimwright::record

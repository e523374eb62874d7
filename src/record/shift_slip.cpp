#include "shimwright/record/shift_slip.h"

#include <algorithm>

#include "gather.h"
#include "page_writer.h"
#include "shimwright/job/standing.h"
#include "shimwright/job/to_decide.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr std::size_t most_notes = 3;
constexpr double slip_pitch_mm = 5.2;

std::string float_text(const Record& record, Side side) {
  for (const FloatSeries& series : record.floats) {
    if (series.side == side && series.latest && !series.as_found && series.judged && series.judged->mean) {
      return say(
          SHIMWRIGHT_TEXT("record", "{0} mm, {1}"),
          {millimetre_digits(*series.judged->mean), disc_verdict_word(disc_verdict(series.judged->spot_verdicts))});
    }
  }
  return {};
}

std::vector<SlipSide> sides_of(const job::JobState& state, const Record& record) {
  std::vector<SlipSide> sides;
  for (const Side side : {Side::lower, Side::upper}) {
    const auto shim = state.shims.find(side);
    sides.push_back({side, shim == state.shims.end() ? std::string() : shim->second, float_text(record, side)});
  }
  return sides;
}

std::string last_entry(const Source& source, const Record& record) {
  if (source.live.empty()) {
    return {};
  }
  const job::Entry& entry = *source.live.back();
  std::vector<std::string> said;
  for (const Message& each : what_was_entered(source, entry)) {
    said.push_back(each.in_english());
  }
  said.push_back(who_when(stamp_of(source, entry), record.job.opened.moment));
  return joined(said, ", ");
}

std::vector<std::string> parts_to_do(const Source& source) {
  std::vector<std::string> lines;
  for (const sheet::Step* step : steps_of(source)) {
    if (job::passed(source.state.step(step->id))) {
      continue;
    }
    for (const std::string& id : job::parts_to_renew(source.state, *step)) {
      if (const sheet::PartItem* part = source.state.sheets.spec->part(id)) {
        lines.push_back(say(SHIMWRIGHT_TEXT("record", "{0} × {1}, {2}"),
                            {std::to_string(part->quantity), text_of(source, part->title), part->number}));
      }
    }
  }
  return lines;
}

void add_open_points(ShiftSlip& slip, const Source& source) {
  for (const job::OpenPoint& point : job::to_decide(source.state)) {
    const sheet::Step* step = step_named(source, point.step);
    if (point.kind == job::PointKind::unproven) {
      slip.look_again.push_back(step != nullptr ? text_of(source, step->title) : point.step);
    } else if (point.kind == job::PointKind::question || point.kind == job::PointKind::finding) {
      slip.to_decide.push_back(point.message.in_english());
    }
  }
}

void add_standing(ShiftSlip& slip, const Source& source) {
  const job::JobState& state = source.state;
  if (const std::optional<job::Parked>& parked = state.parked; parked) {
    slip.waits_for = parked->waits_for;
    slip.due = parked->due.value_or(std::string());
  }
  if (const std::optional<std::string>& person = state.at_bench; person) {
    const auto name = source.names.persons.find(*person);
    slip.handed_to = name == source.names.persons.end() ? *person : name->second.name;
  }
  if (const sheet::Step* next = state.closed ? nullptr : state.next_step(); next != nullptr) {
    const Place place = place_of(source, next->id, state.assembly);
    slip.next_step = place.title;
    slip.next_stage = place.stage;
    slip.next_is_hold_point = next->hold_point;
  }
}

/// Heading and its lines, each broken where it must be; nothing where there is nothing to say.
void section(PageWriter& writer, const std::string& title, const std::vector<std::string>& lines) {
  if (lines.empty()) {
    return;
  }
  writer.heading(title, slip_pitch_mm);
  for (const std::string& each : lines) {
    writer.paragraph({{each, FontRole::result, Ink::text}}, slip_pitch_mm);
  }
}

std::vector<std::string> standing_lines(const ShiftSlip& slip) {
  std::vector<std::string> lines;
  if (slip.sealed) {
    lines.push_back(SHIMWRIGHT_TEXT("record", "Finished and sealed: nothing is left to do."));
  } else if (slip.closed) {
    lines.push_back(SHIMWRIGHT_TEXT("record", "Finished: nothing is left to do but to seal the record."));
  } else if (slip.waits_for.empty()) {
    lines.push_back(SHIMWRIGHT_TEXT("record", "In work."));
  } else {
    lines.push_back(slip.due.empty() ? say(SHIMWRIGHT_TEXT("record", "Parked, waiting for {0}."), {slip.waits_for})
                                     : say(SHIMWRIGHT_TEXT("record", "Parked, waiting for {0}, due {1}."),
                                           {slip.waits_for, slip.due}));
  }
  if (!slip.handed_to.empty() && !slip.closed) {
    lines.push_back(say(SHIMWRIGHT_TEXT("record", "At the bench: {0}."), {slip.handed_to}));
  }
  if (!slip.last.empty()) {
    lines.push_back(say(SHIMWRIGHT_TEXT("record", "Last: {0}"), {slip.last}));
  }
  return lines;
}

std::vector<std::string> next_lines(const ShiftSlip& slip) {
  if (slip.next_step.empty()) {
    return {};
  }
  const std::string hold = slip.next_is_hold_point ? say(SHIMWRIGHT_TEXT("record", " (hold point)")) : std::string();
  return {say(SHIMWRIGHT_TEXT("record", "{0}: {1}{2}"), {slip.next_stage, slip.next_step, hold})};
}

std::vector<std::string> side_lines(const ShiftSlip& slip) {
  std::vector<std::string> lines;
  for (const SlipSide& each : slip.sides) {
    const std::string shim = each.shim.empty() ? say(SHIMWRIGHT_TEXT("record", "no shim chosen"))
                                               : say(SHIMWRIGHT_TEXT("record", "shim {0}"), {each.shim});
    const std::string judged = each.last_float.empty() ? say(SHIMWRIGHT_TEXT("record", "float not measured yet"))
                                                       : say(SHIMWRIGHT_TEXT("record", "float {0}"), {each.last_float});
    lines.push_back(say(SHIMWRIGHT_TEXT("record", "{0} bearing, {1} disc: {2}, {3}"),
                        {bearing_word(each.side), disc_word(each.side), shim, judged}));
  }
  return lines;
}

}  // namespace

ShiftSlip make_shift_slip(const job::JobState& state, const RecordNames& names) {
  const Record record = make_record(state, names);
  const Source source = source_of(state, names);
  ShiftSlip slip;
  slip.workshop_name = names.workshop_name;
  slip.workshop_address = names.workshop_address;
  slip.number = record.job.number;
  slip.vehicle = record.vehicle.key;
  slip.plate = record.vehicle.plate && record.vehicle.plate->content ? record.vehicle.plate->content->text : "";
  slip.gearbox = record.vehicle.gearbox;
  slip.assembly = state.assembly;
  slip.demonstration = record.demonstration();
  slip.closed = state.closed;
  slip.sealed = state.sealed.has_value();
  slip.last = last_entry(source, record);
  slip.sides = sides_of(state, record);
  if (state.opened) {
    add_standing(slip, source);
    add_open_points(slip, source);
    slip.parts_to_do = state.closed ? std::vector<std::string>() : parts_to_do(source);
  }
  const std::size_t shown = std::min(most_notes, record.notes.size());
  for (auto note = record.notes.rbegin(); note != record.notes.rbegin() + static_cast<std::ptrdiff_t>(shown); ++note) {
    slip.notes.push_back(joined({note->text, who_when(note->stamp, record.job.opened.moment)}, ", "));
  }
  return slip;
}

std::vector<Page> lay_out_shift_slip(const ShiftSlip& slip, const TextMeasure& measure) {
  PageHead head;
  head.workshop = slip.workshop_name;
  head.address = slip.workshop_address;
  head.title = say(SHIMWRIGHT_TEXT("record", "Next shift"));
  head.job = say(SHIMWRIGHT_TEXT("record", "Job {0}"), {slip.number});
  head.mark = slip.demonstration ? SHIMWRIGHT_TEXT("record", "DEMONSTRATION VALUES") : "";
  PageWriter writer(PaperSize::a5, measure, head);
  writer.paragraph({{slip.vehicle, FontRole::vehicle, Ink::text}}, 8);
  const std::string plate = slip.plate.empty() ? std::string() : slip.plate;
  writer.paragraph({{joined({plate, say(SHIMWRIGHT_TEXT("record", "gearbox {0}"), {slip.gearbox}),
                             say(SHIMWRIGHT_TEXT("record", "assembly {0}"), {std::to_string(slip.assembly)})},
                            " · "),
                     FontRole::result, Ink::soft}},
                   slip_pitch_mm);
  section(writer, say(SHIMWRIGHT_TEXT("record", "Next")), next_lines(slip));
  section(writer, say(SHIMWRIGHT_TEXT("record", "Look again first: it may have moved")), slip.look_again);
  section(writer, say(SHIMWRIGHT_TEXT("record", "To decide")), slip.to_decide);
  section(writer, say(SHIMWRIGHT_TEXT("record", "How it stands")), standing_lines(slip));
  section(writer, say(SHIMWRIGHT_TEXT("record", "In the gearbox now")), side_lines(slip));
  section(writer, say(SHIMWRIGHT_TEXT("record", "Parts still to renew")), slip.parts_to_do);
  section(writer, say(SHIMWRIGHT_TEXT("record", "Notes")), slip.notes);
  writer.gap(3);
  writer.paragraph(
      {{SHIMWRIGHT_TEXT("record",
                        "This slip is no record: what counts stands in the job. Read the cautions of a step "
                        "there before going on."),
        FontRole::small, Ink::soft}},
      body_pitch_mm);
  return writer.finish();
}

}  // namespace shimwright::record

#include <algorithm>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

std::string answer_text(const Answer& answer) {
  switch (answer.kind) {
    case AnswerKind::done:
      return SHIMWRIGHT_TEXT("record", "done");
    case AnswerKind::in_order:
      return SHIMWRIGHT_TEXT("record", "in order");
    case AnswerKind::not_in_order:
      return say(SHIMWRIGHT_TEXT("record", "not in order: {0}"), {answer.text});
    case AnswerKind::not_required:
      return say(SHIMWRIGHT_TEXT("record", "not required: {0}"), {answer.text});
    case AnswerKind::chosen:
    case AnswerKind::written:
      return answer.text;
  }
  return "";
}

/// What a reader of the paper looks for: hold points, whatever was chosen or written, whatever was not in order.
bool worth_printing(const Answer& answer) {
  return answer.hold_point || (answer.kind != AnswerKind::done && answer.kind != AnswerKind::in_order);
}

void write_paragraphs(PageWriter& writer, const std::string& title, const std::vector<std::string>& texts) {
  if (texts.empty()) {
    return;
  }
  writer.heading(title, 2 * body_pitch_mm);
  writer.gap(0.8);
  for (const std::string& text : texts) {
    writer.paragraph({{text}}, body_pitch_mm);
  }
}

std::string stop_text(const Stop& stop) {
  std::string text;
  if (stop.kind == StopKind::parked) {
    text = stop.due ? say(SHIMWRIGHT_TEXT("record", "parked, waits for {0}, due {1}"), {stop.text, *stop.due})
                    : say(SHIMWRIGHT_TEXT("record", "parked, waits for {0}"), {stop.text});
  } else if (stop.kind == StopKind::taken_up) {
    text = stop.unproven.empty()
               ? std::string(SHIMWRIGHT_TEXT("record", "taken up"))
               : say(SHIMWRIGHT_TEXT("record", "taken up; asked again: {0}"), {joined(stop.unproven, "; ")});
  } else {
    text = say(SHIMWRIGHT_TEXT("record", "handed over to {0}"), {stop.to.value_or("?")});
    text += stop.text.empty() ? "" : ": “" + stop.text + "”";
  }
  return text;
}

std::string note_text(const NoteLine& note) {
  return note.place ? say(SHIMWRIGHT_TEXT("record", "note at “{0}”: {1}"), {note.place->title, note.text})
                    : say(SHIMWRIGHT_TEXT("record", "note: {0}"), {note.text});
}

std::string assembly_text(const Assembly& each) {
  std::vector<std::string> sides;
  for (const Side side : each.sides) {
    sides.push_back(side == Side::lower ? SHIMWRIGHT_TEXT("record", "large bearing's shim")
                                        : SHIMWRIGHT_TEXT("record", "small bearing's shim"));
  }
  const std::string change = sides.empty() ? std::string(SHIMWRIGHT_TEXT("record", "no shim")) : joined(sides, ", ");
  return say(SHIMWRIGHT_TEXT("record", "pack off again, assembly {0} begun, to change: {1}; “{2}”"),
             {std::to_string(each.assembly), change, each.reason});
}

std::string confirmation_text(const Confirmation& each) {
  return say(SHIMWRIGHT_TEXT("record", "“{0}”, asked: {1} Confirmed as it stands: “{2}”"),
             {each.place.title, each.asked ? each.asked->in_english() : each.question, each.remark});
}

struct Event {
  Stamp stamp;
  std::string text;
};

std::vector<Event> events_of(const Record& record) {
  std::vector<Event> events;
  const auto add = [&](const auto& list, const auto& text) {
    for (const auto& each : list) {
      events.push_back({each.stamp, text(each)});
    }
  };
  add(record.assemblies, assembly_text);
  add(record.stops, stop_text);
  add(record.notes, note_text);
  add(record.confirmations, confirmation_text);
  std::sort(events.begin(), events.end(),
            [](const Event& one, const Event& other) { return one.stamp.entry < other.stamp.entry; });
  return events;
}

}  // namespace

namespace {

/// The first is not spoken of, and a step asked once has none.
int shown_assembly(const Place& place) {
  return place.once ? 1 : place.assembly;
}

/// Answers of one stage, assembly and person that follow each other: one paragraph.
bool together(const Answer& one, const Answer& other) {
  return one.place.stage == other.place.stage && shown_assembly(one.place) == shown_assembly(other.place) &&
         one.stamp.person == other.stamp.person;
}

void add_answer(std::vector<Span>& spans, const Answer& answer, bool last) {
  const std::string title = answer.place.title;
  const bool asks = !title.empty() && title.back() == '?';
  spans.push_back({title + (asks ? " " : ": "), answer.hold_point ? FontRole::strong : FontRole::body, Ink::soft});
  spans.push_back({answer_text(answer) + (last ? "" : ";") + " "});
}

void write_group(PageWriter& writer, const std::vector<const Answer*>& group, const job::Moment& beside) {
  const Answer& first = *group.front();
  const int assembly = shown_assembly(first.place);
  const std::string head = assembly == 1 ? first.place.stage
                                         : say(SHIMWRIGHT_TEXT("record", "{0}, assembly {1}"),
                                               {first.place.stage, std::to_string(assembly)});
  const std::string when = group.size() == 1
                               ? who_when(first.stamp, beside)
                               : say(SHIMWRIGHT_TEXT("record", "{0} to {1}"),
                                     {who_when(first.stamp, beside), short_time(group.back()->stamp.moment, beside)});
  std::vector<Span> spans = {{head + " (" + when + "). ", FontRole::body}};
  for (const Answer* answer : group) {
    add_answer(spans, *answer, answer == group.back());
  }
  writer.paragraph(spans, body_pitch_mm);
}

}  // namespace

void write_answers(PageWriter& writer, const Record& record) {
  std::vector<std::vector<const Answer*>> groups;
  std::size_t others = 0;
  for (const Answer& answer : record.answers) {
    if (!worth_printing(answer)) {
      ++others;
    } else if (!groups.empty() && together(*groups.back().back(), answer)) {
      groups.back().push_back(&answer);
    } else {
      groups.push_back({&answer});
    }
  }
  if (groups.empty()) {
    return;
  }
  writer.heading(SHIMWRIGHT_TEXT("record", "Answers; hold points in bold"), 2 * body_pitch_mm);
  writer.gap(0.8);
  for (const auto& group : groups) {
    write_group(writer, group, record.job.opened.moment);
  }
  if (others > 0) {
    writer.paragraph({{counted(others, SHIMWRIGHT_TEXT("record", "One other step done or in order."),
                               SHIMWRIGHT_TEXT("record", "{0} other steps done or in order.")),
                       FontRole::small, Ink::soft}},
                     body_pitch_mm);
  }
}

void write_course(PageWriter& writer, const Record& record) {
  std::vector<std::string> texts;
  for (const Event& event : events_of(record)) {
    texts.push_back(who_when(event.stamp, record.job.opened.moment) + ": " + event.text);
  }
  if (!record.clock_went_back.empty()) {
    std::vector<std::string> entries;
    for (const std::int64_t entry : record.clock_went_back) {
      entries.push_back(std::to_string(entry));
    }
    texts.push_back(say(SHIMWRIGHT_TEXT("record",
                                        "The clock had been set back before entry {0}; the order is that of "
                                        "the entries, not of the clock."),
                        {joined(entries, ", ")}));
  }
  write_paragraphs(writer, SHIMWRIGHT_TEXT("record", "Course of the job"), texts);
}

void write_taken_back(PageWriter& writer, const Record& record) {
  std::vector<std::string> texts;
  for (const TakenBack& each : record.taken_back) {
    std::vector<std::string> what;
    for (const Message& message : each.what) {
      what.push_back(message.in_english());
    }
    const std::string place = each.place ? each.place->title + ": " : "";
    texts.push_back(say(SHIMWRIGHT_TEXT("record", "{0}{1} (entered by {2}), taken back by {3}: “{4}”."),
                        {place, joined(what, "; "), who_when(each.entered, record.job.opened.moment),
                         who_when(each.stamp, record.job.opened.moment), each.reason}));
  }
  write_paragraphs(writer, SHIMWRIGHT_TEXT("record", "Taken back"), texts);
}

void write_work_values(PageWriter& writer, const Record& record) {
  std::vector<std::string> values;
  for (const WorkValueLine& line : record.work_values) {
    values.push_back(say(SHIMWRIGHT_TEXT("record", "{0}: {1} ({2})"), {line.title, line.value, line.source}));
  }
  if (!values.empty()) {
    write_paragraphs(writer, SHIMWRIGHT_TEXT("record", "Values of the spec sheet worked to, nothing judged by them"),
                     {joined(values, "; ") + "."});
  }
}

void write_photos(PageWriter& writer, const Record& record) {
  std::vector<std::string> texts;
  for (const Photo& photo : record.photos) {
    const std::string caption = photo.caption.empty() ? "" : "“" + photo.caption + "”, ";
    texts.push_back(
        say(SHIMWRIGHT_TEXT("record", "{0}: {1}{2}, file {3}…"),
            {photo.place.title, caption, who_when(photo.stamp, record.job.opened.moment), photo.sha256.substr(0, 12)}));
  }
  if (!texts.empty()) {
    write_paragraphs(writer, SHIMWRIGHT_TEXT("record", "Photos, kept with the job"), {joined(texts, "; ")});
  }
}

}  // namespace shimwright::record

#include <algorithm>
#include <map>

#include "reading_label.h"
#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

bool judged(const ReadingLine& line) {
  return line.limit || line.must_equal || line.attempt || line.verdict != ReadingVerdict::none;
}

/// Readings and peaks of one step stand together, steps in the order they were first answered.
std::vector<const ReadingLine*> by_step(const Record& record, bool with_limit) {
  std::vector<const ReadingLine*> lines;
  std::map<std::string, std::int64_t> first;
  for (const auto* list : {&record.readings, &record.peaks}) {
    for (const ReadingLine& line : *list) {
      if (judged(line) == with_limit) {
        lines.push_back(&line);
        const auto known = first.emplace(line.place.step, line.stamp.entry).first;
        known->second = std::min(known->second, line.stamp.entry);
      }
    }
  }
  std::stable_sort(lines.begin(), lines.end(), [&](const ReadingLine* one, const ReadingLine* other) {
    return std::pair(first[one->place.step], one->stamp.entry) <
           std::pair(first[other->place.step], other->stamp.entry);
  });
  return lines;
}

/// Readings that were entered together and judged alike: one row.
using Group = std::vector<const ReadingLine*>;

bool alike(const ReadingLine& one, const ReadingLine& other) {
  return one.stamp.entry == other.stamp.entry && one.verdict == other.verdict && one.limit == other.limit &&
         one.must_equal == other.must_equal && one.instrument == other.instrument &&
         one.entered_again == other.entered_again;
}

std::vector<Group> grouped(const std::vector<const ReadingLine*>& lines) {
  std::vector<Group> groups;
  for (const ReadingLine* line : lines) {
    if (!groups.empty() && alike(*groups.back().front(), *line)) {
      groups.back().push_back(line);
    } else {
      groups.push_back({line});
    }
  }
  return groups;
}

std::string numbers_of(const Group& group) {
  std::vector<std::string> numbers;
  for (const ReadingLine* line : group) {
    numbers.push_back(line->has_sign ? quantity::signed_text_of(line->number)
                                     : quantity::printed_text_of(line->number));
  }
  return joined(numbers, ", ");
}

std::string limit_of(const ReadingLine& line) {
  if (line.must_equal) {
    return SHIMWRIGHT_TEXT("record", "equal");
  }
  return line.limit ? limit_text(*line.limit, line.number.unit) : "";
}

std::string attempt_of(const ReadingLine& line) {
  if (!line.attempt) {
    return "";
  }
  return line.most_attempts ? say(SHIMWRIGHT_TEXT("record", "attempt {0} of {1}"),
                                  {std::to_string(*line.attempt), std::to_string(*line.most_attempts)})
                            : say(SHIMWRIGHT_TEXT("record", "attempt {0}"), {std::to_string(*line.attempt)});
}

Cell verdict_of(const ReadingLine& line) {
  return line.verdict == ReadingVerdict::none ? Cell{""} : verdict_cell(line.verdict);
}

/// The title once for readings of one channel that follow each other.
std::string step_cell(const ReadingLabels& labels, const Group& group, const Group* previous) {
  const ReadingLine& line = *group.front();
  const std::string label = labels.of(group);
  const bool same =
      previous != nullptr && previous->front()->place.step == line.place.step && labels.of(*previous) == label;
  const bool counted = line.most_attempts || (previous != nullptr && same && line.attempt.value_or(1) > 1 &&
                                              previous->front()->place.assembly == line.place.assembly);
  const std::string attempt = counted ? attempt_of(line) : "";
  const std::string again = line.entered_again ? SHIMWRIGHT_TEXT("record", "entered again below") : "";
  return joined({same ? "" : label, attempt, again}, ", ");
}

/// The same part fitted in several assemblies: one row, with who fitted the last.
struct Renewed {
  const PartLine* line = nullptr;
  std::vector<std::string> assemblies;
  std::int64_t quantity = 0;
  Stamp last;
};

std::vector<Renewed> renewed(const Record& record) {
  std::vector<Renewed> rows;
  for (const PartLine& part : record.parts) {
    auto row = std::find_if(rows.begin(), rows.end(), [&](const Renewed& each) {
      return each.line->part == part.part && each.line->number == part.number && each.line->batch == part.batch;
    });
    if (row == rows.end()) {
      row = rows.insert(rows.end(), Renewed{&part, {}, 0, part.stamp});
    }
    row->assemblies.push_back(assembly_number(part.place));
    row->quantity += part.quantity;
    row->last = part.stamp;
  }
  return rows;
}

}  // namespace

std::string instrument_by_time(const std::optional<job::InstrumentUsed>& instrument, const Stamp& stamp,
                               const Record& record) {
  std::string name = instrument ? instrument->name : "";
  if (instrument && instrument->overdue) {
    name += SHIMWRIGHT_TEXT("record", " (calibration overdue)");
  }
  return joined({name, who_when(stamp, record.job.opened.moment)}, ", ");
}

void write_table(PageWriter& writer, const std::string& title, const Table& table) {
  if (!table.rows.empty()) {
    writer.heading(title, height_of_beginning(writer, table));
    draw(writer, table);
  }
}

void write_readings(PageWriter& writer, const Record& record) {
  Table table;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Step"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Assembly"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Reading"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Limit"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Verdict")},
                   {SHIMWRIGHT_TEXT("record", "Instrument, by, time")}};
  const ReadingLabels labels(record);
  const Group* previous = nullptr;
  const auto groups = grouped(by_step(record, true));
  for (const Group& group : groups) {
    const ReadingLine* line = group.front();
    table.rows.push_back({{step_cell(labels, group, previous)},
                          {assembly_number(line->place)},
                          {numbers_of(group)},
                          {limit_of(*line)},
                          verdict_of(*line),
                          {instrument_by_time(line->instrument, line->stamp, record)}});
    previous = &group;
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Other readings"), table);
}

void write_further_readings(PageWriter& writer, const Record& record) {
  Table table;
  table.padding_mm = 0.5;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Step"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Assembly"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Reading"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Instrument, by, time")}};
  const ReadingLabels labels(record);
  const Group* previous = nullptr;
  const auto groups = grouped(by_step(record, false));
  for (const Group& group : groups) {
    const ReadingLine* line = group.front();
    table.rows.push_back({{step_cell(labels, group, previous)},
                          {assembly_number(line->place)},
                          {numbers_of(group)},
                          {instrument_by_time(line->instrument, line->stamp, record)}});
    previous = &group;
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Readings without a limit"), table);
}

void write_parts(PageWriter& writer, const Record& record) {
  Table table;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Part"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Assembly"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Number")},
                   {SHIMWRIGHT_TEXT("record", "Batch or serial")},
                   {SHIMWRIGHT_TEXT("record", "By, time")},
                   {SHIMWRIGHT_TEXT("record", "Qty"), Align::right}};
  for (const Renewed& part : renewed(record)) {
    table.rows.push_back({{part.line->title},
                          {joined(part.assemblies, ", ")},
                          {part.line->number},
                          {part.line->batch},
                          {who_when(part.last, record.job.opened.moment)},
                          {std::to_string(part.quantity)}});
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Renewed"), table);
}

void write_teach_ins(PageWriter& writer, const Record& record) {
  Table table;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Attempt"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Value"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Before"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "After"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Limit"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Verdict")},
                   {SHIMWRIGHT_TEXT("record", "By, time")}};
  const std::string none = SHIMWRIGHT_TEXT("record", "not read");
  for (const TeachIn& attempt : record.teach_ins) {
    const std::string outcome =
        attempt.completed ? std::string(SHIMWRIGHT_TEXT("record", "completed"))
                          : joined({SHIMWRIGHT_TEXT("record", "not completed"), attempt.code, attempt.reason}, ", ");
    const std::string title = attempt.place.title + ", " + std::to_string(attempt.attempt) + ": " + outcome;
    const std::string when = who_when(attempt.stamp, record.job.opened.moment);
    if (attempt.values.empty()) {
      table.rows.push_back({{title}, {""}, {""}, {""}, {""}, {""}, {when}});
    }
    for (std::size_t at = 0; at < attempt.values.size(); ++at) {
      const TeachInValue& value = attempt.values[at];
      const auto& after = value.after;
      table.rows.push_back({{at == 0 ? title : ""},
                            {value.channel_title},
                            {value.before ? quantity::printed_text_of(*value.before) : none},
                            {after ? quantity::printed_text_of(after->number) : none},
                            {after && after->limit ? limit_text(*after->limit, after->number.unit) : ""},
                            after && after->verdict != ReadingVerdict::none ? verdict_cell(after->verdict) : Cell{""},
                            {at == 0 ? when : ""}});
    }
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Teach-in, every attempt"), table);
}

}  // namespace shimwright::record

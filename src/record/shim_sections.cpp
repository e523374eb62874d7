#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

std::string assemblies_text(const ShimUse& use) {
  std::vector<std::string> numbers;
  for (const int assembly : use.assemblies) {
    numbers.push_back(std::to_string(assembly));
  }
  return joined(numbers, ", ");
}

std::string how_found(const ShimUse& use) {
  std::vector<std::string> told;
  for (const Trial& trial : use.trials) {
    told.push_back(trial.shim + " " + word_of(trial.fit));
  }
  if (!use.depths.empty()) {
    told.push_back(counted(use.depths.size(), SHIMWRIGHT_TEXT("record", "by depth, details below"),
                           SHIMWRIGHT_TEXT("record", "by depth, measured {0} times, details below")));
  }
  return told.empty() ? SHIMWRIGHT_TEXT("record", "not measured") : joined(told, ", ");
}

std::string digits_of_all(const std::vector<ReadingLine>& lines) {
  std::vector<std::string> digits;
  for (const ReadingLine& line : lines) {
    const bool plain = line.number.unit == quantity::Unit::millimetre;
    digits.push_back(plain ? quantity::with_true_minus(quantity::digits_of(line.number))
                           : quantity::printed_text_of(line.number));
  }
  return joined(digits, ", ");
}

std::string old_digits(const Record& record, Side side) {
  std::vector<ReadingLine> lines;
  for (const OldShim& old : record.old_shims) {
    if (old.side == side) {
      lines.push_back(old.reading);
    }
  }
  return lines.empty() ? SHIMWRIGHT_TEXT("record", "not measured") : digits_of_all(lines);
}

std::vector<Cell> shim_row(const Record& record, const ShimUse& use, bool first, bool last) {
  const FontRole role = last ? FontRole::strong : FontRole::body;
  return {{first ? bearing_word(use.side) : ""},
          {assemblies_text(use)},
          {how_found(use)},
          {use.fitted.empty() ? SHIMWRIGHT_TEXT("record", "none chosen") : use.fitted, role},
          {use.measured.empty() ? SHIMWRIGHT_TEXT("record", "not measured") : digits_of_all(use.measured)},
          {first ? old_digits(record, use.side) : ""}};
}

std::string reason_of(const ShimChoice& choice) {
  switch (choice.by) {
    case job::ChosenBy::trials:
      return SHIMWRIGHT_TEXT("record", "chosen on the gauge trials");
    case job::ChosenBy::depth:
      return SHIMWRIGHT_TEXT("record", "chosen on the depths");
    case job::ChosenBy::float_reading:
      return SHIMWRIGHT_TEXT("record", "chosen on the float");
    case job::ChosenBy::person:
      return SHIMWRIGHT_TEXT("record", "chosen by hand");
  }
  return "";
}

void write_choice(PageWriter& writer, const Record& record, const ShimUse& use, const ShimChoice& choice, bool last) {
  std::string line =
      say(SHIMWRIGHT_TEXT("record", "{0} bearing, assembly {1}: shim {2}, in the tray {3} mm, {4}, {5}."),
          {bearing_word(use.side), assemblies_text(use), choice.shim, quantity::millimetre_text(choice.thickness, 3),
           reason_of(choice), who_when(choice.stamp, record.job.opened.moment)});
  if (choice.chance_percent) {
    line += " " + say(SHIMWRIGHT_TEXT("record", "Chance that it is the best fitting one: {0} %."),
                      {std::to_string(*choice.chance_percent)});
  }
  if (!choice.reason.empty()) {
    line += " " + say(SHIMWRIGHT_TEXT("record", "Reason: “{0}”."), {choice.reason});
  }
  std::vector<Span> spans = {{line + " "}};
  if (last && !use.advice.empty() && !use.advice.back().reason.text.empty()) {
    spans.push_back({say(SHIMWRIGHT_TEXT("record", "Advice then: {0}"), {use.advice.back().reason.in_english()}),
                     FontRole::body, Ink::soft});
  }
  writer.paragraph(spans, 4.0);
}

void write_depths(PageWriter& writer, const Record& record, const ShimUse& use, const Depths& depths) {
  std::vector<std::string> readings;
  for (const TypedNumber& reading : depths.readings) {
    readings.push_back(quantity::printed_text_of(reading));
  }
  std::string line = say(SHIMWRIGHT_TEXT("record", "{0} bearing, assembly {1}: depths {2}; reference {3}; {4}; {5}."),
                         {bearing_word(use.side), std::to_string(use.assemblies.front()), joined(readings, ", "),
                          quantity::printed_text_of(depths.reference),
                          depths.pack_stamp ? say(SHIMWRIGHT_TEXT("record", "stamp on the pack {0}"),
                                                  {quantity::signed_text_of(*depths.pack_stamp)})
                                            : SHIMWRIGHT_TEXT("record", "no stamp used"),
                          instrument_by_time(depths.instrument, depths.stamp, record)});
  writer.paragraph({{line}}, 4.0);
}

}  // namespace

void write_shims(PageWriter& writer, const Record& record) {
  Table table;
  table.columns = {{SHIMWRIGHT_TEXT("record", "Bearing")},
                   {SHIMWRIGHT_TEXT("record", "Assembly")},
                   {SHIMWRIGHT_TEXT("record", "Trials, in order"), Align::left, true},
                   {SHIMWRIGHT_TEXT("record", "Fitted"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Measured"), Align::right},
                   {SHIMWRIGHT_TEXT("record", "Taken out of the vehicle"), Align::right}};
  for (const Side side : {Side::lower, Side::upper}) {
    bool first = true;
    for (std::size_t at = 0; at < record.shims.size(); ++at) {
      if (record.shims[at].side == side) {
        const bool last = at + 1 == record.shims.size() || record.shims[at + 1].side != side;
        table.rows.push_back(shim_row(record, record.shims[at], first, last));
        first = false;
      }
    }
    if (first && old_digits(record, side) != SHIMWRIGHT_TEXT("record", "not measured")) {
      const std::string none = SHIMWRIGHT_TEXT("record", "not measured");
      table.rows.push_back({{bearing_word(side)}, {""}, {none}, {""}, {none}, {old_digits(record, side)}});
    }
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Shims, mm"), table);
}

void write_shim_details(PageWriter& writer, const Record& record) {
  bool begun = false;
  for (const ShimUse& use : record.shims) {
    if (use.choices.empty() && use.depths.empty()) {
      continue;
    }
    if (!begun) {
      writer.heading(SHIMWRIGHT_TEXT("record", "How the shims were found"), 9);
      writer.gap(0.8);
      begun = true;
    }
    for (const Depths& depths : use.depths) {
      write_depths(writer, record, use, depths);
    }
    for (const ShimChoice& choice : use.choices) {
      write_choice(writer, record, use, choice, &choice == &use.choices.back());
    }
  }
}

}  // namespace shimwright::record

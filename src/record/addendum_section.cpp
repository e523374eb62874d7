#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

void write_addendum(PageWriter& writer, const AddendumLine& each, std::size_t number) {
  writer.paragraph({{say(SHIMWRIGHT_TEXT("record", "{0}. {1}, {2}, {3}."),
                         {std::to_string(number), each.name, each.initials, date_time(each.moment)}),
                     FontRole::strong}},
                   body_pitch_mm);
  writer.paragraph({{SHIMWRIGHT_TEXT("record", "Reason: "), FontRole::body, Ink::soft}, {each.reason}}, body_pitch_mm);
  writer.paragraph({{each.text}}, body_pitch_mm);
  writer.paragraph(
      {{SHIMWRIGHT_TEXT("record", "Signed, seal "), FontRole::small, Ink::soft}, {each.groups, FontRole::strong}},
      body_pitch_mm);
  writer.gap(1.6);
}

}  // namespace

void write_addenda(PageWriter& writer, const Record& record) {
  if (record.addenda.empty()) {
    return;
  }
  writer.heading(SHIMWRIGHT_TEXT("record", "Addenda, after the sealed record"), 4 * body_pitch_mm);
  writer.gap(0.8);
  for (std::size_t at = 0; at < record.addenda.size(); ++at) {
    write_addendum(writer, record.addenda[at], at + 1);
  }
}

double addenda_mm(const PageWriter& writer, const Record& record) {
  PageWriter trial = writer;
  trial.new_page();
  trial.piece(1);  // no gap is dropped below it
  const double from = trial.y();
  const std::size_t pages = trial.page_count();
  write_addenda(trial, record);
  return trial.page_count() == pages ? trial.y() - from : trial.full_room() + 1;
}

}  // namespace shimwright::record

#include "shimwright/record/layout.h"

#include <algorithm>
#include <utility>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

PageHead head_of(const Record& record) {
  PageHead head;
  head.workshop = record.workshop_name;
  head.address = record.workshop_address;
  head.logo = record.logo;
  head.title = SHIMWRIGHT_TEXT("record", "Clutch pack job record");
  head.job = say(SHIMWRIGHT_TEXT("record", "Job {0}"), {record.job.number});
  if (record.seal && record.seal->reprint) {
    head.job += SHIMWRIGHT_TEXT("record", " · reprint");
  }
  if (record.seal && record.seal->check.standing != SealStanding::holds) {
    head.job += record.seal->check.standing == SealStanding::changed
                    ? SHIMWRIGHT_TEXT("record", " · the seal does not hold")
                    : SHIMWRIGHT_TEXT("record", " · sealed with a key not known here");
  }
  head.mark = record.demonstration() ? SHIMWRIGHT_TEXT("record", "DEMONSTRATION VALUES") : "";
  return head;
}

void write_main_part(PageWriter& writer, const Record& record) {
  write_result(writer, record);
  write_shims(writer, record);
  write_floats(writer, record);
  write_float_strip(writer, record);
  write_readings(writer, record);
  write_parts(writer, record);
  write_deviations(writer, record);
  write_not_measured(writer, record);
}

void write_details(PageWriter& writer, const Record& record) {
  write_float_runs(writer, record);
  write_shim_details(writer, record);
  write_teach_ins(writer, record);
  write_further_readings(writer, record);
  write_instruments(writer, record);
  write_answers(writer, record);
  write_course(writer, record);
  write_taken_back(writer, record);
  write_photos(writer, record);
  write_work_values(writer, record);
}

/// Signed at the end, above the addenda where they fit below on the same page.
void write_closing(PageWriter& writer, const Record& record) {
  constexpr double rounding_mm = 0.01;
  const double signatures = signatures_mm(writer, record);
  const double addenda = addenda_mm(writer, record) + rounding_mm;
  writer.need(signatures);
  write_signatures(writer, record, signatures + addenda <= writer.room() ? addenda : 0);
}

/// The record on pages, and how it ends.
struct Laid {
  PageWriter writer;
  std::size_t headings = 0;   ///< above the signatures
  bool signed_alone = false;  ///< nothing but the signatures of the record stands on their page
};

Laid laid(const Record& record, PageWriter writer) {
  write_main_part(writer, record);
  // Signed on the first page where all that matters is on it; else at the end, so that no page stays half empty.
  const bool on_first_page = writer.page_count() == 1 && writer.room() >= signatures_mm(writer, record);
  if (on_first_page) {
    write_signatures(writer, record);
  }
  write_details(writer, record);
  const std::size_t pages = writer.page_count();
  const std::size_t headings = writer.heading_count();
  if (!on_first_page) {
    write_closing(writer, record);
  }
  const bool alone = writer.page_count() > pages;
  write_addenda(writer, record);
  write_photo_pages(writer, record);
  return {std::move(writer), headings, alone};
}

}  // namespace

std::vector<Page> lay_out(const Record& record, PaperSize paper, const TextMeasure& measure) {
  Laid usual = laid(record, PageWriter(paper, measure, head_of(record)));
  if (!usual.signed_alone) {
    return usual.writer.finish();
  }
  // Signatures alone on a page say nothing of what was signed: the rows move together, or the last section comes along.
  Laid tight = laid(record, PageWriter(paper, measure, head_of(record), Spacing::tight));
  if (tight.writer.page_count() < usual.writer.page_count()) {
    return tight.writer.finish();
  }
  PageWriter along(paper, measure, head_of(record));
  along.begin_page_at_heading(std::max<std::size_t>(usual.headings, 1) - 1);
  Laid with_last = laid(record, std::move(along));
  return (with_last.signed_alone ? usual : with_last).writer.finish();
}

}  // namespace shimwright::record

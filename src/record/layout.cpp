#include "shimwright/record/layout.h"

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

}  // namespace

std::vector<Page> lay_out(const Record& record, PaperSize paper, const TextMeasure& measure) {
  PageWriter writer(paper, measure, head_of(record));
  write_main_part(writer, record);
  // Signed on the first page where all that matters is on it; else at the end, so that no page stays half empty.
  const bool on_first_page = writer.page_count() == 1 && writer.room() >= signatures_mm(writer, record);
  if (on_first_page) {
    write_signatures(writer, record);
  }
  write_details(writer, record);
  if (!on_first_page) {
    write_signatures(writer, record);
  }
  write_addenda(writer, record);
  write_photo_pages(writer, record);
  return writer.finish();
}

}  // namespace shimwright::record

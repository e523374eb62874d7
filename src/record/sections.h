#pragma once

#include "page_writer.h"
#include "shimwright/record/record.h"
#include "table.h"

/// The sections of the printed record; each writes nothing where the record has nothing for it.
namespace shimwright::record {

void write_result(PageWriter& writer, const Record& record);
void write_shims(PageWriter& writer, const Record& record);
void write_floats(PageWriter& writer, const Record& record);
/// The last floats of each disc between their limits, drawn.
void write_float_strip(PageWriter& writer, const Record& record);
void write_readings(PageWriter& writer, const Record& record);
void write_further_readings(PageWriter& writer, const Record& record);
/// As they were when they were read with; only those whose repeat test or day of calibration is kept.
void write_instruments(PageWriter& writer, const Record& record);
void write_parts(PageWriter& writer, const Record& record);
void write_deviations(PageWriter& writer, const Record& record);
void write_not_measured(PageWriter& writer, const Record& record);
/// At the bottom of the page, or so far above it: who signed and where the customer does; of a sealed record its seal
/// and code.
void write_signatures(PageWriter& writer, const Record& record, double above_bottom_mm = 0);
/// How high that is.
[[nodiscard]] double signatures_mm(const PageWriter& writer, const Record& record);

void write_float_runs(PageWriter& writer, const Record& record);
void write_shim_details(PageWriter& writer, const Record& record);
void write_teach_ins(PageWriter& writer, const Record& record);
void write_answers(PageWriter& writer, const Record& record);
void write_course(PageWriter& writer, const Record& record);
void write_taken_back(PageWriter& writer, const Record& record);
void write_work_values(PageWriter& writer, const Record& record);
void write_photos(PageWriter& writer, const Record& record);
/// The photos themselves, on pages of their own, where the paper is to have them.
void write_photo_pages(PageWriter& writer, const Record& record);
/// What was added after sealing, each with its seal.
void write_addenda(PageWriter& writer, const Record& record);
/// How high that is; more than a page's room where it takes several pages, 0 where there are none.
[[nodiscard]] double addenda_mm(const PageWriter& writer, const Record& record);

/// A heading and its table, kept together; nothing where the table has no row.
void write_table(PageWriter& writer, const std::string& title, const Table& table);

/// `dial 2, MK, 24 Nov 10:58`
[[nodiscard]] std::string instrument_by_time(const std::optional<job::InstrumentUsed>& instrument, const Stamp& stamp,
                                             const Record& record);

}  // namespace shimwright::record

#pragma once

#include <functional>

#include "shimwright/sheet/job_sheet.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/parts.h"

/// The list of job sheets, filled into the column of its page, and the parts such lists are made of.
namespace shimwright::workshop {

/// Takes everything out of a page.
void clear(widgets::Scroll& page);
/// A heading, with a mark beside it where the values are for demonstration.
void add_heading(widgets::Scroll& page, const QString& text, bool demonstration = false);
void add_text(widgets::Scroll& page, const QString& text);
/// Fills up what is left below the last one.
void end_page(widgets::Scroll& page);

/// `save_blank` is called for the sheet a person wants on paper, blank.
void fill_job_sheets(widgets::Scroll& page, store::Registers& registers,
                     const std::function<void(const sheet::JobSheet&)>& save_blank);

}  // namespace shimwright::workshop

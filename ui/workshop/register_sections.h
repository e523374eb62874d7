#pragma once

#include "shimwright/widgets/parts.h"

/// The parts the pages of the workshop are made of.
namespace shimwright::workshop {

/// Takes everything out of a page.
void clear(widgets::Scroll& page);
/// A heading, with a mark beside it where the values are for demonstration.
void add_heading(widgets::Scroll& page, const QString& text, bool demonstration = false);
void add_text(widgets::Scroll& page, const QString& text);
/// Fills up what is left below the last one.
void end_page(widgets::Scroll& page);

}  // namespace shimwright::workshop

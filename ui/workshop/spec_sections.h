#pragma once

#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

/// All values of a spec sheet, below what stands on the page.
void add_spec_values(widgets::Scroll& page, const sheet::SpecSheet& spec);

}  // namespace shimwright::workshop

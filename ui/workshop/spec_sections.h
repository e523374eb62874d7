#pragma once

#include <functional>
#include <string>

#include "shimwright/store/registers.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

/// The spec sheets, each with a button that opens its values.
void fill_spec_sheets(widgets::Scroll& page, store::Registers& registers,
                      const std::function<void(const std::string& hash)>& open);
/// All values of one spec sheet, with a button back to the list.
void fill_spec_sheet(widgets::Scroll& page, store::Registers& registers, const std::string& hash,
                     const std::function<void()>& back);

}  // namespace shimwright::workshop

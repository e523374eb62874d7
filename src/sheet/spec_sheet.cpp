#include "shimwright/sheet/spec_sheet.h"

#include <algorithm>

namespace shimwright::sheet {

const PartItem* SpecSheet::part(std::string_view part_id) const {
  const auto found =
      std::find_if(parts.begin(), parts.end(), [part_id](const PartItem& each) { return each.id == part_id; });
  return found == parts.end() ? nullptr : &*found;
}

}  // namespace shimwright::sheet

#include <algorithm>
#include <set>

#include "case_sections.h"

namespace shimwright::shim {

Tray read_tray(Fields& top) {
  Tray tray;
  std::set<std::string> ids;
  std::set<quantity::Length> thicknesses;
  const json::Array& elements = top.filled_list("tray");
  for (std::size_t index = 0; index < elements.size() && !top.fault().any(); ++index) {
    Fields fields(elements[index], json::pointer("/tray", index), top.fault(), {"id", "thickness_mm", "u_mm"});
    Shim shim;
    shim.id = fields.text("id");
    if (!ids.insert(shim.id).second) {
      top.fault().note("repeated_shim", fields.place_of("id"),
                       SHIMWRIGHT_TEXT("shim", "Another shim of this tray has the same name; give each its own."));
    }
    shim.thickness = fields.length("thickness_mm", more_than_zero);
    if (!thicknesses.insert(shim.thickness).second) {
      top.fault().note("repeated_shim", fields.place_of("thickness_mm"),
                       SHIMWRIGHT_TEXT("shim", "Another shim of this tray has the same thickness; keep one of them."));
    }
    shim.u_mm = fields.number("u_mm", more_than_zero);
    tray.push_back(std::move(shim));
  }
  return tray;
}

std::string read_known_shim(Fields& fields, std::string_view key, const Tray& tray) {
  std::string id = fields.text(key);
  if (std::none_of(tray.begin(), tray.end(), [&id](const Shim& each) { return each.id == id; })) {
    fields.fault().note("unknown_shim", fields.place_of(key),
                        SHIMWRIGHT_TEXT("shim", "No shim of the tray has this name; choose one that is in it."));
  }
  return id;
}

}  // namespace shimwright::shim

#include "sorted_tray.h"

#include <algorithm>

namespace shimwright::shim {

std::vector<const Shim*> thin_to_thick(const Tray& tray) {
  std::vector<const Shim*> sorted;
  sorted.reserve(tray.size());
  for (const auto& each : tray) {
    sorted.push_back(&each);
  }
  std::sort(sorted.begin(), sorted.end(),
            [](const Shim* left, const Shim* right) { return left->thickness < right->thickness; });
  return sorted;
}

std::size_t index_of(const std::vector<const Shim*>& sorted, std::string_view id) {
  const auto found = std::find_if(sorted.begin(), sorted.end(), [id](const Shim* each) { return each->id == id; });
  return static_cast<std::size_t>(found - sorted.begin());
}

}  // namespace shimwright::shim

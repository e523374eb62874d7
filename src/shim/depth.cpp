#include "shimwright/shim/depth.h"

#include <algorithm>
#include <cmath>
#include <compare>
#include <set>

#include "required_length.h"
#include "sorted_tray.h"

namespace shimwright::shim {

namespace {

using quantity::Length;

/// The tray thin to thick, the bins by place in it, and what was measured.
struct DepthView {
  std::vector<const Shim*> shims;
  RequiredLength required;
  double u_um;

  [[nodiscard]] std::int64_t um(std::size_t shim) const { return shims[shim]->thickness.count(); }
  [[nodiscard]] std::size_t last() const { return shims.size() - 1; }
  [[nodiscard]] bool below(Length border) const { return std::is_lt(required.compare(2 * border.count())); }
  [[nodiscard]] bool above(Length border) const { return std::is_gt(required.compare(2 * border.count())); }
  [[nodiscard]] bool near(std::int64_t doubled_um) const { return required.distance_um(doubled_um) <= 2.0 * u_um; }
};

/// Places in the sorted tray, so thin to thick, each once.
using Candidates = std::set<std::size_t>;

bool between(const DepthView& view, const DepthBin& lower, const DepthBin& upper) {
  return view.above(lower.to) && view.below(upper.from);
}

bool is_outside(const DepthView& view, const std::optional<std::vector<DepthBin>>& bins) {
  if (bins) {
    return view.below(bins->front().from) || view.above(bins->back().to);
  }
  const std::size_t last = view.last();
  if (last == 0) {
    return !view.near(2 * view.um(0));
  }
  return std::is_lt(view.required.compare(3 * view.um(0) - view.um(1))) ||
         std::is_gt(view.required.compare(3 * view.um(last) - view.um(last - 1)));
}

/// The bin that holds the length, or the nearest shim; on a tie the thinner.
std::optional<std::size_t> plain_rule(const DepthView& view, const std::optional<std::vector<DepthBin>>& bins) {
  if (!bins) {
    std::size_t shim = 0;
    while (shim < view.last() && std::is_gt(view.required.compare(view.um(shim) + view.um(shim + 1)))) {
      ++shim;
    }
    return shim;
  }
  std::optional<std::size_t> picked;
  for (const auto& bin : *bins) {
    if (!view.below(bin.from) && !view.above(bin.to)) {
      const std::size_t shim = index_of(view.shims, bin.shim);
      picked = std::min(picked.value_or(shim), shim);
    }
  }
  return picked;
}

/// Off by more than half the smaller step beside it.
bool is_far(const DepthView& view, std::size_t shim) {
  if (view.last() == 0) {
    return false;
  }
  const std::int64_t down = shim > 0 ? view.um(shim) - view.um(shim - 1) : view.um(1) - view.um(0);
  const std::int64_t up = shim < view.last() ? view.um(shim + 1) - view.um(shim) : down;
  const std::int64_t step = std::min(down, up);
  return std::is_gt(view.required.compare(2 * view.um(shim) + step)) ||
         std::is_lt(view.required.compare(2 * view.um(shim) - step));
}

/// The two beside a gap that is too wide to be the rounding of a table.
Candidates beside_wide_gap(const DepthView& view, const std::vector<DepthBin>& bins) {
  for (std::size_t bin = 0; bin + 1 < bins.size(); ++bin) {
    const auto gap = static_cast<double>((bins[bin + 1].from - bins[bin].to).count());
    if (between(view, bins[bin], bins[bin + 1]) && gap > std::max(20.0, 4.0 * view.u_um)) {
      return {index_of(view.shims, bins[bin].shim), index_of(view.shims, bins[bin + 1].shim)};
    }
  }
  return {};
}

Candidates beside_borders(const DepthView& view, const std::optional<std::vector<DepthBin>>& bins) {
  Candidates found;
  if (!bins) {
    for (std::size_t shim = 0; shim < view.last(); ++shim) {
      if (view.near(view.um(shim) + view.um(shim + 1))) {
        found.insert({shim, shim + 1});
      }
    }
    return found;
  }
  for (std::size_t bin = 0; bin + 1 < bins->size(); ++bin) {
    const DepthBin& lower = (*bins)[bin];
    const DepthBin& upper = (*bins)[bin + 1];
    const bool near_border =
        lower.shim != upper.shim && (view.near(2 * lower.to.count()) || view.near(2 * upper.from.count()));
    if (near_border || between(view, lower, upper)) {
      found.insert({index_of(view.shims, lower.shim), index_of(view.shims, upper.shim)});
    }
  }
  return found;
}

void judge(const DepthView& view, const std::optional<std::vector<DepthBin>>& bins, DepthAnswer& answer) {
  if (std::is_lteq(view.required.compare(0))) {
    answer.state = DepthState::impossible;
    return;
  }
  if (is_outside(view, bins)) {
    answer.state = DepthState::outside;
    return;
  }
  const auto picked = plain_rule(view, bins);
  const Candidates gap = bins ? beside_wide_gap(view, *bins) : Candidates{};
  const Candidates candidates = gap.empty() ? beside_borders(view, bins) : gap;
  if (!gap.empty() || (picked && is_far(view, *picked))) {
    answer.state = DepthState::far;
  } else {
    answer.state = candidates.empty() ? DepthState::shim : DepthState::edge;
  }
  if (picked) {
    answer.shim = view.shims[*picked]->id;
  }
  for (const std::size_t each : candidates) {
    answer.candidates.push_back(view.shims[each]->id);
  }
}

}  // namespace

DepthAnswer advise_depth(const Tray& tray, const DepthCase& depth) {
  DepthAnswer answer;
  const auto [least, most] = std::minmax_element(depth.readings.begin(), depth.readings.end());
  answer.spread = *most - *least;
  if (answer.spread > depth.max_spread) {
    answer.state = DepthState::tilted;
    return answer;
  }
  const double u_mm = depth.u_reading_mm * std::sqrt(1.0 / static_cast<double>(depth.readings.size()) + 1.0);
  const DepthView view{thin_to_thick(tray), RequiredLength(depth), 1000.0 * u_mm};
  answer.required_mm = view.required.millimetres();
  answer.u_required_mm = u_mm;
  judge(view, depth.bins, answer);
  return answer;
}

}  // namespace shimwright::shim

#pragma once

#include <QString>

#include "shimwright/store/stock.h"
#include "shimwright/widgets/marks.h"

/// How the shims of a tray are said. Pure.
namespace shimwright::workshop {

/// A shim of a tray: as it was counted, as it lies there today, and what open jobs may want of it.
struct ShimLine {
  job::TrayShim counted;
  store::ShimStock stock;
  std::optional<int> left;
  double wanted = 0.0;
};

/// `measured 1.652 ± 0.004 mm (95 %) · 4 left of 5 counted 24 Nov 2026 · open jobs may want 0.7`.
[[nodiscard]] QString shim_words(const ShimLine& line);
/// Held where it is to be ordered, on the limit where open jobs may want more than are left.
[[nodiscard]] widgets::Mark mark_of(const ShimLine& line);
/// `2 sides of open jobs have their shim still to come; of 1 of them nothing is known yet.`
[[nodiscard]] QString demand_words(const store::TrayDemand& demand);

}  // namespace shimwright::workshop

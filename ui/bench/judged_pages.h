#pragma once

#include "shimwright/bench/step_page.h"

/// The three pages whose steps the shim engine judges.
namespace shimwright::bench {

[[nodiscard]] StepPage* make_gauge_fit_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_depth_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_float_page(Workbench& bench, const sheet::Step& step, QWidget* parent);

}  // namespace shimwright::bench

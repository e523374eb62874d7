#pragma once

#include "judged_pages.h"
#include "shimwright/bench/step_page.h"

/// The pages that need no engine, one maker for each.
namespace shimwright::bench {

[[nodiscard]] StepPage* make_do_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_check_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_choose_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_sign_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_text_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_photo_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_part_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_reading_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_peak_page(Workbench& bench, const sheet::Step& step, QWidget* parent);
[[nodiscard]] StepPage* make_teach_in_page(Workbench& bench, const sheet::Step& step, QWidget* parent);

}  // namespace shimwright::bench

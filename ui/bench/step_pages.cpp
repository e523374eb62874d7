#include "step_pages.h"

#include <variant>

namespace shimwright::bench {

namespace {

using PageMaker = StepPage* (*)(Workbench&, const sheet::Step&, QWidget*);

struct MakerOf {
  PageMaker operator()(const sheet::DoStep&) const { return &make_do_page; }
  PageMaker operator()(const sheet::CheckStep&) const { return &make_check_page; }
  PageMaker operator()(const sheet::ChooseStep&) const { return &make_choose_page; }
  PageMaker operator()(const sheet::ReadStep&) const { return &make_reading_page; }
  PageMaker operator()(const sheet::PeakStep&) const { return &make_peak_page; }
  PageMaker operator()(const sheet::PartStep&) const { return &make_part_page; }
  PageMaker operator()(const sheet::PhotoStep&) const { return &make_photo_page; }
  PageMaker operator()(const sheet::TextStep&) const { return &make_text_page; }
  PageMaker operator()(const sheet::GaugeFitStep&) const { return &make_gauge_fit_page; }
  PageMaker operator()(const sheet::DepthStep&) const { return &make_depth_page; }
  PageMaker operator()(const sheet::FloatStep&) const { return &make_float_page; }
  PageMaker operator()(const sheet::TeachInStep&) const { return &make_teach_in_page; }
  PageMaker operator()(const sheet::SignStep&) const { return &make_sign_page; }
};

}  // namespace

StepPage* make_step_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return std::visit(MakerOf{}, step.body)(bench, step, parent);
}

}  // namespace shimwright::bench

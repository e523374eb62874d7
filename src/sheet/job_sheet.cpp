#include "shimwright/sheet/job_sheet.h"

#include <array>

namespace shimwright::sheet {

std::string_view kind_of(const StepBody& body) {
  // In the order of the alternatives of StepBody.
  constexpr std::array<std::string_view, std::variant_size_v<StepBody>> names{
      "do",   "check",     "choose", "read",  "peak",     "part", "photo",
      "text", "gauge_fit", "depth",  "float", "teach_in", "sign"};
  return body.valueless_by_exception() ? std::string_view() : names.at(body.index());
}

std::vector<const Step*> JobSheet::steps() const {
  std::vector<const Step*> all;
  for (const Stage& stage : stages) {
    for (const Step& step : stage.steps) {
      all.push_back(&step);
    }
  }
  return all;
}

std::optional<std::size_t> JobSheet::position_of(std::string_view step_id) const {
  std::size_t position = 0;
  for (const Stage& stage : stages) {
    for (const Step& step : stage.steps) {
      if (step.id == step_id) {
        return position;
      }
      ++position;
    }
  }
  return std::nullopt;
}

const Stage* JobSheet::stage_of(std::string_view step_id) const {
  for (const Stage& stage : stages) {
    for (const Step& step : stage.steps) {
      if (step.id == step_id) {
        return &stage;
      }
    }
  }
  return nullptr;
}

const Step* JobSheet::find(std::string_view step_id) const {
  for (const Stage& stage : stages) {
    for (const Step& step : stage.steps) {
      if (step.id == step_id) {
        return &step;
      }
    }
  }
  return nullptr;
}

}  // namespace shimwright::sheet

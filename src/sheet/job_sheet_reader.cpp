#include <utility>

#include "fields.h"
#include "file_header.h"
#include "job_sheet_rules.h"
#include "shimwright/sheet/job_sheet.h"
#include "step_reader.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_stages = 40;
constexpr std::size_t most_steps = 100;
constexpr std::int64_t highest_issue = 1'000'000;

Result<Stage> read_stage(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"id", "title", "steps"});
  Stage stage;
  stage.id = fields.id("id");
  stage.title = fields.text("title");
  stage.steps = fields.list("steps", 1, most_steps, read_step);
  return fields.finish(std::move(stage));
}

Result<JobSheet> read_content(const json::Value& file) {
  Fields fields = Fields::open(
      file, "", {"format", "version", "min_reader", "id", "name", "issue", "demonstration", "title", "stages"});
  read_header(fields);
  JobSheet sheet;
  sheet.id = fields.uuid("id");
  sheet.name = fields.id("name");
  sheet.issue = fields.integer("issue", 1, highest_issue);
  sheet.demonstration = fields.flag("demonstration");
  sheet.title = fields.text("title");
  sheet.stages = fields.list("stages", 1, most_stages, read_stage);
  return fields.finish(std::move(sheet));
}

/// Sheets written before there was the role of the road test know it by its id: the first check or choice after the
/// teach-in that begins with `road-test`.
void find_road_test(JobSheet& sheet) {
  Step* found = nullptr;
  bool after_teach_in = false;
  for (Stage& stage : sheet.stages) {
    for (Step& step : stage.steps) {
      if (step.role == Role::road_test) {
        return;
      }
      after_teach_in = after_teach_in || std::holds_alternative<TeachInStep>(step.body);
      const bool answered =
          std::holds_alternative<CheckStep>(step.body) || std::holds_alternative<ChooseStep>(step.body);
      if (found == nullptr && after_teach_in && answered && !step.role && step.id.rfind("road-test", 0) == 0) {
        found = &step;
      }
    }
  }
  if (found != nullptr) {
    found->role = Role::road_test;
  }
}

}  // namespace

Result<JobSheet> read_job_sheet(std::string_view json_text) {
  const auto file = json::parse(json_text);
  if (!file) {
    return tl::make_unexpected(file.error());
  }
  if (auto header = check_header(*file, "shimwright.job-sheet"); !header) {
    return tl::make_unexpected(std::move(header.error()));
  }
  auto sheet = read_content(*file);
  if (!sheet) {
    return sheet;
  }
  if (auto kept = check_rules(*sheet); !kept) {
    return tl::make_unexpected(std::move(kept.error()));
  }
  find_road_test(*sheet);
  return sheet;
}

}  // namespace shimwright::sheet

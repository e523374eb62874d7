#include "shimwright/job/to_decide.h"

#include <optional>
#include <variant>

#include "desk.h"

namespace shimwright::job {

namespace {

OpenPoint point(PointKind kind, const sheet::Step& step, std::string_view sentence) {
  return {kind, step.id, Message{std::string(sentence), {title_of(step)}}};
}

OpenPoint not_passed(const sheet::Step& step) {
  if (std::holds_alternative<sheet::SignStep>(step.body)) {
    return point(PointKind::signature, step, SHIMWRIGHT_TEXT("job", "“{0}”: sign, or leave it out with a reason."));
  }
  if (step.hold_point) {
    return point(PointKind::hold_point, step,
                 SHIMWRIGHT_TEXT("job", "“{0}” is a hold point: answer it, or go on with a reason there."));
  }
  return point(PointKind::missing, step, SHIMWRIGHT_TEXT("job", "“{0}” was not done: the record says so."));
}

std::optional<OpenPoint> point_of(const sheet::Step& step, const StepState& state) {
  if (passed(state)) {
    return std::nullopt;
  }
  if (const auto* held = std::get_if<Held>(&state)) {
    return held->questions.empty()
               ? point(PointKind::finding, step,
                       SHIMWRIGHT_TEXT("job", "“{0}” is not as it should be: answer it anew, or say why it stays."))
               : point(PointKind::question, step,
                       SHIMWRIGHT_TEXT("job", "“{0}” asks something: say yes to it, or enter it anew."));
  }
  if (std::holds_alternative<Unproven>(state)) {
    return point(PointKind::unproven, step,
                 SHIMWRIGHT_TEXT("job", "“{0}” may have moved while the job lay still: prove it again."));
  }
  return not_passed(step);
}

}  // namespace

bool keeps_from_sealing(const OpenPoint& point) {
  return point.kind != PointKind::missing;
}

std::vector<OpenPoint> to_decide(const JobState& state) {
  std::vector<OpenPoint> points;
  for (const sheet::Step* step : state.sheets.job->steps()) {
    if (auto open = point_of(*step, state.step(step->id))) {
      points.push_back(std::move(*open));
    }
  }
  return points;
}

std::vector<std::string> signers_of(const JobState& state) {
  std::vector<std::string> signers;
  for (const sheet::Signer signer : {sheet::Signer::technician, sheet::Signer::checker}) {
    std::optional<std::string> person;
    for (const Entry* entry : state.live()) {
      const auto* signature = std::get_if<Signed>(&entry->body);
      if (signature != nullptr && signature->signer == signer) {
        person = entry->person;
      }
    }
    if (person) {
      signers.push_back(*person);
    }
  }
  return signers;
}

}  // namespace shimwright::job

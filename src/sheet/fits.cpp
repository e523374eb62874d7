#include <string>
#include <vector>

#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::sheet {

namespace {

using quantity::dimension_of;

Result<void> check_limit(const Step& step, const std::string& key, quantity::Dimension dimension,
                         const SpecSheet& spec) {
  const auto limit = spec.limits.find(key);
  if (limit == spec.limits.end()) {
    return refuse(
        "unknown_limit", step.id,
        SHIMWRIGHT_TEXT(
            "sheet",
            "The step is judged by the limit '{0}', which the spec sheet {1}, issue {2}, does not have; add it there."),
        {key, spec.gearbox, std::to_string(spec.issue)});
  }
  if (dimension_of(limit->second.unit) != dimension) {
    return refuse("wrong_dimension", step.id,
                  SHIMWRIGHT_TEXT("sheet",
                                  "The limit '{0}' of the spec sheet {1}, issue {2}, is in another kind of unit than "
                                  "this step reads; correct one of the two."),
                  {key, spec.gearbox, std::to_string(spec.issue)});
  }
  return {};
}

Result<void> check_channels(const Step& step, const std::vector<Channel>& channels, const SpecSheet& spec) {
  for (const Channel& channel : channels) {
    if (channel.limit) {
      if (auto kept = check_limit(step, *channel.limit, dimension_of(channel.unit), spec); !kept) {
        return kept;
      }
    }
  }
  return {};
}

Result<void> check_peak(const Step& step, const PeakStep& peak, const SpecSheet& spec) {
  if (auto kept = check_channels(step, {peak.channel}, spec); !kept || !peak.attempts_limit) {
    return kept;
  }
  if (auto kept = check_limit(step, *peak.attempts_limit, quantity::Dimension::count, spec); !kept) {
    return kept;
  }
  const Limit& attempts = spec.limits.find(*peak.attempts_limit)->second;
  if (!attempts.most || *attempts.most < 1) {
    return refuse("wrong_limit", step.id,
                  SHIMWRIGHT_TEXT("sheet",
                                  "The limit '{0}' of the spec sheet {1}, issue {2}, counts attempts and needs a "
                                  "'most' of 1 or more; correct it there."),
                  {*peak.attempts_limit, spec.gearbox, std::to_string(spec.issue)});
  }
  return {};
}

Result<void> check_parts(const Step& step, const PartStep& body, const SpecSheet& spec) {
  for (const std::string& part : body.parts) {
    if (spec.part(part) == nullptr) {
      return refuse(
          "unknown_part", step.id,
          SHIMWRIGHT_TEXT(
              "sheet",
              "The step needs the part '{0}', which the spec sheet {1}, issue {2}, does not list; add it there."),
          {part, spec.gearbox, std::to_string(spec.issue)});
    }
  }
  return {};
}

std::optional<Method> method_of(const StepBody& body) {
  if (std::holds_alternative<GaugeFitStep>(body)) {
    return Method::gauge_fit;
  }
  return std::holds_alternative<DepthStep>(body) ? std::optional(Method::depth) : std::nullopt;
}

std::string method_word(Method method) {
  return method == Method::gauge_fit ? SHIMWRIGHT_TEXT("word", "gauge trials") : SHIMWRIGHT_TEXT("word", "depths");
}

/// A step that finds a shim is asked only where the spec sheet says so, and where it does there is such a step.
Result<void> check_method(const JobSheet& sheet, const Step& step, const SpecSheet& spec) {
  const auto method = method_of(step.body);
  if (!method || !step.side || *method == spec.side(*step.side).method) {
    return {};
  }
  const Method wanted = spec.side(*step.side).method;
  bool other_there = false;
  for (const Step* each : sheet.steps()) {
    other_there = other_there || (method_of(each->body) == wanted && each->side == step.side);
  }
  if (!step.only_for || !other_there) {
    return refuse(
        "wrong_method", step.id,
        SHIMWRIGHT_TEXT("sheet",
                        "The spec sheet {0}, issue {1}, finds this shim by {2}, and the job sheet only by {3}; "
                        "choose another of the two."),
        {spec.gearbox, std::to_string(spec.issue), method_word(wanted), method_word(*method)});
  }
  return {};
}

Result<void> check_body(const Step& step, const SpecSheet& spec) {
  if (const auto* read = std::get_if<ReadStep>(&step.body)) {
    return check_channels(step, read->channels, spec);
  }
  if (const auto* teach_in = std::get_if<TeachInStep>(&step.body)) {
    return check_channels(step, teach_in->channels, spec);
  }
  if (const auto* peak = std::get_if<PeakStep>(&step.body)) {
    return check_peak(step, *peak, spec);
  }
  if (const auto* part = std::get_if<PartStep>(&step.body)) {
    return check_parts(step, *part, spec);
  }
  return {};
}

}  // namespace

Result<void> fits(const JobSheet& sheet, const SpecSheet& spec) {
  for (const Step* step : sheet.steps()) {
    if (auto kept = check_body(*step, spec); !kept) {
      return kept;
    }
    if (auto kept = check_method(sheet, *step, spec); !kept) {
      return kept;
    }
  }
  return {};
}

}  // namespace shimwright::sheet

#include "job_sheet_rules.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "shimwright/json/value.h"

namespace shimwright::sheet {

namespace {

/// A step with what stood before it and where it stands.
struct PlacedStep {
  const Step& step;
  std::string place;
  std::size_t position = 0;

  [[nodiscard]] std::string at(std::string_view field) const { return json::pointer(place, field); }
};

std::vector<PlacedStep> placed_steps(const JobSheet& sheet) {
  std::vector<PlacedStep> placed;
  for (std::size_t stage = 0; stage < sheet.stages.size(); ++stage) {
    const std::string steps = json::pointer(json::pointer("/stages", stage), "steps");
    for (const Step& step : sheet.stages[stage].steps) {
      const auto index = static_cast<std::size_t>(&step - sheet.stages[stage].steps.data());
      placed.push_back({step, json::pointer(steps, index), placed.size()});
    }
  }
  return placed;
}

const std::vector<Channel>* channels_of(const Step& step) {
  const auto* read = std::get_if<ReadStep>(&step.body);
  return read == nullptr ? nullptr : &read->channels;
}

const Channel* find_channel(const Step& step, std::string_view id) {
  const std::vector<Channel>* channels = channels_of(step);
  if (channels == nullptr) {
    return nullptr;
  }
  const auto found =
      std::find_if(channels->begin(), channels->end(), [id](const Channel& each) { return each.id == id; });
  return found == channels->end() ? nullptr : &*found;
}

bool finds_a_shim(const Step& step) {
  return std::holds_alternative<GaugeFitStep>(step.body) || std::holds_alternative<DepthStep>(step.body);
}

bool is_role_of_a_side(Role role) {
  return role == Role::old_shim || role == Role::new_shim || role == Role::stamp;
}

Result<void> check_side(const PlacedStep& placed) {
  const Step& step = placed.step;
  const bool needed = finds_a_shim(step) || std::holds_alternative<FloatStep>(step.body) || step.again == Again::side ||
                      step.only_for || (step.role && is_role_of_a_side(*step.role));
  if (needed && !step.side) {
    return refuse("missing_field", placed.at("side"),
                  SHIMWRIGHT_TEXT("sheet", "The step '{0}' needs a side, lower or upper; add it."), {step.id});
  }
  return {};
}

Result<void> check_road_test(const PlacedStep& placed) {
  const StepBody& body = placed.step.body;
  if (std::holds_alternative<CheckStep>(body) || std::holds_alternative<ChooseStep>(body)) {
    return {};
  }
  return refuse(
      "wrong_role", placed.at("role"),
      SHIMWRIGHT_TEXT("sheet", "The role '{0}' is for a step of the kind 'check' or 'choose'; correct role or kind."),
      {std::string(name_of(Role::road_test))});
}

Result<void> check_role(const PlacedStep& placed) {
  const Step& step = placed.step;
  if (!step.role) {
    return {};
  }
  if (*step.role == Role::road_test) {
    return check_road_test(placed);
  }
  if (!is_role_of_a_side(*step.role)) {
    if (std::holds_alternative<TextStep>(step.body)) {
      return {};
    }
    return refuse("wrong_role", placed.at("role"),
                  SHIMWRIGHT_TEXT("sheet", "The role '{0}' is for a step of the kind 'text'; correct role or kind."),
                  {std::string(name_of(*step.role))});
  }
  const std::string channel_id = *step.role == Role::stamp ? "stamp" : "thickness";
  const Channel* channel = find_channel(step, channel_id);
  if (channel == nullptr || quantity::dimension_of(channel->unit) != quantity::Dimension::length) {
    return refuse(
        "wrong_role", placed.at("role"),
        SHIMWRIGHT_TEXT("sheet",
                        "The role '{0}' is for a step of the kind 'read' with a length named '{1}'; add that channel."),
        {std::string(name_of(*step.role)), channel_id});
  }
  return {};
}

Result<void> check_method(const PlacedStep& placed) {
  const Step& step = placed.step;
  if (finds_a_shim(step) && step.only_for && name_of(*step.only_for) != kind_of(step.body)) {
    return refuse(
        "wrong_method", placed.at("only_for"),
        SHIMWRIGHT_TEXT("sheet", "A step of the kind '{0}' cannot be only for '{1}'; correct one of the two."),
        {std::string(kind_of(step.body)), std::string(name_of(*step.only_for))});
  }
  return {};
}

Result<void> check_unproven_until(const PlacedStep& placed, const JobSheet& sheet) {
  const auto& until = placed.step.unproven_until;
  if (!until) {
    return {};
  }
  const auto position = sheet.position_of(*until);
  if (!position) {
    return refuse("unknown_step", placed.at("unproven_until"),
                  SHIMWRIGHT_TEXT("sheet", "There is no step '{0}' in this sheet; correct the name."), {*until});
  }
  if (*position <= placed.position) {
    return refuse("wrong_order", placed.at("unproven_until"),
                  SHIMWRIGHT_TEXT("sheet", "The step '{0}' does not come after this one; name a later step."),
                  {*until});
  }
  return {};
}

Result<void> check_equals(const PlacedStep& placed, const Channel& channel, const ChannelName& wanted,
                          const std::string& place, const JobSheet& sheet) {
  const Step* other = sheet.find(wanted.step);
  if (other == nullptr) {
    return refuse("unknown_step", json::pointer(place, "step"),
                  SHIMWRIGHT_TEXT("sheet", "There is no step '{0}' in this sheet; correct the name."), {wanted.step});
  }
  const Channel* found = find_channel(*other, wanted.channel);
  if (found == nullptr) {
    return refuse("unknown_channel", json::pointer(place, "channel"),
                  SHIMWRIGHT_TEXT("sheet", "The step '{0}' reads no '{1}'; correct the name."),
                  {wanted.step, wanted.channel});
  }
  if (const auto position = sheet.position_of(wanted.step); position && *position >= placed.position) {
    return refuse("wrong_order", json::pointer(place, "step"),
                  SHIMWRIGHT_TEXT("sheet", "The step '{0}' does not come before this one; name an earlier step."),
                  {wanted.step});
  }
  if (quantity::dimension_of(found->unit) != quantity::dimension_of(channel.unit)) {
    return refuse(
        "wrong_dimension", place,
        SHIMWRIGHT_TEXT("sheet", "'{0}' of the step '{1}' is read in another kind of unit; the two cannot be equal."),
        {wanted.channel, wanted.step});
  }
  return {};
}

Result<void> check_channels(const PlacedStep& placed, const JobSheet& sheet) {
  const std::vector<Channel>* channels = channels_of(placed.step);
  for (std::size_t index = 0; channels != nullptr && index < channels->size(); ++index) {
    const Channel& channel = (*channels)[index];
    if (channel.equals) {
      const std::string place = json::pointer(json::pointer(placed.at("channels"), index), "equals");
      if (auto kept = check_equals(placed, channel, *channel.equals, place, sheet); !kept) {
        return kept;
      }
    }
  }
  return {};
}

/// What may be there once only.
class Once {
 public:
  [[nodiscard]] Result<void> check(const PlacedStep& placed) {
    const Step& step = placed.step;
    if (!step_ids_.insert(step.id).second) {
      return refuse("repeated_id", placed.at("id"),
                    SHIMWRIGHT_TEXT("sheet", "Another step is named '{0}' already; give this one its own name."),
                    {step.id});
    }
    if (step.role && !roles_.insert({*step.role, step.side}).second) {
      return refuse(
          "repeated_role", placed.at("role"),
          SHIMWRIGHT_TEXT("sheet", "Another step has the role '{0}' for this side already; remove one of the two."),
          {std::string(name_of(*step.role))});
    }
    const auto* disc_float = std::get_if<FloatStep>(&step.body);
    const bool measures = finds_a_shim(step) || disc_float != nullptr;
    const bool as_found = disc_float != nullptr && disc_float->as_found;
    if (measures &&
        !measurements_.insert({std::string(kind_of(step.body)) + (as_found ? " as found" : ""), step.side}).second) {
      return refuse(
          "repeated_measurement", placed.at("kind"),
          SHIMWRIGHT_TEXT("sheet",
                          "Another step of the kind '{0}' is there for this side already; remove one of the two."),
          {std::string(kind_of(step.body))});
    }
    return {};
  }

 private:
  std::set<std::string> step_ids_;
  std::set<std::pair<Role, std::optional<Side>>> roles_;
  std::set<std::pair<std::string, std::optional<Side>>> measurements_;
};

Result<void> check_stage_ids(const JobSheet& sheet) {
  std::set<std::string> ids;
  for (const Stage& stage : sheet.stages) {
    const auto index = static_cast<std::size_t>(&stage - sheet.stages.data());
    if (!ids.insert(stage.id).second) {
      return refuse("repeated_id", json::pointer(json::pointer("/stages", index), "id"),
                    SHIMWRIGHT_TEXT("sheet", "Another stage is named '{0}' already; give this one its own name."),
                    {stage.id});
    }
  }
  return {};
}

Result<void> check_step(const PlacedStep& placed, const JobSheet& sheet) {
  return check_side(placed)
      .and_then([&placed] { return check_role(placed); })
      .and_then([&placed] { return check_method(placed); })
      .and_then([&placed, &sheet] { return check_unproven_until(placed, sheet); })
      .and_then([&placed, &sheet] { return check_channels(placed, sheet); });
}

}  // namespace

Result<void> check_rules(const JobSheet& sheet) {
  if (auto kept = check_stage_ids(sheet); !kept) {
    return kept;
  }
  const std::vector<PlacedStep> placed = placed_steps(sheet);
  Once once;
  for (const PlacedStep& each : placed) {
    if (auto kept = once.check(each).and_then([&each, &sheet] { return check_step(each, sheet); }); !kept) {
      return kept;
    }
  }
  if (placed.empty() || !std::holds_alternative<SignStep>(placed.back().step.body)) {
    return refuse(
        "no_signature", "/stages",
        SHIMWRIGHT_TEXT("sheet",
                        "The last step has to be one of the kind 'sign', since signing closes the job; add it."));
  }
  return {};
}

}  // namespace shimwright::sheet

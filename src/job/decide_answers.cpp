#include <algorithm>

#include "desk.h"
#include "round.h"
#include "shimwright/job/questions.h"
#include "shimwright/job/standing.h"

namespace shimwright::job {

Bodies decide_on(const Desk& desk, const DoStep& command) {
  const auto step = step_of_kind<sheet::DoStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  return std::vector<EntryBody>{Done{desk.at(**step)}};
}

Bodies decide_on(const Desk& desk, const CheckStep& command) {
  const auto step = step_of_kind<sheet::CheckStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  if (!command.in_order && is_blank(command.finding)) {
    return refuse("finding_missing", command.step, SHIMWRIGHT_TEXT("job", "Say in a few words what is not in order."));
  }
  return std::vector<EntryBody>{Checked{desk.at(**step), command.in_order, command.finding}};
}

Bodies decide_on(const Desk& desk, const ChooseAnswer& command) {
  const auto step = step_of_kind<sheet::ChooseStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  for (const sheet::Choice& choice : std::get<sheet::ChooseStep>((*step)->body).choices) {
    if (choice.id == command.choice) {
      return std::vector<EntryBody>{Chosen{desk.at(**step), choice.id, choice.accepted}};
    }
  }
  return refuse("unknown_choice", command.step,
                SHIMWRIGHT_TEXT("job", "“{0}” is none of the answers of “{1}”: choose one of those shown."),
                {command.choice, title_of(**step)});
}

Bodies decide_on(const Desk& desk, const WriteText& command) {
  const auto step = step_of_kind<sheet::TextStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  if (is_blank(command.text)) {
    return refuse("text_missing", command.step,
                  SHIMWRIGHT_TEXT("job", "Nothing is written here yet: write it, or leave the step open."));
  }
  Written written{desk.at(**step), command.text, {}};
  if ((*step)->role == sheet::Role::old_pack_serial) {
    if (auto other = other_pack(desk.state, command.text, desk.context)) {
      written.questions.push_back(*std::move(other));
    }
  }
  return std::vector<EntryBody>{std::move(written)};
}

namespace {

/// As people call the part; as it was typed where the spec sheet has no such part.
std::string part_title(const Desk& desk, const std::string& part) {
  const sheet::PartItem* item = desk.state.sheets.spec->part(part);
  return item == nullptr ? part : item->title.in_english();
}

/// Part by part is enough; but a list says something, and what may have moved since is proven as a whole.
std::vector<std::string> parts_to_name(const Desk& desk, const sheet::Step& step, const PartsFitted& fitted) {
  auto still = parts_to_renew(desk.state, step);
  if (std::holds_alternative<Unproven>(desk.state.step(step.id))) {
    return still;
  }
  if (!fitted.parts.empty()) {
    return {};
  }
  return still.empty() ? std::get<sheet::PartStep>(step.body).parts : still;
}

}  // namespace

Bodies decide_on(const Desk& desk, const FitParts& command) {
  const auto step = step_of_kind<sheet::PartStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto& wanted = std::get<sheet::PartStep>((*step)->body).parts;
  PartsFitted fitted{desk.at(**step), {}};
  for (const PartFitted& part : command.parts) {
    const sheet::PartItem* item = desk.state.sheets.spec->part(part.part);
    if (item == nullptr || std::find(wanted.begin(), wanted.end(), part.part) == wanted.end()) {
      return refuse("unknown_part", command.step,
                    SHIMWRIGHT_TEXT("job", "“{0}” is no part of this step: choose one of those listed."),
                    {part_title(desk, part.part)});
    }
    if (part.quantity < 1 || part.quantity > 1000) {
      return refuse("bad_quantity", command.step,
                    SHIMWRIGHT_TEXT("job", "The number of parts must be from 1 to 1000."));
    }
    fitted.parts.push_back({part.part, part.number.empty() ? item->number : part.number, part.quantity, part.batch});
  }
  for (const std::string& each : parts_to_name(desk, **step, fitted)) {
    const bool there = std::any_of(fitted.parts.begin(), fitted.parts.end(),
                                   [&](const PartFitted& part) { return part.part == each; });
    if (!there) {
      return refuse(
          "part_missing", command.step,
          SHIMWRIGHT_TEXT("job",
                          "“{0}” is still missing from the list of what was renewed: add it, or go on with a reason."),
          {part_title(desk, each)});
    }
  }
  return std::vector<EntryBody>{std::move(fitted)};
}

Bodies decide_on(const Desk& desk, const AddPhoto& command) {
  const auto step = open_way_to(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const bool hexadecimal =
      command.sha256.size() == 64 && command.sha256.find_first_not_of("0123456789abcdef") == std::string::npos;
  constexpr std::int64_t most_bytes = 20'000'000;
  if (!hexadecimal || command.bytes < 1 || command.bytes > most_bytes) {
    return refuse("bad_photo", command.step,
                  SHIMWRIGHT_TEXT("job", "This photo cannot be kept: it must be a picture of at most 20 MB."));
  }
  return std::vector<EntryBody>{
      PhotoTaken{desk.at(**step), command.sha256, command.media_type, command.bytes, command.caption}};
}

Bodies decide_on(const Desk& desk, const Confirm& command) {
  const auto step = open_way_to(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto* held = std::get_if<Held>(&desk.state.step(command.step));
  const bool asked =
      held != nullptr && std::any_of(held->questions.begin(), held->questions.end(),
                                     [&](const Question& each) { return each.code == command.question; });
  if (!asked) {
    return refuse("no_such_question", command.step,
                  SHIMWRIGHT_TEXT("job", "“{0}” asks nothing that could be confirmed so: look at what it asks."),
                  {title_of(**step)});
  }
  std::vector<EntryBody> bodies{Confirmed{desk.at(**step), command.question, command.remark}};
  // Confirming unit or direction lets the engine answer for the first time.
  return asked_by_engine(command.question) ? with_advice(desk, **step, std::move(bodies)) : Bodies(std::move(bodies));
}

}  // namespace shimwright::job
